import type { CropKey } from "../crops";
import type { Cited } from "../table";
import type { CreditGuideKey } from "./credits";

/** The soil nitrate a rule reads, in the guide's unit. */
export interface NitrateTerm {
  /** lb N/ac taken off per unit. */
  readonly lbPerUnit: number;
  readonly unit: "ppm" | "lb/ac";
  /** Depth and kind of sample, in words. */
  readonly sample: string;
  /** What the guide takes where there is no test; left out: the test is needed. */
  readonly usual?: { readonly sandy: number; readonly heavier: number };
}

/** Organic matter a rule counts on. */
export interface OrganicTerm {
  /** lb N/ac taken off per 1 %. */
  readonly lbPerPct: number;
  /** The same per unit of yield. */
  readonly lbPerPctYield: number;
  /** Counted as no less and no more than these, %. */
  readonly counted?: { readonly min: number; readonly max: number };
}

/** constant + per yield × goal − nitrate − organic matter − credits, with the factors some guides put on top. */
export interface NitrogenRule extends Cited {
  readonly crops: readonly CropKey[];
  readonly constant: number;
  readonly perYield: number;
  /** Rule's yield units per unit the crop is counted in: 100 for lb where we count cwt. */
  readonly yieldUnitsPer?: number;
  /** Yields it is printed for, in the crop's unit. */
  readonly yields?: { readonly min: number; readonly max: number };
  readonly nitrate?: NitrateTerm;
  readonly organic?: OrganicTerm;
  /** Organic matter it is printed for, %, where that is all it says of it. */
  readonly organicRange?: { readonly min: number; readonly max: number };
  /** The constant is the critical nitrate, ppm, times the nitrate factor; the one taken when none is typed. */
  readonly usualCritical?: number;
  /** Starts from the region's own current rate, which the person types. */
  readonly startsFrom?: string;
  /** Price ratio and timing factors apply. */
  readonly factors?: typeof nebraskaFactors;
  readonly tillage?: typeof northDakotaTillage;
  /** lb/ac off per full percent of organic matter above the first. */
  readonly richOrganic?: { readonly above: number; readonly lbPerPct: number };
  /** Region whose printed credits for a previous crop are taken off; left out: none are. */
  readonly credits?: CreditGuideKey;
  /** Most of the other credits counted, lb/ac; 0: none may be given. Left out: all. */
  readonly otherCreditsUpTo?: number;
  /** Says which credits are already inside. */
  readonly inside: string;
}

export interface NitrogenGuide {
  readonly label: string;
  readonly also: readonly string[];
  readonly title: string;
  readonly rules: readonly NitrogenRule[];
  /** A printed table in place of a formula. */
  readonly table?: "oatMinnesota";
}

/** Nebraska's adjustments for price and timing. R is the price of a bushel over that of a pound of nitrogen. */
export const nebraskaFactors = {
  constant: 0.263,
  linear: 0.1256,
  square: -0.00421,
  ratio: { min: 4, max: 12 },
  timing: { fall: 1.05, preplant: 1, split: 0.95 },
  mark: "M",
  source: "unl-ec117",
  note: "Price and timing adjustments.",
} as const satisfies Cited & Record<string, unknown>;

/** North Dakota's tillage adjustments, lb N/ac. */
export const northDakotaTillage = {
  lb: { tilled: 0, newNoTill: 20, longNoTill: -50 },
  mark: "V",
  source: "ndsu-spring-wheat-2009",
} as const satisfies Cited & Record<string, unknown>;
