import type { CropKey } from "../crops";
import type { Cited, ReferenceTable } from "../table";

/** A weed in a crop whose loss curve is published. */
export const weedCurves = {
  volunteerSoybeanInCorn: { label: "volunteer soybean in corn", also: ["volunteer soybean"] },
} as const;

export type WeedCurveKey = keyof typeof weedCurves;

export interface WeedCurveRow extends Cited {
  readonly curve: WeedCurveKey;
  /** Percent of the yield lost to one weed in a square meter while weeds are few. */
  readonly slopePct: number;
  /** Percent lost when weeds are without number. */
  readonly ceilingPct: number;
}

export const weedCurveTable = {
  title: "Published weed loss curves",
  units: { slopePct: "% for one weed in a square meter", ceilingPct: "%" },
  basis: "weeds counted in a square meter, in the crop of the study",
  rows: [{ curve: "volunteerSoybeanInCorn", slopePct: 3.2, ceilingPct: 56, mark: "V", source: "alms-2016" }],
} as const satisfies ReferenceTable<WeedCurveRow>;

export interface WeedReportRow extends Cited {
  readonly crop: CropKey;
  readonly weed: string;
  /** Weeds; the two ends of a range. */
  readonly low: number;
  readonly high: number;
  readonly per: string;
  /** Percent of yield; left out where the row is a threshold density. */
  readonly lossLowPct?: number;
  readonly lossHighPct?: number;
}

const one = (density: number, per: string, lossPct: number) => ({
  low: density,
  high: density,
  per,
  lossLowPct: lossPct,
  lossHighPct: lossPct,
});
const row = "per meter of row";
const square = "per square meter";
const tenFeet = "per 10 feet of row";

const palmer = { crop: "soybean", weed: "Palmer amaranth", source: "klingaman-1994" } as const;
const quoted = { note: "As quoted in Weed Technology." } as const;
const bensch = {
  crop: "soybean",
  mark: "V",
  source: "bensch-2003",
  locator: "abstract",
  note: "Weeds up with the crop; those that came up from the cotyledon stage on cost no measurable yield.",
} as const;
const purdue = { crop: "soybean", mark: "V", source: "purdue-field-guide" } as const;

export const weedReports = {
  title: "Yield lost to weeds, as reported",
  units: { low: "weeds", high: "weeds", lossLowPct: "%", lossHighPct: "%" },
  basis: "single studies: sites, years and time of emergence differ widely",
  rows: [
    { ...palmer, ...one(0.33, row, 17), mark: "M" },
    { ...palmer, ...one(0.66, row, 27), mark: "M" },
    { ...palmer, ...one(1, row, 32), mark: "V", ...quoted },
    { ...palmer, ...one(2, row, 48), mark: "M" },
    { ...palmer, ...one(3.33, row, 64), mark: "M" },
    { ...palmer, ...one(10, row, 68), mark: "M" },
    { weed: "Palmer amaranth", ...one(8, row, 78.7), ...bensch },
    { weed: "waterhemp", ...one(8, row, 56.2), ...bensch },
    { weed: "redroot pigweed", ...one(8, row, 38), ...bensch },
    {
      crop: "corn",
      weed: "Palmer amaranth",
      low: 0.5,
      high: 8,
      per: row,
      lossLowPct: 11,
      lossHighPct: 91,
      mark: "V",
      source: "massinga-2001",
      locator: "abstract",
      note: "Weeds up with the crop.",
    },
    {
      crop: "corn",
      weed: "common lambsquarters",
      low: 0.32,
      high: 4.17,
      per: row,
      mark: "V",
      source: "fischer-2004",
      note: "Threshold that paid, by site and year; the greatest loss ran from 0 to 100 % between states.",
    },
    {
      crop: "corn",
      weed: "redroot pigweed",
      low: 0.09,
      high: 0.13,
      per: square,
      mark: "V",
      source: "planta-daninha-2006",
      note: "Threshold that paid, over corn stands at one site.",
    },
    { weed: "giant foxtail", ...one(5, tenFeet, 3), ...purdue },
    { weed: "pigweed", ...one(1, tenFeet, 30), ...purdue, note: "All season; an upper bound." },
    { weed: "pigweed", ...one(2, tenFeet, 50), ...purdue, note: "All season; an upper bound." },
    {
      crop: "soybean",
      weed: "common cocklebur",
      ...one(0.33, square, 18),
      mark: "V",
      source: "barrentine-1974",
      note: "Printed as 3,300 plants in a hectare.",
    },
    {
      crop: "cotton",
      weed: "Palmer amaranth",
      ...one(1.1, square, 59),
      mark: "V",
      source: "morgan-2001",
      note: "Loss of lint.",
    },
  ],
} as const satisfies ReferenceTable<WeedReportRow>;

export interface WeedFreeRow extends Cited {
  readonly crop: CropKey;
  readonly condition: string;
  readonly what: string;
  readonly stage: string;
}

const removal = "weeds out by";
const period = "keep weed-free";
const soltani = { crop: "corn", mark: "V", source: "soltani-2022" } as const;
const knezevic = { crop: "soybean", what: removal, mark: "V", source: "knezevic-2003", note: "5 % loss." } as const;
const evans = { crop: "corn", what: period, mark: "V", source: "evans-2003" } as const;
const residual = { crop: "corn", what: removal, mark: "V", source: "nedeljkovic-2021" } as const;

export const weedFreePeriods = {
  title: "When weeds have to be out",
  units: {},
  basis: "crop stages; single studies",
  rows: [
    { ...knezevic, condition: "7.5-in rows", stage: "V3" },
    { ...knezevic, condition: "15-in rows", stage: "V2" },
    { ...knezevic, condition: "30-in rows", stage: "V1" },
    {
      crop: "soybean",
      condition: "general advice",
      what: "keep weed-free until",
      stage: "about V4 to R1, canopy closed",
      mark: "M",
      source: "extension-weed-free",
    },
    { ...evans, condition: "no nitrogen", stage: "V1-V11" },
    { ...evans, condition: "55 lb N/ac", stage: "V3-V10" },
    { ...evans, condition: "110 lb N/ac", stage: "V4-V9" },
    { ...evans, condition: "210 lb N/ac", stage: "V6-V9" },
    {
      ...soltani,
      condition: "many weeds, Ontario",
      what: removal,
      stage: "V3",
      note: "5 % loss after V3: 11 days after emergence, weeds 7 cm.",
    },
    {
      ...soltani,
      condition: "many weeds, Ontario: 1, 2.5, 10, 25 and 50 % loss",
      what: removal,
      stage: "V1, V2, V4, V8, V14",
    },
    { ...soltani, condition: "few weeds, Ontario: 1, 2.5, 5 and 10 % loss", what: removal, stage: "V5, V6, V7, V11" },
    { ...residual, condition: "no residual herbicide", stage: "V1-V2", note: "16 to 19 days after emergence." },
    { ...residual, condition: "residual herbicide", stage: "V4-V10", note: "25 to 58 days after emergence." },
  ],
} as const satisfies ReferenceTable<WeedFreeRow>;
