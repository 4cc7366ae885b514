import { continuedFraction } from "./continued-fraction";
import { invertCdf, upperEnd } from "./invert-cdf";
import { logGamma } from "./log-gamma";

/** Chance that a chi-squared value with df degrees of freedom (above 0) is at most x. */
export function chiSquaredCdf(x: number, df: number): number {
  if (!(df > 0) || Number.isNaN(x)) return Number.NaN;
  if (x <= 0) return 0;
  if (x === Infinity) return 1;
  const half = df / 2;
  const front = Math.exp(half * Math.log(x / 2) - x / 2 - logGamma(half));
  return x / 2 < half + 1 ? front * series(x / 2, half) : 1 - front * upperFraction(x / 2, half);
}

/** DLMF 8.11.4. */
function series(x: number, a: number): number {
  let term = 1 / a;
  let sum = term;
  for (let n = 1; term > sum * 1e-17 && n < 20_000; n++) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

/** DLMF 8.9.2, contracted to its even part. */
function upperFraction(x: number, a: number): number {
  return continuedFraction((index) => ({
    above: index === 1 ? 1 : -(index - 1) * (index - 1 - a),
    below: x + 2 * index - 1 - a,
  }));
}

/** The x that a chi-squared value with df degrees of freedom stays below with chance p (0 to 1). */
export function chiSquaredQuantile(p: number, df: number): number {
  if (!(p >= 0 && p <= 1 && df > 0)) return Number.NaN;
  if (p === 0 || p === 1) return p === 0 ? 0 : Infinity;
  const cdf = (x: number) => chiSquaredCdf(x, df);
  return invertCdf(cdf, p, { low: 0, high: upperEnd(cdf, p, df) });
}
