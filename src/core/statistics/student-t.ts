import { betaSplit } from "./beta";
import { invertCdf, upperEnd } from "./invert-cdf";

/** Chance that a Student t value with df degrees of freedom (above 0, not only whole) is at most t. */
export function studentTCdf(t: number, df: number): number {
  if (!(df > 0)) return Number.NaN;
  const tail = 0.5 * betaSplit({ below: df / (df + t * t), above: (t * t) / (df + t * t) }, df / 2, 0.5);
  return t > 0 ? 1 - tail : tail;
}

/** The t that a Student t value with df degrees of freedom stays below with chance p (0 to 1). */
export function studentTQuantile(p: number, df: number): number {
  if (!(p >= 0 && p <= 1 && df > 0)) return Number.NaN;
  if (p === 0 || p === 1) return p === 0 ? -Infinity : Infinity;
  if (p === 0.5) return 0;
  // Worked in the lower tail, where small chances keep their digits.
  const tail = Math.min(p, 1 - p);
  const beyond = (size: number) => -studentTCdf(-size, df);
  const size = invertCdf(beyond, -tail, { low: 0, high: upperEnd(beyond, -tail, 1) });
  return p < 0.5 ? -size : size;
}

/** How many standard errors a range with so much confidence (%, 0 to 100) reaches to either side. */
export function tForConfidence(confidencePct: number, df: number): number {
  return studentTQuantile(0.5 + confidencePct / 200, df);
}

/** Chance of a t at least this far from 0, on either side. */
export function twoSidedChance(t: number, df: number): number {
  return 2 * studentTCdf(-Math.abs(t), df);
}
