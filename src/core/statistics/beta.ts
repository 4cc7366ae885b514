import { continuedFraction } from "./continued-fraction";
import { invertCdf } from "./invert-cdf";
import { logBeta } from "./log-gamma";

/** Chance that a beta(a, b) value is at most x: the regularized incomplete beta function. a and b above 0. */
export function betaCdf(x: number, a: number, b: number): number {
  return betaSplit({ below: x, above: 1 - x }, a, b);
}

/** The same, with 1 − x given on its own: it keeps its digits where x is almost 1. */
export function betaSplit({ below, above }: { below: number; above: number }, a: number, b: number): number {
  if (!(a > 0 && b > 0) || Number.isNaN(below)) return Number.NaN;
  if (below <= 0) return 0;
  if (above <= 0) return 1;
  if (below > (a + 1) / (a + b + 2)) return 1 - lowerPart(above, below, b, a);
  return lowerPart(below, above, a, b);
}

/** DLMF 8.17.22, which settles fast where x is below the mean. */
function lowerPart(x: number, rest: number, a: number, b: number): number {
  const front = Math.exp(a * Math.log(x) + b * Math.log(rest) - logBeta(a, b)) / a;
  const fraction = continuedFraction((index) => ({ above: index === 1 ? 1 : betaTerm(index - 1, x, a, b), below: 1 }));
  return front * fraction;
}

function betaTerm(index: number, x: number, a: number, b: number): number {
  const m = Math.floor(index / 2);
  if (index % 2 === 0) return (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
  return (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
}

/** The x that a beta(a, b) value stays below with chance p (0 to 1). */
export function betaQuantile(p: number, a: number, b: number): number {
  if (!(p >= 0 && p <= 1 && a > 0 && b > 0)) return Number.NaN;
  if (p === 0 || p === 1) return p;
  return invertCdf((x) => betaCdf(x, a, b), p, { low: 0, high: 1 });
}
