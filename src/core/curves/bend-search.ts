import { sum } from "../statistics/sums";
import type { BendSearch, CurveParameters } from "./response-model";
import type { ScaledPairs } from "./least-squares";

/** Places looked at before the best of them is refined; fewer where each costs a long sum. */
function placesFor(pairs: number): number {
  return Math.min(200, Math.ceil(50 + 40_000 / pairs));
}

const goldenShare = (Math.sqrt(5) - 1) / 2;

export type BendFound =
  | { readonly kind: "found"; readonly parameters: CurveParameters }
  /** The best bend is the last looked at. */
  | { readonly kind: "low" | "high" }
  /** Yields do not rise with the rate, wherever the bend. */
  | { readonly kind: "falling" };

interface LineFit {
  readonly intercept: number;
  readonly slope: number;
  readonly missed: number;
}

/**
 * The bend that misses least. The sum of squares has kinks and several valleys, so a fine grid goes first, with every
 * rate of the trial on it, and golden sections finish in the valley of its best place.
 */
export function findBend(search: BendSearch, pairs: ScaledPairs): BendFound {
  const grid = placesOf(search, pairs.x);
  const missedAt = (bend: number) => lineOnTerm(search, bend, pairs).missed;
  const missed = grid.map(missedAt);
  const best = missed.reduce((least, value, index) => (value < (missed[least] ?? Infinity) ? index : least), 0);
  if (!((missed[best] ?? Infinity) < Infinity)) return { kind: "falling" };
  const low = grid[Math.max(0, best - 1)] ?? NaN;
  const high = grid[Math.min(grid.length - 1, best + 1)] ?? NaN;
  const refined = goldenSection(missedAt, low, high);
  const bend = missedAt(refined) < (missed[best] ?? Infinity) ? refined : (grid[best] ?? NaN);
  const edge = 1e-6 * (high - low);
  if (bend - (grid[0] ?? NaN) <= edge) return { kind: "low" };
  if ((grid.at(-1) ?? NaN) - bend <= edge) return { kind: "high" };
  const { intercept, slope } = lineOnTerm(search, bend, pairs);
  return { kind: "found", parameters: search.parameters(intercept, slope, bend) };
}

function placesOf(search: BendSearch, x: readonly number[]): number[] {
  const rates = [...new Set(x)];
  const places = placesFor(x.length);
  // With more rates than places every so many is a knot, and the sections find the rest.
  const every = Math.ceil(rates.length / places);
  const { low, high } = search.range(rates);
  if (search.isLogarithmic) return Array.from({ length: places + 1 }, (_, i) => low * (high / low) ** (i / places));
  const knots = rates.filter((rate, index) => rate >= low && (index % every === 0 || rate === low || rate === high));
  const between = Math.max(1, Math.floor(places / Math.max(1, knots.length - 1)));
  return knots.flatMap((knot, index) => {
    const next = knots[index + 1];
    if (next === undefined) return [knot];
    return Array.from({ length: between }, (_, i) => knot + ((next - knot) * i) / between);
  });
}

/** Least squares of the yields on a term; infinitely bad where they fall with it. */
function lineOnTerm(search: BendSearch, bend: number, { x, y }: ScaledPairs): LineFit {
  const terms = x.map((rate) => search.term(bend, rate));
  const middle = search.passesZero ? 0 : sum(terms) / terms.length;
  const middleY = search.passesZero ? 0 : sum(y) / y.length;
  let square = 0;
  let product = 0;
  terms.forEach((term, index) => {
    square += (term - middle) ** 2;
    product += (term - middle) * ((y[index] ?? NaN) - middleY);
  });
  const slope = product / square;
  const intercept = middleY - slope * middle;
  if (!(slope > 0)) return { intercept, slope, missed: Infinity };
  const missed = terms.reduce((all, term, i) => all + ((y[i] ?? NaN) - intercept - slope * term) ** 2, 0);
  return { intercept, slope, missed };
}

function goldenSection(at: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  let left = high - goldenShare * (high - low);
  let right = low + goldenShare * (high - low);
  let [atLeft, atRight] = [at(left), at(right)];
  for (let step = 0; step < 60; step++) {
    if (atLeft <= atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - goldenShare * (high - low);
      atLeft = at(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + goldenShare * (high - low);
      atRight = at(right);
    }
  }
  return (low + high) / 2;
}
