import betainc from "@stdlib/math-base-special-betainc";
import { invertCdf } from "./invert-cdf";

/** Chance that a beta(a, b) value is at most x: the regularized incomplete beta function. a and b above 0. */
export function betaCdf(x: number, a: number, b: number): number {
  return betaSplit({ below: x, above: 1 - x }, a, b);
}

/** The same, with 1 − x given on its own: it keeps its digits where x is almost 1. */
export function betaSplit({ below, above }: { below: number; above: number }, a: number, b: number): number {
  if (!(a > 0 && b > 0) || Number.isNaN(below)) return Number.NaN;
  if (below <= 0) return 0;
  if (above <= 0) return 1;
  return below < above ? betainc(below, a, b) : betainc(above, b, a, true, true);
}

/** The x that a beta(a, b) value stays below with chance p (0 to 1). */
export function betaQuantile(p: number, a: number, b: number): number {
  if (!(p >= 0 && p <= 1 && a > 0 && b > 0)) return Number.NaN;
  if (p === 0 || p === 1) return p;
  return invertCdf((x) => betaCdf(x, a, b), p, { low: 0, high: 1 });
}
