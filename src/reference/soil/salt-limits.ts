import type { CropKey } from "../crops";
import type { Cited } from "../table";

export const saltPlacements = {
  furrow: { label: "in furrow", also: ["furrow", "with seed", "pop-up", "popup", "seed-placed"] },
  band: { label: "2x2 band", also: ["2 x 2", "2x2", "2 by 2", "2 × 2", "side band", "band"] },
} as const;

export type SaltPlacementKey = keyof typeof saltPlacements;

export const saltGuides = {
  KS: { label: "KS", also: ["Kansas"] },
  MI: { label: "MI", also: ["Michigan"] },
  triState: { label: "IN-MI-OH 1995", also: ["Tri-State", "IN-MI-OH", "Tri-State 1995", "Ohio"] },
  general: { label: "general", also: ["most guides"] },
} as const;

export type SaltGuideKey = keyof typeof saltGuides;

/** Corn in the furrow, most N + K2O, lb/ac by row width. */
export const furrowCorn = {
  rowWidthIn: [20, 30, 40],
  heavier: [12, 8, 6],
  sandy: [8, 6, 4],
  mark: "V",
  source: "ksu-starter",
  locator: "Table 1",
  note: "No urea and no UAN.",
} as const satisfies Cited & Record<string, unknown>;

/** Corn in the furrow by CEC, lb/ac. */
export const furrowTriState = {
  cecUnder: 8,
  light: 5,
  heavy: 8,
  mark: "M",
  source: "msu-e2567-1995",
} as const satisfies Cited & Record<string, unknown>;

/** Seeds that take nothing in the furrow. */
export const furrowNone = {
  crops: ["soybean", "dryBean", "sunflower", "canola"],
  mark: "M",
  source: "ksu-mf2586",
  note: "Most guides want no fertilizer in the furrow with these seeds.",
} as const satisfies Cited & { crops: readonly CropKey[] };

export interface BandLimit {
  readonly crop: CropKey;
  /** N + K2O, lb/ac, and on clay. */
  readonly salts: number;
  readonly saltsOnClay?: number;
  /** Of each alone; left out: none printed. */
  readonly n?: number;
  readonly p2o5?: number;
  readonly k2o?: number;
}

/** 2 × 2 bands, most lb/ac. */
export const bandLimits = {
  rows: [
    { crop: "corn", salts: 100, saltsOnClay: 140, n: 40, p2o5: 100, k2o: 100 },
    { crop: "dryBean", salts: 100, n: 40, k2o: 60 },
    { crop: "soybean", salts: 80, p2o5: 100, k2o: 80 },
    { crop: "sugarBeet", salts: 80, saltsOnClay: 120, n: 40, p2o5: 100, k2o: 80 },
  ],
  mark: "V",
  source: "msu-bands-2009",
} as const satisfies Cited & { rows: readonly BandLimit[] };

/** Share of a limit that is left on dry soil. */
export const drySoil = {
  share: 0.5,
  mark: "V",
  source: "umn-dry-soil-2013",
  note: "Dry soil: half, or none.",
} as const satisfies Cited & { share: number };
