import type { ChartPlan } from "../../workbook/plan";
import { chartData, numbersOf, type ChartData, type ReadRange } from "./chart-data";
import { chartTitle, type ChartSize } from "./chart-frame";
import { drawBars } from "./draw-bars";
import { drawScatter } from "./draw-scatter";
import { drawUpright } from "./draw-upright";
import { escaped, quietInk, svgText } from "./svg-text";
import { hostWords } from "../words";

export type { ChartSize, ReadRange };

const usualSize: ChartSize = { width: 640, height: 360 };

/**
 * Draws a chart as one SVG element: columns, bars, lines or points, with axes, legend, and the sentence for readers
 * who cannot see it. White ground, so that it prints.
 *
 * @param read hands over the values of a range, row by row
 */
export function chartSvg(chart: ChartPlan, read: ReadRange, size: ChartSize = usualSize): string {
  const data = chartData(chart, read);
  const drawing = numbersOf(data.series).length === 0 ? nothingYet(chart, size) : draw(chart, data, size);
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" viewBox="0 0 ${size.width} ${size.height}" width="100%" height="100%" ` +
    `font-family="Calibri, Carlito, 'Segoe UI', Arial, sans-serif">` +
    `<title>${escaped(chart.title)}</title><desc>${escaped(chart.alt)}</desc>` +
    `<rect width="${size.width}" height="${size.height}" fill="#ffffff"/>${drawing}</svg>`
  );
}

function draw(chart: ChartPlan, data: ChartData, size: ChartSize): string {
  switch (chart.kind) {
    case "bar":
      return drawBars(chart, data, size);
    case "scatter":
      return drawScatter(chart, data, size);
    default:
      return drawUpright(chart, data, size);
  }
}

function nothingYet(chart: ChartPlan, size: ChartSize): string {
  const middle = size.width / 2;
  return (
    chartTitle(chart, size) +
    svgText(hostWords.cells.nothingToDraw, middle, size.height / 2, {
      size: 12,
      anchor: "middle",
      color: quietInk,
    })
  );
}
