import gammainc from "@stdlib/math-base-special-gammainc";
import { invertCdf, upperEnd } from "./invert-cdf";

/** Chance that a chi-squared value with df degrees of freedom (above 0) is at most x. */
export function chiSquaredCdf(x: number, df: number): number {
  if (!(df > 0) || Number.isNaN(x)) return Number.NaN;
  if (x <= 0) return 0;
  return x === Infinity ? 1 : gammainc(x / 2, df / 2);
}

/** The x that a chi-squared value with df degrees of freedom stays below with chance p (0 to 1). */
export function chiSquaredQuantile(p: number, df: number): number {
  if (!(p >= 0 && p <= 1 && df > 0)) return Number.NaN;
  if (p === 0 || p === 1) return p === 0 ? 0 : Infinity;
  const cdf = (x: number) => chiSquaredCdf(x, df);
  return invertCdf(cdf, p, { low: 0, high: upperEnd(cdf, p, df) });
}
