import type { ChartPlan } from "../../workbook/plan";
import { axisNumber } from "./axis-number";
import { numbersOf, type ChartData } from "./chart-data";
import { captions, labelSize, plotOf, type ChartSize, type Plot } from "./chart-frame";
import { dashOf, hasMarkers, marker, path, rectangle, straight } from "./marks";
import { bandScale, linearScale, type LinearScale } from "./scale";
import { fitted, quietInk, svgText, textWidth } from "./svg-text";

const gridColor = "#e6e1d8";
const axisColor = "#9a948a";

/** Columns and lines: categories along the bottom, values up the side. */
export function drawUpright(chart: ChartPlan, data: ChartData, size: ChartSize): string {
  const write = axisNumber(chart.yFormat);
  const fromZero = chart.kind === "column" || keepsZero(numbersOf(data.series));
  const draft = linearScale(numbersOf(data.series), 0, 1, fromZero);
  const names = data.categories.map((category) => String(category ?? ""));
  const left = Math.max(0, ...draft.ticks.map((tick) => textWidth(write(tick), labelSize)));
  const bandWidth = (size.width - left - 60) / Math.max(names.length, 1);
  const turned = names.some((name) => textWidth(name, labelSize) > bandWidth - 6);
  const under = turned ? Math.min(70, Math.max(...names.map((name) => textWidth(name, labelSize))) * 0.6 + 16) : 18;
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

/** Where the categories' line stands: at zero when that is on the scale. */
function zeroLine(values: LinearScale): number {
  return values.at(Math.min(Math.max(0, values.low), values.high));
}

function horizontalGrid(values: LinearScale, plot: Plot, write: (value: number) => string): string {
  return values.ticks
    .map((tick) => {
      const y = values.at(tick);
      const label = svgText(write(tick), plot.left - 6, y + 4, { size: labelSize, anchor: "end", color: quietInk });
      return straight(plot.left, y, plot.right, y, gridColor) + label;
    })
    .join("");
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

/** Bars: categories down the side, first on top, values along the bottom. */
export function drawBars(chart: ChartPlan, data: ChartData, size: ChartSize): string {
  const write = axisNumber(chart.yFormat);
  const room = size.width * 0.35;
  const names = data.categories.map((category) => fitted(String(category ?? ""), room, labelSize));
  const left = Math.max(0, ...names.map((name) => textWidth(name, labelSize)));
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

/** Points by two numbers: the categories along the bottom, the series up the side. */
export function drawScatter(chart: ChartPlan, data: ChartData, size: ChartSize): string {
  const write = axisNumber(chart.yFormat);
  const across = data.categories.map((category) => (typeof category === "number" ? category : undefined));
  const draft = linearScale(numbersOf(data.series), 0, 1, false);
  const left = Math.max(0, ...draft.ticks.map((tick) => textWidth(write(tick), labelSize)));
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
