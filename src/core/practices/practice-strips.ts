import { within } from "../limit";
import { practiceLimits } from "./practice-limits";
import { practiceTestValue, type PracticeStake } from "./practice-test-value";

export interface PracticeStripsInput extends PracticeStake {
  /** Standard deviation of the difference of one pair of strips. */
  readonly pairSdBuPerAc: number;
  /** Cost of laying, tending and weighing one pair. */
  readonly pairCostUsd: number;
  /** Cost of a trial whatever its size. */
  readonly setUpCostUsd: number;
  /** Standard deviation of the gain from season to season, which more strips do not lessen. */
  readonly seasonSdBuPerAc: number;
  readonly mostPairs: number;
}

export interface StripCount {
  readonly pairs: number;
  readonly trialErrorBuPerAc: number;
  readonly valueUsd: number;
  readonly costUsd: number;
  readonly leftUsd: number;
}

export interface PracticeStrips {
  readonly counts: readonly StripCount[];
  readonly best: StripCount;
  /** Whether the best trial is worth more than it costs. */
  readonly isWorthIt: boolean;
  readonly certaintyUsd: number;
  readonly meanNetUsdPerAc: number;
}

/** Fewest pairs of strips that give an error of their own. */
const leastPairs = 2;

/**
 * What trials of 2, 3, 4 … pairs of strips are worth over their cost.
 *
 *   error² = sd of a pair² / pairs + season sd²      left = value(error) - set-up - cost per pair × pairs
 *
 * @source raiffa-schlaifer-1961
 */
export function practiceStrips(input: PracticeStripsInput): PracticeStrips {
  within("pairSd", input.pairSdBuPerAc, practiceLimits.gainError);
  within("pairCost", input.pairCostUsd, practiceLimits.stripCost);
  within("setUpCost", input.setUpCostUsd, practiceLimits.stripCost);
  within("seasonSd", input.seasonSdBuPerAc, practiceLimits.gainError);
  within("mostPairs", input.mostPairs, practiceLimits.mostPairs);

  const first = stripCount(input, leastPairs);
  const counts = [first];
  for (let pairs = leastPairs + 1; pairs <= input.mostPairs; pairs++) counts.push(stripCount(input, pairs));
  const best = counts.reduce((most, count) => (count.leftUsd > most.leftUsd ? count : most), first);
  const { certaintyUsd, meanNetUsdPerAc } = practiceTestValue({ ...input, trialErrorBuPerAc: 0 });
  return { counts, best, isWorthIt: best.leftUsd > 0, certaintyUsd, meanNetUsdPerAc };
}

function stripCount(input: PracticeStripsInput, pairs: number): StripCount {
  const trialErrorBuPerAc = Math.hypot(input.pairSdBuPerAc / Math.sqrt(pairs), input.seasonSdBuPerAc);
  // The season is in this error already.
  const { valueUsd } = practiceTestValue({ ...input, trialErrorBuPerAc, seasonSdBuPerAc: 0 });
  const costUsd = input.setUpCostUsd + input.pairCostUsd * pairs;
  return { pairs, trialErrorBuPerAc, valueUsd, costUsd, leftUsd: valueUsd - costUsd };
}
