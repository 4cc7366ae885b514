import type { Cited, ReferenceTable } from "../table";

/** The published equations of the slope factor. */
export const slopeMethods = {
  usle: {
    label: "USLE 1978",
    also: ["USLE", "AH-537", "1978"],
    mark: "M",
    source: "usda-ah537-1978",
  },
  rusle: {
    label: "RUSLE 1997",
    also: ["RUSLE", "AH-703", "1997"],
    mark: "M",
    source: "usda-ah703-1997",
  },
} as const satisfies Record<string, Cited & { label: string; also: readonly string[] }>;

export type SlopeMethodKey = keyof typeof slopeMethods;

/** Slope length at which the slope factor is 1 on 9 %, ft. */
export const unitPlot = {
  lengthFt: 72.6,
  steepnessPct: 9,
  mark: "V",
  source: "usda-ah537-1978",
} as const satisfies Cited & Record<string, unknown>;

/** USLE: exponent of slope length, by steepness below a bound in %. */
export const usleLengthExponents = {
  rows: [
    { belowPct: 1, exponent: 0.2 },
    { belowPct: 3.5, exponent: 0.3 },
    { belowPct: 5, exponent: 0.4 },
    { belowPct: Infinity, exponent: 0.5 },
  ],
  /** 65.41 sin² + 4.56 sin + 0.065 */
  steepness: { square: 65.41, linear: 4.56, constant: 0.065 },
  mark: "M",
  source: "usda-ah537-1978",
} as const satisfies Cited & Record<string, unknown>;

/** RUSLE: ratio of rill to interrill erosion, and the steepness factor. */
export const rusleSlope = {
  /** (sin / 0.0896) / (3 sin^0.8 + 0.56) */
  rillRatio: { sine: 0.0896, factor: 3, power: 0.8, constant: 0.56 },
  /** Below 9 %: 10.8 sin + 0.03; from there on: 16.8 sin - 0.50. */
  gentle: { belowPct: 9, factor: 10.8, constant: 0.03 },
  steep: { factor: 16.8, constant: -0.5 },
  /** Slopes shorter than this take 3 sin^0.8 + 0.56 at any steepness. */
  shortFt: 15,
  mark: "M",
  source: "usda-ah703-1997",
} as const satisfies Cited & Record<string, unknown>;

/** Slope lengths beyond which the factor is a stretch, ft. */
export const usualSlopeLength = { ft: 400, mark: "V", source: "usda-ah703-1997" } as const satisfies Cited & {
  ft: number;
};

/** How fast soil loss falls with cover, by what kind of wash does the damage: e^(-exponent × cover %). */
export const coverEffects = {
  typical: {
    label: "typical cropland",
    also: ["typical", "cropland"],
    exponentPerPct: 0.035,
    mark: "M",
    source: "usda-ah703-1997",
  },
  interrill: {
    label: "sheet wash",
    also: ["interrill", "sheet", "sheet erosion"],
    exponentPerPct: 0.025,
    mark: "V",
    source: "usda-ars-rusle-notes",
  },
  rill: {
    label: "rills",
    also: ["rill", "rill erosion"],
    exponentPerPct: 0.05,
    mark: "V",
    source: "usda-ars-rusle-notes",
  },
} as const satisfies Record<string, Cited & { label: string; also: readonly string[]; exponentPerPct: number }>;

export type CoverEffectKey = keyof typeof coverEffects;

export interface ContourRow extends Cited {
  readonly fromPct: number;
  readonly toPct: number;
  readonly factor: number;
  readonly longestFt: number;
}

const ah537 = { mark: "M", source: "usda-ah537-1978" } as const;

export const contourFactors = {
  title: "Practice factor of farming on the contour",
  units: { fromPct: "%", toPct: "%", factor: "of straight rows up and down", longestFt: "ft" },
  basis: "rows on the contour against rows up and down the slope; by steepness in whole percent",
  rows: [
    { fromPct: 1, toPct: 2, factor: 0.6, longestFt: 400, ...ah537 },
    { fromPct: 3, toPct: 5, factor: 0.5, longestFt: 300, ...ah537 },
    { fromPct: 6, toPct: 8, factor: 0.5, longestFt: 200, ...ah537 },
    { fromPct: 9, toPct: 12, factor: 0.6, longestFt: 120, ...ah537 },
    { fromPct: 13, toPct: 16, factor: 0.7, longestFt: 80, ...ah537 },
    { fromPct: 17, toPct: 20, factor: 0.8, longestFt: 60, ...ah537 },
    { fromPct: 21, toPct: 25, factor: 0.9, longestFt: 50, ...ah537 },
  ],
} as const satisfies ReferenceTable<ContourRow>;

/** Tons of soil on an acre that make a depth of 0.07 inch. */
export const soilDepth = {
  tonPerAc: 10,
  depthIn: 0.07,
  mark: "V",
  source: "missouri-g1650",
} as const satisfies Cited & Record<string, unknown>;

/** Cover after planting from which tillage counts as conservation tillage, %. */
export const conservationCover = {
  coverPct: 30,
  mark: "V",
  source: "residue-thirty-percent",
} as const satisfies Cited & Record<string, unknown>;

/** Soil loss tolerance: its usual range, ton/ac a year. */
export const usualTolerance = {
  lowTonPerAc: 1,
  highTonPerAc: 5,
  mark: "M",
  source: "nrcs-soil-handbook",
} as const satisfies Cited & Record<string, unknown>;
