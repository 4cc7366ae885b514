import { gainThatPays } from "./gain-that-pays";
import { practiceBelief, type GainRange } from "./practice-belief";

export interface PracticeOddsInput extends GainRange {
  readonly costUsdPerAc: number;
  readonly priceUsdPerBu: number;
}

export interface PracticeOdds {
  /** Chance that the gain is worth more than the cost, 0 to 1. */
  readonly chance: number;
  readonly gainThatPaysBuPerAc: number;
  readonly meanGainBuPerAc: number;
  readonly gainSdBuPerAc: number;
  /** Mean net return, and at the lowest and highest gain, $/ac. */
  readonly meanNetUsdPerAc: number;
  readonly lowNetUsdPerAc: number;
  readonly highNetUsdPerAc: number;
}

/**
 * Chance that a practice pays.
 *
 *   P(gain > cost / price), the gain spread over its range
 *
 * @source three-point-range
 */
export function practiceOdds(input: PracticeOddsInput): PracticeOdds {
  const { costUsdPerAc, priceUsdPerBu, lowGainBuPerAc, highGainBuPerAc } = input;
  const belief = practiceBelief(input);
  const gainThatPaysBuPerAc = gainThatPays(input);
  const net = (gainBuPerAc: number) => priceUsdPerBu * gainBuPerAc - costUsdPerAc;
  return {
    chance: 1 - belief.cdf(gainThatPaysBuPerAc),
    gainThatPaysBuPerAc,
    meanGainBuPerAc: belief.mean,
    gainSdBuPerAc: belief.sd,
    meanNetUsdPerAc: net(belief.mean),
    lowNetUsdPerAc: net(lowGainBuPerAc),
    highNetUsdPerAc: net(highGainBuPerAc),
  };
}
