import type { ChartPlan } from "../../workbook/plan";
import { axisColor, horizontalGrid, widest } from "./axes";
import { axisNumber } from "./axis-number";
import { numbersOf, type ChartData } from "./chart-data";
import { captions, labelSize, plotOf, type ChartSize } from "./chart-frame";
import { marker, straight } from "./marks";
import { linearScale } from "./scale";
import { quietInk, svgText } from "./svg-text";

/** Points by two numbers: the categories along the bottom, the series up the side. */
export function drawScatter(chart: ChartPlan, data: ChartData, size: ChartSize): string {
  const write = axisNumber(chart.yFormat);
  const across = data.categories.map((category) => (typeof category === "number" ? category : undefined));
  const draft = linearScale(numbersOf(data.series), 0, 1, false);
  const left = widest(draft.ticks.map(write));
  const plot = plotOf(chart, data, size, { left, under: 18 });
  const values = linearScale(numbersOf(data.series), plot.bottom, plot.top, false);
  const xs = linearScale(
    across.filter((x) => x !== undefined),
    plot.left,
    plot.right,
    false,
  );
  const plain = axisNumber(undefined);
  const labels = xs.ticks.map((tick) =>
    svgText(plain(tick), xs.at(tick), plot.bottom + 16, { size: labelSize, anchor: "middle", color: quietInk }),
  );
  const points = data.series.flatMap(({ color, values: heights }, seriesIndex) =>
    heights.map((height, index) => {
      const x = across[index];
      return height === undefined || x === undefined ? "" : marker(seriesIndex, xs.at(x), values.at(height), color);
    }),
  );
  const axis = straight(plot.left, plot.bottom, plot.right, plot.bottom, axisColor);
  return [captions(chart, data, size, plot), horizontalGrid(values, plot, write), axis, ...points, ...labels].join("");
}
