/** How the gains of several practices come together. */
export type Interaction = "additive" | "multiplicative" | "diminishing" | "minimum";

export interface PickPractice {
  readonly name: string;
  readonly costUsdPerAc: number;
  /** Gain of this practice alone over doing nothing. */
  readonly gainBuPerAc: number;
}

/** Two gains that do not add up: bushels above their sum, below 0 where they overlap. */
export interface PairGain {
  readonly first: number;
  readonly second: number;
  readonly extraBuPerAc: number;
}

/** What holds yield down: practices that lift it, and the yield it allows today. */
export interface YieldFactor {
  readonly name: string;
  readonly ceilingBuPerAc: number;
  /** Places of the practices that raise it. */
  readonly practices: readonly number[];
}

/** Practices by their place in the list. */
export interface PickRequest {
  readonly practices: readonly PickPractice[];
  readonly priceUsdPerBu: number;
  readonly budgetUsdPerAc: number;
  /** Pairs that cannot both be picked. */
  readonly excludes: readonly (readonly [number, number])[];
  /** first may only be picked with second. */
  readonly requires: readonly (readonly [number, number])[];
  readonly mostPractices: number | null;
  readonly interaction: Interaction;
  /** For multiplicative and diminishing. */
  readonly currentYieldBuPerAc: number | null;
  /** For diminishing; a ceiling over all for minimum. */
  readonly attainableYieldBuPerAc: number | null;
  /** For minimum. */
  readonly factors: readonly YieldFactor[] | null;
  /** For additive. */
  readonly pairGains: readonly PairGain[];
}

/** Most practices in one search. */
export const mostInOnePick = 20;
