import { normalCdf, normalPdf } from "../statistics/normal";

/**
 * Mean of what a standard normal value exceeds u by, counting 0 where it does not.
 *
 *   L(u) = φ(u) - u Φ(-u)
 *
 * @source raiffa-schlaifer-1961
 */
export function unitNormalLoss(u: number): number {
  // Far out both parts are 0 in doubles; at infinity their product would be none.
  if (u > 40) return 0;
  return Math.max(0, normalPdf(u) - u * normalCdf(-u));
}
