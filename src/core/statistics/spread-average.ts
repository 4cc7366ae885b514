import { integrate } from "./gauss-legendre";
import gammaln from "@stdlib/math-base-special-gammaln";

/** Where the averaged function changes, and over what width: the integration puts breakpoints there. */
export interface Change {
  readonly at: number;
  readonly width: number;
}

/** Of the density, which is near 1 where it matters: below this a point adds nothing to the answer's digits. */
const negligible = 1e-14;
/** A breakpoint this close to 0 adds nothing, and there the logarithm gives out. */
const leastPanel = 1e-9;
const steps = [-9, -3, 0, 3, 9];

/**
 * The mean of f(s) over s = √(χ²/df), the spread that df degrees of freedom report when the true one is 1.
 * Both the noncentral t and the studentized range are such means of a normal probability.
 *
 *   ∫ f(s) · df^(df/2) s^(df−1) exp(−df s²/2) / (Γ(df/2) 2^(df/2−1)) ds
 */
export function spreadAverage(f: (s: number) => number, df: number, change?: Change): number {
  const width = 1 / Math.sqrt(2 * df);
  const low = Math.max(0, 1 - 9 * width);
  const high = 1 + 9 * width;
  const breakpoints = [{ at: 1, width }, ...(change ? [change] : [])]
    .flatMap((feature) => steps.map((step) => feature.at + step * feature.width))
    .filter((point) => point > low + leastPanel && point < high)
    .sort((a, b) => a - b);
  const half = df / 2;
  const constant = half * Math.log(df) - gammaln(half) - (half - 1) * Math.LN2;
  const density = (s: number) => Math.exp(constant + (df - 1) * Math.log(s) - half * s * s);
  const weighted = (s: number) => {
    const height = density(s);
    return height < negligible ? 0 : height * f(s);
  };
  return integrate(weighted, [low, ...breakpoints, high]);
}
