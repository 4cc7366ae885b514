import type { Cited } from "../table";

/** A printed stretch of stands with the share of full yield at its two ends. */
export interface StandStep extends Cited {
  readonly from: number;
  readonly to: number;
  readonly pctFrom: number;
  readonly pctTo: number;
}

/** A planting date with the share of full yield left; straight lines between. */
export interface DateStep extends Cited {
  readonly date: readonly [month: number, day: number];
  readonly pct: number;
}

/** Wheat, plants per square foot. Below 12 to 14 the source would consider replanting. */
export const pennStateWheat: readonly StandStep[] = [
  { from: 12, to: 14, pctFrom: 60, pctTo: 70, mark: "V", source: "pennstate-wheat-stand" },
  { from: 15, to: 18, pctFrom: 75, pctTo: 80, mark: "V", source: "pennstate-wheat-stand" },
  { from: 18, to: 21, pctFrom: 90, pctTo: 95, mark: "V", source: "pennstate-wheat-stand" },
  { from: 22, to: 28, pctFrom: 100, pctTo: 100, mark: "V", source: "pennstate-wheat-stand" },
  { from: 30, to: 35, pctFrom: 100, pctTo: 100, mark: "V", source: "pennstate-wheat-stand" },
];

/** Winter wheat, plants per foot of row. */
export const ontarioWheat: readonly StandStep[] = [
  { from: 5, to: 5, pctFrom: 80, pctTo: 80, mark: "V", source: "ontario-wheat-stand-2012" },
  { from: 6, to: 6, pctFrom: 85, pctTo: 85, mark: "V", source: "ontario-wheat-stand-2012" },
  { from: 7, to: 7, pctFrom: 90, pctTo: 90, mark: "V", source: "ontario-wheat-stand-2012" },
  { from: 10, to: 10, pctFrom: 95, pctTo: 95, mark: "V", source: "ontario-wheat-stand-2012" },
  { from: 20, to: 20, pctFrom: 100, pctTo: 100, mark: "V", source: "ontario-wheat-stand-2012" },
];

/** Soybean, plants/ac. */
export const pennStateSoybean: readonly StandStep[] = [
  {
    from: 70_000,
    to: 70_000,
    pctFrom: 92.5,
    pctTo: 92.5,
    mark: "V",
    source: "pennstate-soybean-2019",
    note: "Printed 90 to 95 % for an even stand, the middle taken here; 83 % with four tenths of the row in gaps. Keep an even stand above about 80,000.",
  },
  {
    from: 100_000,
    to: 100_000,
    pctFrom: 100,
    pctTo: 100,
    mark: "V",
    source: "pennstate-soybean-2019",
    note: "Printed as near full yield.",
  },
];

const approximate =
  "Approximate: drawn by us through statements of Minnesota (90 % or more before June 1, then about a point a day) and Missouri (16 % lost in the second week of June, 25 % in the third).";

/** Soybean by planting date: full up to the first, nothing known past the last. */
export const soybeanDates: readonly DateStep[] = [
  { date: [5, 10], pct: 100, mark: "M", source: "soybean-dates", note: approximate },
  { date: [6, 1], pct: 90, mark: "M", source: "soybean-dates", note: approximate },
  { date: [6, 15], pct: 76, mark: "M", source: "soybean-dates", note: approximate },
  { date: [6, 30], pct: 56.5, mark: "M", source: "soybean-dates", note: approximate },
];
