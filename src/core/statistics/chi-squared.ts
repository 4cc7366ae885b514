import gammainc from "@stdlib/math-base-special-gammainc";

/** Chance that a chi-squared value with df degrees of freedom (above 0) is at most x. */
export function chiSquaredCdf(x: number, df: number): number {
  if (!(df > 0) || Number.isNaN(x)) return Number.NaN;
  if (x <= 0) return 0;
  return x === Infinity ? 1 : gammainc(x / 2, df / 2);
}
