import type { ChartPlan } from "../../workbook/plan";
import { axisColor, horizontalGrid, widest, zeroLine } from "./axes";
import { axisNumber } from "./axis-number";
import { numbersOf, type ChartData } from "./chart-data";
import { captions, labelSize, plotOf, type ChartSize, type Plot } from "./chart-frame";
import { dashOf, hasMarkers, marker, path, rectangle, straight } from "./marks";
import { bandScale, linearScale, type LinearScale } from "./scale";
import { fitted, svgText, textWidth } from "./svg-text";

/** Columns and lines: categories along the bottom, values up the side. */
export function drawUpright(chart: ChartPlan, data: ChartData, size: ChartSize): string {
  const write = axisNumber(chart.yFormat);
  const fromZero = chart.kind === "column" || keepsZero(numbersOf(data.series));
  const draft = linearScale(numbersOf(data.series), 0, 1, fromZero);
  const names = data.categories.map((category) => String(category ?? ""));
  const left = widest(draft.ticks.map(write));
  const bandWidth = (size.width - left - 60) / Math.max(names.length, 1);
  const turned = names.some((name) => textWidth(name, labelSize) > bandWidth - 6);
  const under = turned ? Math.min(70, widest(names) * 0.6 + 16) : 18;
  const plot = plotOf(chart, data, size, { left, under });
  const values = linearScale(numbersOf(data.series), plot.bottom, plot.top, fromZero);
  const marks = chart.kind === "column" ? columns(data, plot, values) : lines(data, plot, values);
  return [
    captions(chart, data, size, plot),
    horizontalGrid(values, plot, write),
    marks,
    straight(plot.left, zeroLine(values), plot.right, zeroLine(values), axisColor),
    categoryLabels(names, plot, turned),
  ].join("");
}

/** As spreadsheets draw lines: from zero, unless the values lie close together far from it. */
function keepsZero(values: readonly number[]): boolean {
  const sizes = values.map(Math.abs);
  return Math.min(...sizes) < (5 / 6) * Math.max(...sizes);
}

function categoryLabels(names: readonly string[], plot: Plot, turned: boolean): string {
  const bands = bandScale(names.length, plot.left, plot.right);
  return names
    .map((name, index) => {
      const x = bands.at(index) + bands.width / 2;
      if (!turned) return svgText(name, x, plot.bottom + 16, { size: labelSize, anchor: "middle" });
      return svgText(fitted(name, 96, labelSize), x + 4, plot.bottom + 14, {
        size: labelSize,
        anchor: "end",
        turn: -35,
      });
    })
    .join("");
}

function columns(data: ChartData, plot: Plot, values: LinearScale): string {
  const bands = bandScale(data.categories.length, plot.left, plot.right);
  const width = (bands.width * 0.7) / data.series.length;
  return data.series
    .flatMap(({ color, values: heights }, seriesIndex) =>
      heights.map((height, index) => {
        if (height === undefined) return "";
        const x = bands.at(index) + bands.width * 0.15 + seriesIndex * width;
        const [top, bottom] = [values.at(Math.max(height, 0)), values.at(Math.min(height, 0))];
        return rectangle(x, top, width * 0.94, bottom - top, color);
      }),
    )
    .join("");
}

function lines(data: ChartData, plot: Plot, values: LinearScale): string {
  const bands = bandScale(data.categories.length, plot.left, plot.right);
  return data.series
    .map(({ color, look, values: heights }, seriesIndex) => {
      const points = heights.map((height, index) =>
        height === undefined ? undefined : { x: bands.at(index) + bands.width / 2, y: values.at(height) },
      );
      const markers = points.map((point) => (point ? marker(seriesIndex, point.x, point.y, color) : ""));
      const line = look === "points" ? "" : path(points, dashOf(look, seriesIndex), color);
      return line + (hasMarkers(look) ? markers.join("") : "");
    })
    .join("");
}
