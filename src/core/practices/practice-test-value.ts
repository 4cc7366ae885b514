import { within } from "../limit";
import { gainThatPays } from "./gain-that-pays";
import { practiceLimits } from "./practice-limits";
import { unitNormalLoss } from "./unit-normal-loss";

/** A decision to adopt a practice or not, and how unsure its gain is. */
export interface PracticeStake {
  readonly gainBuPerAc: number;
  /** Standard deviation of the belief about the gain. */
  readonly gainErrorBuPerAc: number;
  readonly costUsdPerAc: number;
  readonly priceUsdPerBu: number;
  readonly acres: number;
  /** Seasons that the decision stands after the trial. */
  readonly seasons: number;
}

export interface PracticeTestInput extends PracticeStake {
  /** Standard error that the trial's gain will have. */
  readonly trialErrorBuPerAc: number;
  /** Standard deviation of the gain from season to season; 0 takes the trial's season for any other. */
  readonly seasonSdBuPerAc: number;
}

export interface PracticeTestValue {
  /** What the trial is worth before it is run, $. */
  readonly valueUsd: number;
  /** What knowing the gain for certain would be worth: no trial can be worth more. */
  readonly certaintyUsd: number;
  readonly meanNetUsdPerAc: number;
  readonly netSdUsdPerAc: number;
  /** How far a trial is expected to move the mean, as a standard deviation. */
  readonly moveSdUsdPerAc: number;
  readonly acreSeasons: number;
}

/**
 * Expected value of a trial before it is run: how much better the decision becomes on average.
 *
 *   value = acres × seasons × move × L(|mean net| / move)
 *   move = sd² / √(sd² + error² + season sd²),   each in $/ac
 *
 * Adopting pays the mean net where that is above 0; the trial is worth something only as far as it may change that.
 *
 * @source raiffa-schlaifer-1961
 */
export function practiceTestValue(input: PracticeTestInput): PracticeTestValue {
  const { gainBuPerAc, gainErrorBuPerAc, costUsdPerAc, priceUsdPerBu, trialErrorBuPerAc } = input;
  within("gain", gainBuPerAc, practiceLimits.gain);
  within("gainError", gainErrorBuPerAc, practiceLimits.gainError);
  within("acres", input.acres, practiceLimits.acres);
  within("seasons", input.seasons, practiceLimits.seasons);
  within("trialError", trialErrorBuPerAc, practiceLimits.gainError);
  within("seasonSd", input.seasonSdBuPerAc, practiceLimits.gainError);
  gainThatPays(input);

  const meanNetUsdPerAc = priceUsdPerBu * gainBuPerAc - costUsdPerAc;
  const netSdUsdPerAc = priceUsdPerBu * gainErrorBuPerAc;
  const errorUsdPerAc = priceUsdPerBu * Math.hypot(trialErrorBuPerAc, input.seasonSdBuPerAc);
  const moveSdUsdPerAc = netSdUsdPerAc === 0 ? 0 : netSdUsdPerAc ** 2 / Math.hypot(netSdUsdPerAc, errorUsdPerAc);
  const acreSeasons = input.acres * input.seasons;
  return {
    valueUsd: acreSeasons * expectedGain(meanNetUsdPerAc, moveSdUsdPerAc),
    certaintyUsd: acreSeasons * expectedGain(meanNetUsdPerAc, netSdUsdPerAc),
    meanNetUsdPerAc,
    netSdUsdPerAc,
    moveSdUsdPerAc,
    acreSeasons,
  };
}

/** What knowing a shift of the mean is worth, $/ac: the mean of the part of it that turns the decision. */
function expectedGain(meanUsdPerAc: number, sdUsdPerAc: number): number {
  return sdUsdPerAc === 0 ? 0 : sdUsdPerAc * unitNormalLoss(Math.abs(meanUsdPerAc) / sdUsdPerAc);
}
