import type { Cited } from "../table";

/** First and last day of a printed planting window, as month and day; the same day where one date is printed. */
export interface DateColumn {
  readonly from: readonly [month: number, day: number];
  readonly to: readonly [month: number, day: number];
}

/** A printed stand, or a range of stands, with the share of full yield at each date. */
export interface StandRow extends Cited {
  /** plants/ac. */
  readonly standFrom: number;
  readonly standTo: number;
  /** % of full yield, one for each date column. */
  readonly yieldPct: readonly number[];
}

/** Corn yield by planting date and stand, dates from first to last, stands from thin to thick. */
export interface DateStandTable {
  readonly title: string;
  readonly columns: readonly DateColumn[];
  readonly rows: readonly StandRow[];
  /** What the source says of the whole table. */
  readonly note?: string;
}

const iowa2001Columns: readonly DateColumn[] = [
  { from: [4, 20], to: [5, 5] },
  { from: [5, 13], to: [5, 19] },
  { from: [5, 26], to: [6, 1] },
  { from: [6, 10], to: [6, 16] },
  { from: [6, 24], to: [6, 28] },
];

const iowa2001Rows: readonly StandRow[] = [
  { standFrom: 12_000, standTo: 12_000, yieldPct: [68, 67, 61, 46, 35], mark: "V", source: "isu-pm1885-2001" },
  { standFrom: 16_000, standTo: 16_000, yieldPct: [74, 73, 67, 50, 38], mark: "V", source: "isu-pm1885-2001" },
  { standFrom: 20_000, standTo: 20_000, yieldPct: [81, 80, 73, 55, 42], mark: "V", source: "isu-pm1885-2001" },
  { standFrom: 24_000, standTo: 24_000, yieldPct: [94, 93, 85, 64, 49], mark: "V", source: "isu-pm1885-2001" },
  { standFrom: 28_000, standTo: 32_000, yieldPct: [100, 99, 90, 68, 52], mark: "V", source: "isu-pm1885-2001" },
];

const iowaGuideColumns: readonly DateColumn[] = [
  { from: [4, 20], to: [5, 5] },
  { from: [5, 5], to: [5, 15] },
  { from: [5, 15], to: [5, 25] },
  { from: [5, 25], to: [6, 5] },
  { from: [6, 5], to: [6, 15] },
];

const iowaGuideRows: readonly StandRow[] = [
  { standFrom: 10_000, standTo: 10_000, yieldPct: [71, 68, 62, 50, 38], mark: "M", source: "isu-ipm0001" },
  { standFrom: 15_000, standTo: 15_000, yieldPct: [81, 78, 71, 58, 44], mark: "M", source: "isu-ipm0001" },
  { standFrom: 20_000, standTo: 20_000, yieldPct: [89, 85, 77, 63, 48], mark: "M", source: "isu-ipm0001" },
  { standFrom: 25_000, standTo: 25_000, yieldPct: [95, 91, 83, 67, 51], mark: "V", source: "isu-ipm0001" },
  { standFrom: 30_000, standTo: 30_000, yieldPct: [99, 95, 86, 69, 53], mark: "V", source: "isu-ipm0001" },
  { standFrom: 35_000, standTo: 35_000, yieldPct: [100, 96, 87, 70, 54], mark: "V", source: "isu-ipm0001" },
  { standFrom: 40_000, standTo: 40_000, yieldPct: [99, 95, 86, 69, 53], mark: "V", source: "isu-ipm0001" },
  { standFrom: 45_000, standTo: 45_000, yieldPct: [97, 93, 85, 68, 52], mark: "V", source: "isu-ipm0001" },
];

const illinois1994Columns: readonly DateColumn[] = [
  { from: [4, 10], to: [4, 10] },
  { from: [4, 15], to: [4, 15] },
  { from: [4, 20], to: [4, 20] },
  { from: [4, 25], to: [4, 25] },
  { from: [4, 30], to: [4, 30] },
  { from: [5, 5], to: [5, 5] },
  { from: [5, 10], to: [5, 10] },
  { from: [5, 15], to: [5, 15] },
  { from: [5, 20], to: [5, 20] },
  { from: [5, 25], to: [5, 25] },
  { from: [5, 30], to: [5, 30] },
  { from: [6, 4], to: [6, 4] },
  { from: [6, 9], to: [6, 9] },
];

