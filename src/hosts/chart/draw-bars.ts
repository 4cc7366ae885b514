import type { ChartPlan } from "../../workbook/plan";
import { axisColor, gridColor, widest, zeroLine } from "./axes";
import { axisNumber } from "./axis-number";
import { numbersOf, type ChartData } from "./chart-data";
import { captions, labelSize, plotOf, type ChartSize } from "./chart-frame";
import { rectangle, straight } from "./marks";
import { bandScale, linearScale } from "./scale";
import { fitted, quietInk, svgText } from "./svg-text";

/** Bars: categories down the side, first on top, values along the bottom. */
export function drawBars(chart: ChartPlan, data: ChartData, size: ChartSize): string {
  const write = axisNumber(chart.yFormat);
  const room = size.width * 0.35;
  const names = data.categories.map((category) => fitted(String(category ?? ""), room, labelSize));
  const left = widest(names);
  const plot = plotOf(chart, data, size, { left, under: 18 });
  const values = linearScale(numbersOf(data.series), plot.left, plot.right, true);
  const bands = bandScale(names.length, plot.top, plot.bottom);
  const height = (bands.width * 0.7) / (chart.onOneLine ? 1 : data.series.length);
  const bars = data.series.flatMap(({ color, values: lengths }, seriesIndex) =>
    lengths.map((length, index) => {
      if (length === undefined) return "";
      const y = bands.at(index) + bands.width * 0.15 + (chart.onOneLine ? 0 : seriesIndex * height);
      const [start, end] = [values.at(Math.min(length, 0)), values.at(Math.max(length, 0))];
      return rectangle(start, y, end - start, height * 0.94, color);
    }),
  );
  const labels = names.map((name, index) =>
    svgText(name, plot.left - 6, bands.at(index) + bands.width / 2 + 4, { size: labelSize, anchor: "end" }),
  );
  const grid = values.ticks.map(
    (tick) =>
      straight(values.at(tick), plot.top, values.at(tick), plot.bottom, gridColor) +
      svgText(write(tick), values.at(tick), plot.bottom + 15, { size: labelSize, anchor: "middle", color: quietInk }),
  );
  const zero = zeroLine(values);
  return [
    captions(chart, data, size, plot),
    ...grid,
    ...bars,
    straight(zero, plot.top, zero, plot.bottom, axisColor),
    ...labels,
  ].join("");
}
