import { betaSplit } from "./beta";
import { invertCdf, upperEnd } from "./invert-cdf";

/** Chance that an F value with d1 and d2 degrees of freedom (above 0) is at most x. */
export function fCdf(x: number, d1: number, d2: number): number {
  if (!(d1 > 0 && d2 > 0) || Number.isNaN(x)) return Number.NaN;
  if (x <= 0) return 0;
  const whole = d1 * x + d2;
  return betaSplit({ below: (d1 * x) / whole, above: d2 / whole }, d1 / 2, d2 / 2);
}

/** Chance that an F value is above x, with its digits kept where it is small. */
export function fUpperTail(x: number, d1: number, d2: number): number {
  return x <= 0 ? 1 : fCdf(1 / x, d2, d1);
}

/** The x that an F value with d1 and d2 degrees of freedom stays below with chance p (0 to 1). */
export function fQuantile(p: number, d1: number, d2: number): number {
  if (!(p >= 0 && p <= 1 && d1 > 0 && d2 > 0)) return Number.NaN;
  if (p === 0 || p === 1) return p === 0 ? 0 : Infinity;
  const cdf = (x: number) => fCdf(x, d1, d2);
  return invertCdf(cdf, p, { low: 0, high: upperEnd(cdf, p, 1) });
}
