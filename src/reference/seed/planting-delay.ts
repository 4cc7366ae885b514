import type { CropKey } from "../crops";
import type { Cited, ReferenceTable } from "../table";

export const delayRegions = {
  illinois: { label: "Illinois", also: ["IL"] },
  ashland: { label: "Wisconsin Ashland", also: ["Ashland"] },
  spooner: { label: "Wisconsin Spooner", also: ["Spooner"] },
  marshfield: { label: "Wisconsin Marshfield", also: ["Marshfield"] },
  hancock: { label: "Wisconsin Hancock", also: ["Hancock"] },
  arlington: { label: "Wisconsin Arlington", also: ["Arlington"] },
  lancaster: { label: "Wisconsin Lancaster", also: ["Lancaster"] },
  minnesota: { label: "Minnesota", also: ["MN"] },
  missouri: { label: "Missouri", also: ["MO"] },
  missouriSouth: { label: "south Missouri", also: ["Missouri south"] },
  virginia: { label: "Virginia", also: ["VA"] },
  nebraskaGood: { label: "Nebraska good season", also: ["Nebraska good"] },
  nebraskaPoor: { label: "Nebraska poor season", also: ["Nebraska poor"] },
} as const;

export type DelayRegionKey = keyof typeof delayRegions;

/** Loss for each day of delay: over a span of days, or on a single printed day. */
export interface DelayRow extends Cited {
  readonly crop: CropKey;
  readonly region: DelayRegionKey;
  readonly from: readonly [month: number, day: number];
  readonly to: readonly [month: number, day: number];
  /** A day; in bushels or in percent of the full yield. */
  readonly loss: number;
  readonly per: "bushels" | "percent";
}

const corn = { crop: "corn", mark: "V" } as const;
const wisconsin = { ...corn, per: "bushels", source: "wisconsin-a117" } as const;
const soybean = { crop: "soybean", mark: "V", per: "bushels" } as const;
/** Sources that name no last day are followed to June 30. */
const openEnded = "The source names no last day; we stop at June 30.";

export const plantingDelays = {
  title: "Yield lost for each day of planting delay",
  units: { loss: "bu/ac a day, or % a day" },
  basis: "against the day before, planting dates of the region",
  rows: [
    { ...corn, region: "illinois", from: [5, 1], to: [5, 10], loss: 0.5, per: "percent", source: "nafziger-2013" },
    { ...corn, region: "illinois", from: [5, 11], to: [5, 20], loss: 0.7, per: "percent", source: "nafziger-2013" },
    { ...corn, region: "illinois", from: [5, 21], to: [5, 30], loss: 0.9, per: "percent", source: "nafziger-2013" },
    { ...wisconsin, region: "ashland", from: [5, 10], to: [5, 10], loss: 0.9 },
    { ...wisconsin, region: "ashland", from: [5, 20], to: [5, 20], loss: 1.4 },
    { ...wisconsin, region: "ashland", from: [6, 1], to: [6, 1], loss: 2 },
    { ...wisconsin, region: "spooner", from: [5, 10], to: [5, 10], loss: 0 },
    { ...wisconsin, region: "spooner", from: [5, 20], to: [5, 20], loss: 0.8 },
    { ...wisconsin, region: "spooner", from: [6, 1], to: [6, 1], loss: 2 },
    { ...wisconsin, region: "marshfield", from: [5, 10], to: [5, 10], loss: 0.5 },
    { ...wisconsin, region: "marshfield", from: [5, 20], to: [5, 20], loss: 1.5 },
    { ...wisconsin, region: "marshfield", from: [6, 1], to: [6, 1], loss: 2.7 },
    { ...wisconsin, region: "hancock", from: [5, 10], to: [5, 10], loss: 0.9 },
    { ...wisconsin, region: "hancock", from: [5, 20], to: [5, 20], loss: 1.7 },
    { ...wisconsin, region: "hancock", from: [6, 1], to: [6, 1], loss: 2.7 },
    { ...wisconsin, region: "arlington", from: [5, 10], to: [5, 10], loss: 0.7 },
    { ...wisconsin, region: "arlington", from: [5, 20], to: [5, 20], loss: 1.3 },
    { ...wisconsin, region: "arlington", from: [6, 1], to: [6, 1], loss: 1.9 },
    { ...wisconsin, region: "lancaster", from: [5, 10], to: [5, 10], loss: 0.9 },
    { ...wisconsin, region: "lancaster", from: [5, 20], to: [5, 20], loss: 0.9 },
    { ...wisconsin, region: "lancaster", from: [6, 1], to: [6, 1], loss: 0.9 },
    { ...soybean, region: "illinois", from: [6, 1], to: [6, 30], loss: 0.5, source: "illinois-bulletin-2009" },
    {
      ...soybean,
      region: "minnesota",
      from: [5, 20],
      to: [5, 31],
      loss: 0.333,
      source: "umn-naeve-2017",
      note: "Lamberton; printed for late May, taken here as May 20 to 31.",
    },
    {
      ...soybean,
      region: "minnesota",
      from: [6, 1],
      to: [6, 10],
      loss: 1,
      per: "percent",
      source: "umn-naeve-2017",
      note: "Lamberton; printed for early June, taken here as June 1 to 10.",
    },
    {
      ...soybean,
      region: "missouri",
      from: [5, 16],
      to: [6, 30],
      loss: 0.5,
      source: "missouri-reis-2023",
      note: `Printed as 3.5 bu a week after May 15. ${openEnded}`,
    },
    {
      ...soybean,
      region: "missouriSouth",
      from: [5, 16],
      to: [6, 30],
      loss: 2.6 / 7,
      source: "missouri-reis-2023",
      note: `Printed as 2.6 bu a week after May 15. ${openEnded}`,
    },
    {
      ...soybean,
      region: "virginia",
      from: [6, 16],
      to: [6, 30],
      loss: 0.5,
      source: "virginia-soybean-replant",
      note: `Printed for after mid June. ${openEnded}`,
    },
    {
      ...soybean,
      region: "nebraskaGood",
      from: [5, 2],
      to: [6, 30],
      loss: 0.63,
      source: "unl-soybean-dates",
      note: `Season of 2004, after May 1. ${openEnded}`,
    },
    {
      ...soybean,
      region: "nebraskaPoor",
      from: [5, 2],
      to: [6, 30],
      loss: 0.25,
      source: "unl-soybean-dates",
      note: `Season of 2003, after May 1. ${openEnded}`,
    },
  ],
} as const satisfies ReferenceTable<DelayRow>;
