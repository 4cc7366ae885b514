import { betaQuantile, betaSplit } from "./beta";

/** What a person expects of an uncertain amount: the lowest, the likeliest and the highest, in one unit. */
export interface ThreePoints {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** How a range from lowest to highest is filled. */
export type RangeShape = "triangular" | "pert";

/** A distribution over the range from lowest to highest. All are NaN when low ≤ likely ≤ high does not hold. */
export interface ThreePointSpread {
  readonly mean: number;
  readonly sd: number;
  /** Chance of a value at or below x. */
  cdf(x: number): number;
  /** The value that a share of all values, 0 to 1, lies at or below. */
  quantile(share: number): number;
}

export function threePointSpread(points: ThreePoints, shape: RangeShape): ThreePointSpread {
  return shape === "pert" ? pert(points) : triangular(points);
}

/**
 * Triangular distribution: a straight rise from the lowest value to the likeliest, a straight fall to the highest.
 *
 *   mean = (low + likely + high) / 3
 *   sd²  = (low² + likely² + high² - low likely - low high - likely high) / 18
 *
 * Three equal values are a certainty: its sd is 0.
 *
 * @source three-point-range
 */
export function triangular(points: ThreePoints): ThreePointSpread {
  const { low, likely, high } = points;
  const isOrdered = low <= likely && likely <= high;
  const below = likely - low;
  const above = high - likely;
  // The squares are taken of differences: of the values themselves they would cancel for a narrow range.
  const sd = isOrdered ? Math.sqrt((below ** 2 + below * above + above ** 2) / 18) : Number.NaN;
  return {
    mean: isOrdered ? low + (2 * below + above) / 3 : Number.NaN,
    sd,
    cdf: (x) => (isOrdered ? triangularCdf(x, points) : Number.NaN),
    quantile: (share) => (isOrdered && share >= 0 && share <= 1 ? triangularQuantile(share, points) : Number.NaN),
  };
}

function triangularCdf(x: number, { low, likely, high }: ThreePoints): number {
  if (Number.isNaN(x)) return Number.NaN;
  if (x >= high) return 1;
  if (x < low) return 0;
  const width = high - low;
  return x <= likely && likely > low
    ? ((x - low) / width) * ((x - low) / (likely - low))
    : 1 - ((high - x) / width) * ((high - x) / (high - likely));
}

function triangularQuantile(share: number, { low, likely, high }: ThreePoints): number {
  const width = high - low;
  return share * width <= likely - low
    ? low + Math.sqrt(share * width * (likely - low))
    : high - Math.sqrt((1 - share) * width * (high - likely));
}

/** How much more the likeliest value counts than either end in a PERT range. */
const likeliestWeight = 4;

/**
 * PERT distribution: a beta curve over the range, smooth where the triangle has a corner and thinner at its ends.
 *
 *   a = 1 + 4 (likely - low) / (high - low)      b = 1 + 4 (high - likely) / (high - low)
 *   mean = (low + 4 likely + high) / 6           sd² = (mean - low)(high - mean) / 7
 *
 * The sd is that of the beta curve; the project planner's (high - low) / 6 is another number.
 *
 * @source three-point-range
 */
export function pert(points: ThreePoints): ThreePointSpread {
  const { low, likely, high } = points;
  const width = high - low;
  // Three equal values and values out of order are the same for every shape.
  if (!(width > 0 && low <= likely && likely <= high)) return triangular(points);
  const a = 1 + likeliestWeight * ((likely - low) / width);
  const b = 1 + likeliestWeight * ((high - likely) / width);
  const mean = low + width * (a / (a + b));
  return {
    mean,
    sd: Math.sqrt(((mean - low) * (high - mean)) / (likeliestWeight + 3)),
    cdf: (x) => betaSplit({ below: (x - low) / width, above: (high - x) / width }, a, b),
    quantile: (share) => low + width * betaQuantile(share, a, b),
  };
}
