import type { CropKey } from "../crops";
import type { RemovalSetKey } from "../nutrients";
import type { SourceKey } from "../sources";
import type { Cited } from "../table";
import type { ApproachKey, ExtractantKey, GroupKey } from "./words";

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
    /** Several where the guide leaves the choice to the grower. */
    readonly years: number | readonly number[];
    readonly curve: "straight" | "squareRoot";
  };
  readonly maintenance: RemovalShare;
  /** No rate is held from the critical level up. */
  readonly unpublishedAbove?: true;
  readonly zones: {
    readonly build: string;
    readonly maintain: string;
    readonly drawdown?: string;
    readonly none: string;
  };
}

/** lb in the guide's rate unit; a share of crop removal; null where no rate is held. */
export type ZoneRate = number | RemovalShare | null;

/** Printed classes; the test is rounded to a whole number and upper bounds belong to their class. */
export interface ClassTable {
  readonly kind: "classes";
  /** upTo: highest whole test of the class; null for the last. A guide that names no classes has "" for zones. */
  readonly classes: readonly (readonly [zone: string, upTo: number | null, rate: ZoneRate])[];
  /** Zone whose upper bound is the critical level, when the guide names one. */
  readonly criticalZone?: string;
}

/** One critical level: a rate below it and a rate from it up. */
export interface Threshold {
  readonly kind: "threshold";
  readonly critical: number;
  readonly below: ZoneRate;
  readonly above: ZoneRate;
  readonly zones: { readonly below: string; readonly above: string };
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
}

/** Rates printed at single tests, read along straight lines; removal above the last. */
export interface RatePoints {
  readonly kind: "points";
  readonly points: readonly (readonly [test: number, lbPerAc: number])[];
  readonly above: RemovalShare;
}

export type RateForm = BuildMaintain | ClassTable | Threshold | Plane | IndexCurve | RatePoints;

/** One rule of a guide with the conditions it is printed for. */
export interface NeedRule extends Cited {
  readonly crops: readonly CropKey[] | "all";
  /** All of the guide's when left out. */
  readonly extractants?: readonly ExtractantKey[];
  /** The guide's own when left out. */
  readonly approaches?: readonly ApproachKey[];
  /** Holds only after this crop. Listed before the rule that holds otherwise. */
  readonly after?: CropKey;
  readonly group?: GroupKey;
  /** Holds for CEC up to and with this. Rules are listed from the lowest; the last one has none. */
  readonly cecUpTo?: number;
  /** Holds for CEC below this; otherwise as cecUpTo. */
  readonly cecBelow?: number;
  readonly form: RateForm;
  /** Class names by test, where the guide prints them apart from its rates; upper bounds belong to their class. */
  readonly classes?: readonly (readonly [zone: string, upTo: number | null])[];
  /** Rate unit to lb/ac, as the source converts: 0.9 for kg/ha. */
  readonly lbPerRateUnit?: number;
  /** Yield units of the rule per unit the crop is counted in: 100 for lb where we count cwt. */
  readonly yieldUnitsPer?: number;
}

/** A guide's phosphate or potash half. */
export interface NeedSystem {
  /** Empty where the guide is read at a class that the laboratory prints. */
  readonly extractants: readonly ExtractantKey[];
  readonly testUnit: "ppm" | "lb/ac" | "index" | "class";
  /** Highest test that can be real, in that unit. */
  readonly highestTest: number;
  /** null: not stated in what we hold. */
  readonly depthIn: number | null;
  /** Rates are printed to the nearest of these, lb/ac. */
  readonly roundTo: number;
  /** Set of removal numbers the maintenance rates rest on; null where none of the guide's is held. */
  readonly removalSet: RemovalSetKey | null;
  /** Removal the guide prints beyond that set, lb per unit of yield, from the guide's first source. */
  readonly ownRemoval?: Partial<Record<CropKey, number>>;
  /** A crop of the rotation with a higher critical level sets the level for the others. */
  readonly partnerGoverns?: true;
  readonly rules: readonly NeedRule[];
}

export type NeedNutrient = "P2O5" | "K2O";

/** A region's published recommendation system. */
export interface Guide {
  readonly label: string;
  readonly also: readonly string[];
  readonly title: string;
  readonly year: string;
  readonly sources: readonly SourceKey[];
  readonly approach: ApproachKey;
  /** Only part of the bulletin is held here: what is missing may well be printed there. */
  readonly isPartial?: true;
  /** Prints a fertility index that its tests convert to. */
  readonly fertilityIndex?: true;
  readonly P2O5: NeedSystem;
  readonly K2O: NeedSystem;
}
