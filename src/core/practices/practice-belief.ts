import { refuseArgument } from "../fault";
import { within } from "../limit";
import { threePointSpread, type RangeShape, type ThreePointSpread } from "../statistics/three-point";
import { practiceLimits } from "./practice-limits";

/** What a person expects a practice to gain, bu/ac over doing nothing. */
export interface GainRange {
  readonly lowGainBuPerAc: number;
  readonly likelyGainBuPerAc: number;
  readonly highGainBuPerAc: number;
  readonly shape: RangeShape;
}

/** The belief behind three gains; refuses those that are out of order. */
export function practiceBelief(range: GainRange): ThreePointSpread {
  const { lowGainBuPerAc: low, likelyGainBuPerAc: likely, highGainBuPerAc: high, shape } = range;
  within("lowGain", low, practiceLimits.gain);
  within("likelyGain", likely, practiceLimits.gain);
  within("highGain", high, practiceLimits.gain);
  if (low > likely) refuseOrder("lowGain", low, "likelyGain", likely);
  if (likely > high) refuseOrder("likelyGain", likely, "highGain", high);
  return threePointSpread({ low, likely, high }, shape);
}

function refuseOrder(first: string, low: number, second: string, high: number): never {
  const because = `must not be above ${second} (${high} bu/ac); got ${low}.`;
  refuseArgument(first, because);
}
