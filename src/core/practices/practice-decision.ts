import { waitFor } from "../fault";
import { within } from "../limit";
import type { GainRange } from "./practice-belief";
import { practiceLimits } from "./practice-limits";
import { practiceOdds, type PracticeOdds } from "./practice-odds";
import { practiceStrips, type PracticeStrips } from "./practice-strips";

export type Decision = "adopt" | "test" | "skip";

export interface PracticeDecisionInput extends GainRange {
  readonly costUsdPerAc: number;
  readonly priceUsdPerBu: number;
  readonly acres: number;
  readonly seasons: number;
  /** What a pair of strips costs and how far its difference scatters; both, or neither. */
  readonly pairCostUsd: number | null;
  readonly pairSdBuPerAc: number | null;
  readonly pairAcres: number;
  /** Standard deviation of the gain from season to season, which lessens what a trial of one season is worth. */
  readonly seasonSdBuPerAc: number;
}

export interface PracticeDecision {
  readonly decision: Decision;
  readonly odds: PracticeOdds;
  /** What trials are worth over their cost; null when nothing is known of their cost and scatter. */
  readonly strips: PracticeStrips | null;
  /** Pairs of strips and acres to test on; 0 unless the decision is to test. */
  readonly pairs: number;
  readonly testAcres: number;
}

/**
 * Our own choice, for want of a trial's cost: sure enough to act without one at 8 chances in 10 either way, and else
 * 6 pairs of strips.
 */
const ownChoice = { sureChance: 0.8, pairs: 6, mostPairs: 20 } as const;

/**
 * Adopt, test or skip a practice.
 *
 * With the cost and scatter of strips: test when some trial is worth more than it costs; else adopt what pays on
 * average and skip what does not. Without them: adopt or skip when the chance that it pays is 8 in 10 either way and
 * the average agrees, else test.
 *
 * @source raiffa-schlaifer-1961
 */
export function practiceDecision(input: PracticeDecisionInput): PracticeDecision {
  within("acres", input.acres, practiceLimits.acres);
  within("seasons", input.seasons, practiceLimits.seasons);
  within("pairAcres", input.pairAcres, practiceLimits.pairAcres);
  within("seasonSd", input.seasonSdBuPerAc, practiceLimits.gainError);
  const odds = practiceOdds(input);
  const strips = stripsOf(input, odds);
  const decision = strips ? byValue(strips) : byChance(odds);
  const pairs = decision === "test" ? (strips?.best.pairs ?? ownChoice.pairs) : 0;
  return { decision, odds, strips, pairs, testAcres: Math.min(input.acres, pairs * input.pairAcres) };
}

function stripsOf(input: PracticeDecisionInput, odds: PracticeOdds): PracticeStrips | null {
  const { pairCostUsd, pairSdBuPerAc } = input;
  if (pairCostUsd === null && pairSdBuPerAc === null) return null;
  if (pairCostUsd === null) return waitFor("pairCost");
  if (pairSdBuPerAc === null) return waitFor("pairSd");
  return practiceStrips({
    gainBuPerAc: odds.meanGainBuPerAc,
    gainErrorBuPerAc: odds.gainSdBuPerAc,
    costUsdPerAc: input.costUsdPerAc,
    priceUsdPerBu: input.priceUsdPerBu,
    acres: input.acres,
    seasons: input.seasons,
    pairSdBuPerAc,
    pairCostUsd,
    setUpCostUsd: 0,
    seasonSdBuPerAc: input.seasonSdBuPerAc,
    mostPairs: ownChoice.mostPairs,
  });
}

function byValue({ isWorthIt, meanNetUsdPerAc }: PracticeStrips): Decision {
  if (isWorthIt) return "test";
  return meanNetUsdPerAc > 0 ? "adopt" : "skip";
}

function byChance({ chance, meanNetUsdPerAc }: PracticeOdds): Decision {
  if (chance >= ownChoice.sureChance && meanNetUsdPerAc > 0) return "adopt";
  if (chance <= 1 - ownChoice.sureChance && meanNetUsdPerAc <= 0) return "skip";
  return "test";
}