const illinois1994Rows: readonly StandRow[] = [
  {
    standFrom: 10_000,
    standTo: 10_000,
    yieldPct: [62, 65, 67, 68, 68, 67, 65, 63, 59, 55, 49, 43, 36],
    mark: "V",
    source: "nafziger-1994",
  },
  {
    standFrom: 12_000,
    standTo: 12_000,
    yieldPct: [68, 71, 73, 74, 74, 73, 71, 69, 65, 61, 55, 49, 42],
    mark: "V",
    source: "nafziger-1994",
  },
  {
    standFrom: 14_000,
    standTo: 14_000,
    yieldPct: [73, 76, 78, 79, 79, 79, 77, 74, 71, 66, 61, 54, 47],
    mark: "V",
    source: "nafziger-1994",
  },
  {
    standFrom: 16_000,
    standTo: 16_000,
    yieldPct: [78, 81, 83, 84, 84, 83, 82, 79, 75, 71, 65, 59, 52],
    mark: "V",
    source: "nafziger-1994",
  },
  {
    standFrom: 18_000,
    standTo: 18_000,
    yieldPct: [82, 85, 87, 88, 88, 87, 86, 83, 80, 75, 70, 63, 56],
    mark: "V",
    source: "nafziger-1994",
  },
  {
    standFrom: 20_000,
    standTo: 20_000,
    yieldPct: [85, 88, 90, 92, 92, 91, 89, 87, 83, 79, 73, 67, 60],
    mark: "V",
    source: "nafziger-1994",
  },
  {
    standFrom: 22_000,
    standTo: 22_000,
    yieldPct: [88, 91, 93, 94, 95, 94, 92, 89, 86, 81, 76, 70, 62],
    mark: "V",
    source: "nafziger-1994",
  },
  {
    standFrom: 24_000,
    standTo: 24_000,
    yieldPct: [91, 94, 96, 97, 97, 96, 94, 92, 88, 84, 78, 72, 65],
    mark: "V",
    source: "nafziger-1994",
  },
  {
    standFrom: 26_000,
    standTo: 26_000,
    yieldPct: [92, 95, 97, 98, 99, 98, 96, 93, 90, 85, 80, 74, 66],
    mark: "V",
    source: "nafziger-1994",
  },
  {
    standFrom: 28_000,
    standTo: 28_000,
    yieldPct: [93, 96, 98, 99, 100, 99, 97, 94, 91, 86, 81, 75, 67],
    mark: "V",
    source: "nafziger-1994",
  },
  {
    standFrom: 30_000,
    standTo: 30_000,
    yieldPct: [94, 97, 99, 100, 100, 99, 97, 95, 91, 87, 81, 75, 68],
    mark: "V",
    source: "nafziger-1994",
  },
  {
    standFrom: 32_000,
    standTo: 32_000,
    yieldPct: [94, 96, 98, 100, 100, 99, 97, 95, 91, 87, 81, 75, 68],
    mark: "V",
    source: "nafziger-1994",
  },
  {
    standFrom: 34_000,
    standTo: 34_000,
    yieldPct: [93, 96, 98, 99, 99, 98, 96, 94, 90, 86, 80, 74, 67],
    mark: "V",
    source: "nafziger-1994",
  },
  {
    standFrom: 36_000,
    standTo: 36_000,
    yieldPct: [91, 94, 96, 97, 97, 97, 95, 92, 89, 84, 79, 73, 65],
    mark: "V",
    source: "nafziger-1994",
  },
];

const wisconsin2003FullColumns: readonly DateColumn[] = [
  { from: [4, 20], to: [4, 20] },
  { from: [5, 1], to: [5, 1] },
  { from: [5, 10], to: [5, 10] },
  { from: [5, 20], to: [5, 20] },
  { from: [6, 1], to: [6, 1] },
  { from: [6, 10], to: [6, 10] },
  { from: [6, 20], to: [6, 20] },
];

const wisconsin2003FullRows: readonly StandRow[] = [
  {
    standFrom: 32_000,
    standTo: 32_000,
    yieldPct: [97, 100, 96, 86, 63, 40, 8],
    mark: "V",
    source: "wisconsin-lauer-2003",
  },
  {
    standFrom: 34_000,
    standTo: 34_000,
    yieldPct: [97, 100, 96, 85, 63, 40, 8],
    mark: "V",
    source: "wisconsin-lauer-2003",
  },
  {
    standFrom: 36_000,
    standTo: 36_000,
    yieldPct: [96, 99, 95, 85, 63, 40, 8],
    mark: "V",
    source: "wisconsin-lauer-2003",
  },
];

const wisconsin2003ShortColumns: readonly DateColumn[] = [
  { from: [4, 20], to: [4, 20] },
  { from: [5, 1], to: [5, 1] },
  { from: [5, 10], to: [5, 10] },
  { from: [5, 20], to: [5, 20] },
  { from: [6, 1], to: [6, 1] },
  { from: [6, 10], to: [6, 10] },
  { from: [6, 20], to: [6, 20] },
];

const wisconsin2003ShortRows: readonly StandRow[] = [
  {
    standFrom: 32_000,
    standTo: 32_000,
    yieldPct: [92, 96, 94, 87, 72, 56, 32],
    mark: "V",
    source: "wisconsin-lauer-2003",
  },
  {
    standFrom: 34_000,
    standTo: 34_000,
    yieldPct: [92, 96, 94, 87, 72, 56, 32],
    mark: "V",
    source: "wisconsin-lauer-2003",
  },
  {
    standFrom: 36_000,
    standTo: 36_000,
    yieldPct: [91, 95, 93, 87, 71, 55, 32],
    mark: "V",
    source: "wisconsin-lauer-2003",
  },
];

export const cornStandTables = {
  iowa2001: {
    title: "Iowa State PM 1885",
    columns: iowa2001Columns,
    // A Nebraska reprint shows 96 where the first row has 99 for May 13 to 19; the first print is kept.
    rows: iowa2001Rows,
    note: "Nebraska warns that the late columns may be optimistic.",
  },
  iowaGuide: { title: "Iowa State IPM 0001", columns: iowaGuideColumns, rows: iowaGuideRows },
  illinois1994: {
    title: "Nafziger 1994",
    columns: illinois1994Columns,
    rows: illinois1994Rows,
    note: "For fields above about 125 bu/ac; below 100 bu/ac expect nothing above 24,000 plants. Dates after May 25 are extrapolated in the source.",
  },
  wisconsinFull: {
    title: "Wisconsin 2003, full-season hybrid",
    columns: wisconsin2003FullColumns,
    rows: wisconsin2003FullRows,
    note: "Zones of 95 to 115 days of relative maturity.",
  },
  wisconsinShort: {
    title: "Wisconsin 2003, shorter-season hybrid",
    columns: wisconsin2003ShortColumns,
    rows: wisconsin2003ShortRows,
    note: "Zones of 95 to 115 days of relative maturity.",
  },
} as const satisfies Record<string, DateStandTable>;
