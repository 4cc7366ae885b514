import { betaSplit } from "./beta";
import { fCdf } from "./f-distribution";
import gammaln from "@stdlib/math-base-special-gammaln";

/**
 * Chance that a noncentral F value is at most x: central beta terms weighted by a Poisson of mean lambda/2,
 * from which only the terms that matter (within nine standard deviations) are taken.
 *
 * @param d1 degrees of freedom above, more than 0
 * @param d2 degrees of freedom below, more than 0
 * @param lambda noncentrality, 0 or more
 */
export function noncentralFCdf(x: number, d1: number, d2: number, lambda: number): number {
  if (!(d1 > 0 && d2 > 0 && lambda >= 0) || Number.isNaN(x)) return Number.NaN;
  if (x <= 0) return 0;
  // So small a shift moves nothing, and its logarithm may not exist.
  if (lambda < 1e-20) return fCdf(x, d1, d2);
  const mean = lambda / 2;
  const reach = 9 * Math.sqrt(mean) + 30;
  const whole = d1 * x + d2;
  const split = { below: (d1 * x) / whole, above: d2 / whole };
  let sum = 0;
  for (let j = Math.max(0, Math.floor(mean - reach)); j <= mean + reach; j++) {
    const weight = Math.exp(j * Math.log(mean) - mean - gammaln(j + 1));
    if (weight > 1e-18) sum += weight * betaSplit(split, d1 / 2 + j, d2 / 2);
  }
  return Math.min(1, sum);
}
