import type { ChartPlan, ChartRange, SeriesLook } from "../../workbook/plan";
import type { HostValue } from "../port";

/** Hands over the values of a range, row by row. Errors may come as their code; they are left out of a chart. */
export type ReadRange = (range: ChartRange) => readonly HostValue[];

export interface ChartSeries {
  readonly name: string;
  readonly color: string;
  readonly look?: SeriesLook | undefined;
  /** One value a category; undefined where there is no number. */
  readonly values: readonly (number | undefined)[];
}

export interface ChartData {
  readonly categories: readonly HostValue[];
  readonly series: readonly ChartSeries[];
}

/** The numbers of a chart; rows with neither a category nor a number are left out. */
export function chartData(chart: ChartPlan, read: ReadRange): ChartData {
  const categories = read(chart.categories);
  const series = chart.series.map(({ values, ...rest }) => ({ ...rest, values: read(values).map(toNumber) }));
  const length = Math.max(categories.length, ...series.map(({ values }) => values.length));
  const filled = Array.from({ length }, (_, index) => index).filter(
    (index) => !isEmpty(categories[index]) || series.some(({ values }) => values[index] !== undefined),
  );
  return {
    categories: filled.map((index) => categories[index] ?? null),
    series: series.map((one) => ({ ...one, values: filled.map((index) => one.values[index]) })),
  };
}

export function toNumber(value: HostValue | undefined): number | undefined {
  return typeof value === "number" && Number.isFinite(value) ? value : undefined;
}

export function numbersOf(series: readonly ChartSeries[]): number[] {
  return series.flatMap(({ values }) => values.filter((value) => value !== undefined));
}

function isEmpty(value: HostValue | undefined): boolean {
  return value === null || value === undefined || value === "";
}
