import { invertCdf, upperEnd } from "../statistics/invert-cdf";
import { pairPower } from "./trial-power";

const seenEightTimesInTen = 0.8;

/**
 * The true gain that a trial with this standard error would show as significant eight times in ten. A result that is
 * not significant says nothing about smaller gains.
 */
export function smallestGainSeen(standardError: number, df: number, confidencePct: number): number {
  const power = (shift: number) => pairPower(shift, df, confidencePct);
  const high = upperEnd(power, seenEightTimesInTen, 2);
  return standardError * invertCdf(power, seenEightTimesInTen, { low: 0, high }, 1e-6);
}
