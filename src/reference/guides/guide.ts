import type { CropKey } from "../crops";
import type { RemovalSetKey } from "../nutrients";
import type { SourceKey } from "../sources";
import type { Cited } from "../table";
import type { ApproachKey, ExtractantKey } from "./words";

/** A number that may rise with the soil's CEC: base + perCec × CEC. */
export interface CecLine {
  readonly base: number;
  readonly perCec: number;
}

/** Crop removal scaled, as a part of a rate. */
export interface RemovalShare {
  readonly times: number;
  /** Crops whose removal is scaled otherwise. */
  readonly timesFor?: Partial<Record<CropKey, number>>;
  /** lb/ac on top. */
  readonly plus: number;
}

/**
 * Build up below a critical level, maintain above it, then nothing; with or without a zone in which the rate falls
 * in a straight line to zero.
 */
export interface BuildMaintain {
  readonly kind: "buildMaintain";
  readonly critical: CecLine;
  /** Width of the maintenance zone above the critical level. */
  readonly plateau: number;
  /** Width of the zone of falling rates above that; 0 where there is none. */
  readonly drawdown: number;
  readonly build: {
    /** lb of oxide that raise the test by one unit (of its square root, on a square-root curve). */
    readonly lbPerUnit: CecLine;
    readonly years: number;
    readonly curve: "straight" | "squareRoot";
  };
  readonly maintenance: RemovalShare;
  readonly zones: {
    readonly build: string;
    readonly maintain: string;
    readonly drawdown?: string;
    readonly none: string;
  };
}

/** Printed classes; the test is rounded to a whole number and upper bounds belong to their class. */
export interface ClassTable {
  readonly kind: "classes";
  readonly classes: readonly {
    readonly zone: string;
    /** Highest whole test of the class; null for the last. */
    readonly upTo: number | null;
    readonly rate: { readonly fixed: number } | { readonly removal: RemovalShare };
  }[];
  /** Zone whose upper bound is the critical level, when the guide names one. */
  readonly criticalZone?: string;
}

/** constant + perYield × yield + perTest × test + perYieldTest × yield × test, 0 from the critical level up. */
export interface Plane {
  readonly kind: "plane";
  readonly constant: number;
  readonly perYield: number;
  readonly perTest: number;
  readonly perYieldTest: number;
  /** null: the level where the equation itself reaches zero. */
  readonly critical: number | null;
  /** Least rate below the critical level. */
  readonly least: number;
  readonly zones: { readonly below: string; readonly above: string };
}

/** square × I² + linear × I + constant, on its falling side only. */
export interface IndexCurve {
  readonly kind: "indexCurve";
  readonly square: number;
  readonly linear: number;
  readonly constant: number;
  readonly zones: { readonly below: string; readonly above: string };
}

/** Rates printed at single tests, read along straight lines; removal above the last. */
export interface RatePoints {
  readonly kind: "points";
  readonly points: readonly (readonly [test: number, lbPerAc: number])[];
  readonly above: RemovalShare;
  readonly zones: { readonly within: string; readonly above: string };
}

export type RateForm = BuildMaintain | ClassTable | Plane | IndexCurve | RatePoints;

/** One rule of a guide with the conditions it is printed for. */
export interface NeedRule extends Cited {
  readonly crops: readonly CropKey[] | "all";
  readonly extractants: readonly ExtractantKey[];
  readonly approaches: readonly ApproachKey[];
  /** Holds for CEC up to and with this. Rules are listed from the lowest; the last one has none. */
  readonly cecUpTo?: number;
  readonly form: RateForm;
  /** Class names by test, where the guide prints them apart from its rates; upper bounds belong to their class. */
  readonly classes?: readonly { readonly zone: string; readonly upTo: number | null }[];
  /** Rate unit to lb/ac, as the source converts: 0.9 for kg/ha. */
  readonly lbPerRateUnit?: number;
  /** Yield units of the rule per unit the crop is counted in: 100 for lb where we count cwt. */
  readonly yieldUnitsPer?: number;
}

/** A guide's phosphate or potash half. */
export interface NeedSystem {
  readonly extractants: readonly ExtractantKey[];
  readonly testUnit: "ppm" | "lb/ac" | "index";
  /** Highest test that can be real, in that unit. */
  readonly highestTest: number;
  readonly depthIn: number;
  /** Rates are printed to the nearest of these, lb/ac. */
  readonly roundTo: number;
  /** Set of removal numbers the maintenance rates rest on. */
  readonly removalSet: RemovalSetKey;
  readonly rules: readonly NeedRule[];
}

/** A region's published recommendation system. */
export interface Guide {
  readonly label: string;
  readonly also: readonly string[];
  readonly title: string;
  readonly year: string;
  readonly sources: readonly SourceKey[];
  readonly approach: ApproachKey;
  readonly P2O5: NeedSystem;
  readonly K2O: NeedSystem;
}
