import { quadratureNodes } from "./gauss-legendre";
import { inPieces } from "./in-pieces";
import { invertCdf, upperEnd } from "./invert-cdf";
import { normalCdf, normalPdf } from "./normal";
import { spreadAverage } from "./spread-average";

/** Beyond it no range of normal means has anything left. */
const widestRange = 17;

/** Where the inner integral is read off: point, weight by the normal curve, chance below. */
const innerNodes = quadratureNodes([-8.5, -3, 0, 3, 8.5]).map(({ at, weight }) => ({
  at,
  weight: weight * normalPdf(at),
  below: normalCdf(at),
}));

/**
 * The q that the studentized range stays below with chance p (0 to 1): the range of a normal sample, averaged over the
 * spread (Copenhaver and Holland 1988).
 *
 * @param groups number of means, 2 or more
 * @param df degrees of freedom of the spread, above 0
 */
export function studentizedRangeQuantile(p: number, groups: number, df: number): number {
  if (!(p >= 0 && p <= 1 && groups >= 2 && df > 0)) return Number.NaN;
  if (p === 0 || p === 1) return p === 0 ? 0 : Infinity;
  // The search asks for the same stretch of ranges over and over: read off pieces good to 1e-12 (1e-10 at 100 groups).
  const rangeCdf = inPieces((width) => normalRangeCdf(width, groups), groups > 10 ? 1 : 1.5, widestRange);
  const cdf = (q: number) => averagedOverSpread(rangeCdf, q, df);
  return invertCdf(cdf, p, { low: 0, high: upperEnd(cdf, p, 4) }, 1e-10);
}

function averagedOverSpread(rangeCdf: (width: number) => number, q: number, df: number): number {
  if (q === 0) return 0;
  return Math.min(
    1,
    spreadAverage((s) => rangeCdf(q * s), df, q > 8 ? { at: 0, width: 1 / q } : undefined),
  );
}

/** k ∫ φ(z) [Φ(z) − Φ(z − width)]^(k−1) dz */
function normalRangeCdf(width: number, groups: number): number {
  let sum = 0;
  for (const { at, weight, below } of innerNodes) sum += weight * (below - normalCdf(at - width)) ** (groups - 1);
  return groups * sum;
}
