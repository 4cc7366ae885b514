import { labelSize, type Plot } from "./chart-frame";
import { straight } from "./marks";
import type { LinearScale } from "./scale";
import { quietInk, svgText, textWidth } from "./svg-text";

export const gridColor = "#e6e1d8";
export const axisColor = "#9a948a";

/** Pixels that the longest of some labels takes. */
export function widest(labels: readonly string[]): number {
  return Math.max(0, ...labels.map((label) => textWidth(label, labelSize)));
}

/** Where the categories' line stands: at zero when that is on the scale. */
export function zeroLine(values: LinearScale): number {
  return values.at(Math.min(Math.max(0, values.low), values.high));
}

/** Lines across the plot at the round values, with their labels on the left. */
export function horizontalGrid(values: LinearScale, plot: Plot, write: (value: number) => string): string {
  return values.ticks
    .map((tick) => {
      const y = values.at(tick);
      const label = svgText(write(tick), plot.left - 6, y + 4, { size: labelSize, anchor: "end", color: quietInk });
      return straight(plot.left, y, plot.right, y, gridColor) + label;
    })
    .join("");
}
