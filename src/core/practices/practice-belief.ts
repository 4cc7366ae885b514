import { threePointSpread, type RangeShape, type ThreePointSpread } from "../statistics/three-point";
import { threePointsWithin } from "../three-points-within";
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
  threePointsWithin("Gain", { low, likely, high }, practiceLimits.gain);
  return threePointSpread({ low, likely, high }, shape);
}
