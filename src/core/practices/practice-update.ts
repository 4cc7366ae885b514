import { refuseArgument, waitFor } from "../fault";
import { within } from "../limit";
import { normalCdf, zForConfidence } from "../statistics/normal";
import { gainThatPays } from "./gain-that-pays";
import { practiceBelief, type GainRange } from "./practice-belief";
import { practiceLimits } from "./practice-limits";

export interface PracticeUpdateInput extends GainRange {
  readonly trialGainBuPerAc: number;
  /** Standard error of the trial's gain. */
  readonly trialErrorBuPerAc: number;
  /** Standard deviation of the gain from season to season; 0 takes the trial's season for any other. */
  readonly seasonSdBuPerAc: number;
  /** Both, or neither: the chance that it pays is then left out. */
  readonly costUsdPerAc: number | null;
  readonly priceUsdPerBu: number | null;
  readonly confidencePct: number;
}

/** A belief about the gain of a practice. */
export interface Belief {
  readonly meanBuPerAc: number;
  readonly sdBuPerAc: number;
  readonly lowBuPerAc: number;
  readonly highBuPerAc: number;
  /** Chance that it pays, 0 to 1, and the mean net return; null without cost and price. */
  readonly chance: number | null;
  readonly netUsdPerAc: number | null;
}

export interface PracticeUpdate {
  readonly before: Belief;
  readonly trial: Belief;
  readonly after: Belief;
  /** Weight of the trial in the new mean, 0 to 1. */
  readonly trialWeight: number;
}

/**
 * What to believe after a trial: the range held before and the trial, each weighed by how sure it is.
 *
 *   error² = trial error² + season sd²      weight = sd² / (sd² + error²)
 *   mean   = weight × trial + (1 - weight) × mean before      sd after = √weight × error
 *
 * The range is taken as a normal curve of the same mean and sd.
 *
 * @source raiffa-schlaifer-1961
 */
export function practiceUpdate(input: PracticeUpdateInput): PracticeUpdate {
  const { trialGainBuPerAc, trialErrorBuPerAc, seasonSdBuPerAc, confidencePct } = input;
  const prior = practiceBelief(input);
  within("trialGain", trialGainBuPerAc, practiceLimits.gain);
  within("trialError", trialErrorBuPerAc, practiceLimits.gainError);
  within("seasonSd", seasonSdBuPerAc, practiceLimits.gainError);
  within("confidence", confidencePct, practiceLimits.confidence);
  const errorBuPerAc = Math.hypot(trialErrorBuPerAc, seasonSdBuPerAc);
  if (prior.sd === 0 && errorBuPerAc === 0) {
    const because = "is 0 and so is the range of the gain: two certainties leave nothing to weigh.";
    refuseArgument("trialError", because);
  }
  const pays = moneyOf(input);
  const z = zForConfidence(confidencePct);
  const belief = (meanBuPerAc: number, sdBuPerAc: number): Belief => ({
    meanBuPerAc,
    sdBuPerAc,
    lowBuPerAc: meanBuPerAc - z * sdBuPerAc,
    highBuPerAc: meanBuPerAc + z * sdBuPerAc,
    chance: pays && chanceAbove(pays.thresholdBuPerAc, meanBuPerAc, sdBuPerAc),
    netUsdPerAc: pays && pays.priceUsdPerBu * meanBuPerAc - pays.costUsdPerAc,
  });
  const trialWeight = prior.sd ** 2 / (prior.sd ** 2 + errorBuPerAc ** 2);
  const mean = prior.mean + trialWeight * (trialGainBuPerAc - prior.mean);
  return {
    before: belief(prior.mean, prior.sd),
    trial: belief(trialGainBuPerAc, errorBuPerAc),
    after: belief(mean, Math.sqrt(trialWeight) * errorBuPerAc),
    trialWeight,
  };
}

function moneyOf({ costUsdPerAc, priceUsdPerBu }: PracticeUpdateInput) {
  if (costUsdPerAc === null && priceUsdPerBu === null) return null;
  if (costUsdPerAc === null) return waitFor("cost");
  if (priceUsdPerBu === null) return waitFor("price");
  return { costUsdPerAc, priceUsdPerBu, thresholdBuPerAc: gainThatPays({ costUsdPerAc, priceUsdPerBu }) };
}

function chanceAbove(threshold: number, mean: number, sd: number): number {
  if (sd === 0) return mean > threshold ? 1 : 0;
  return normalCdf((mean - threshold) / sd);
}
