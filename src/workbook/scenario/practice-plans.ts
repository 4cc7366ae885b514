import { practiceExamples, type PracticeExample } from "./practice-examples";

/** A practice weighed for the coming season: the changes under discussion, with where and how they could be tried. */
export interface PracticePlan {
  readonly practice: string;
  /** The one field it is about; null for all acres of the crop. */
  readonly field: string | null;
  /** Whether the crop budget pays for it already. */
  readonly isInBudget: boolean;
  readonly costUsdPerAc: number;
  readonly lowGainBuPerAc: number;
  readonly likelyGainBuPerAc: number;
  readonly highGainBuPerAc: number;
  /** What one pair of strips costs; null for the usual. */
  readonly pairCostUsd: number | null;
}

/** Practices that stay on one field. */
const onOneField = ["potash before soybean", "tile, a year's share"];
/** The seed line of the crop budgets has a treatment with inoculant in it. */
const inBudget = ["seed treatment with inoculant"];
/** Strips with tile have to be tiled. */
const dearStrips: Readonly<Record<string, number>> = { "tile, a year's share": 1000 };

/** The crop that the practices under discussion are for. */
export const practiceCrop = "soybean";

export const practicePlans: readonly PracticePlan[] = practiceExamples.map(planOf);

function planOf(example: PracticeExample): PracticePlan {
  const { change, lowGainBuPerAc, likelyGainBuPerAc, highGainBuPerAc } = example;
  return {
    practice: change,
    field: onOneField.includes(change) ? example.field : null,
    isInBudget: inBudget.includes(change),
    costUsdPerAc: example.addedCostUsdPerAc - example.savedCostUsdPerAc,
    lowGainBuPerAc,
    likelyGainBuPerAc,
    highGainBuPerAc,
    pairCostUsd: dearStrips[change] ?? null,
  };
}

/** How practices are weighed and tried, as examples to overwrite. */
export const practiceTerms = {
  seasons: 3,
  pairs: 6,
  /** SD of the difference of two strips side by side: about 3 % of a soybean yield, times the root of 2. */
  pairSdBuPerAc: 2.5,
  pairAcres: 1.7,
  pairCostUsd: 120,
  /** SD of a gain from season to season. */
  seasonSdBuPerAc: 1,
  budgetUsdPerAc: 35,
  mostPractices: 4,
  /** The best that ground gives, as a multiple of the usual yield. */
  attainableShare: 1.3,
  /** How far beliefs are off the same way, 0 to 1. */
  sharedOptimism: 0.3,
} as const;

/** How far yields and prices may stray from the plan, in percent of it, and how they move together. */
export const outlookTerms = {
  lowYieldPct: 75,
  highYieldPct: 115,
  lowPricePct: 80,
  highPricePct: 125,
  correlation: -0.2,
} as const;
