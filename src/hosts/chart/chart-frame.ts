import type { ChartPlan, SeriesLook } from "../../workbook/plan";
import type { ChartData } from "./chart-data";
import { dashOf, hasMarkers, marker, path, rectangle } from "./marks";
import { fitted, quietInk, svgText, textWidth } from "./svg-text";

export interface ChartSize {
  readonly width: number;
  readonly height: number;
}

/** The rectangle that the marks are drawn in. */
export interface Plot {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export const labelSize = 12;
const titleSize = 15;
const edge = 12;
const line = 18;

interface Room {
  /** Pixels that the labels left of the plot take. */
  readonly left: number;
  /** Pixels that the labels under the plot take. */
  readonly under: number;
}

export function plotOf(chart: ChartPlan, data: ChartData, size: ChartSize, room: Room): Plot {
  const legend = data.series.length > 1 ? legendRows(data, size).length * line : 0;
  return {
    left: edge + (leftTitle(chart) ? line : 0) + room.left + 6,
    top: edge + titleSize + 10 + legend,
    right: size.width - edge - 8,
    bottom: size.height - edge - (underTitle(chart) ? line : 0) - room.under,
  };
}

/** Titles of chart and axes, and the legend where there is more than one series. */
export function captions(chart: ChartPlan, data: ChartData, size: ChartSize, plot: Plot): string {
  const middle = (plot.top + plot.bottom) / 2;
  const left = leftTitle(chart);
  const under = underTitle(chart);
  return [
    chartTitle(chart, size),
    data.series.length > 1 ? legend(chart, data, size) : "",
    left ? svgText(left, edge + 9, middle, { size: labelSize, anchor: "middle", color: quietInk, turn: -90 }) : "",
    under
      ? svgText(under, (plot.left + plot.right) / 2, size.height - edge, {
          size: labelSize,
          anchor: "middle",
          color: quietInk,
        })
      : "",
  ].join("");
}

/** The title, cut where the chart is too narrow for it. */
export function chartTitle({ title }: ChartPlan, { width }: ChartSize): string {
  const look = { size: titleSize, bold: true, color: "#5a4636" };
  return svgText(fitted(title, width - 2 * edge, titleSize), edge, edge + titleSize - 2, look);
}

/** In a bar chart the values run along the bottom. */
function leftTitle(chart: ChartPlan): string | undefined {
  return chart.kind === "bar" ? chart.xTitle : chart.yTitle;
}

function underTitle(chart: ChartPlan): string | undefined {
  return chart.kind === "bar" ? chart.yTitle : chart.xTitle;
}

function legend(chart: ChartPlan, data: ChartData, size: ChartSize): string {
  return legendRows(data, size)
    .flatMap((row, rowIndex) => {
      const y = edge + titleSize + 18 + rowIndex * line;
      return row.map((entry) => {
        const { name, look, x } = entry;
        return legendSign(chart, entry, y - 4) + svgText(name, x + signRoom(look), y, { size: labelSize });
      });
    })
    .join("");
}

function legendSign({ kind }: ChartPlan, { color, index, look, x }: LegendEntry, y: number): string {
  if (kind !== "line" && kind !== "scatter") return rectangle(x, y - 5, 10, 10, color);
  if (hasMarkers(look)) return marker(index, x + 5, y, color);
  const ends = [x, x + signRoom(look) - 6].map((end) => ({ x: end, y }));
  return path(ends, dashOf(look, index), color);
}

/** A dash takes longer to show than a box or a marker. */
function signRoom(look: SeriesLook | undefined): number {
  return hasMarkers(look) ? 16 : 32;
}

interface LegendEntry {
  readonly name: string;
  readonly color: string;
  readonly look: SeriesLook | undefined;
  readonly index: number;
  readonly x: number;
}

function legendRows(data: ChartData, size: ChartSize): LegendEntry[][] {
  const rows: LegendEntry[][] = [[]];
  let x = edge;
  data.series.forEach(({ name, color, look }, index) => {
    const width = signRoom(look) + textWidth(name, labelSize) + 18;
    if (x > edge && x + width > size.width) {
      rows.push([]);
      x = edge;
    }
    rows[rows.length - 1]?.push({ name, color, look, index, x });
    x += width;
  });
  return rows;
}
