/** A bracket known to hold the answer, or a guess to widen from. */
export interface Bracket {
  readonly low: number;
  readonly high: number;
}

/**
 * The x at which a rising function reaches a level, by Chandrupatla's method (1997): inverse quadratic steps where
 * they can be trusted, halving where not. The bracket must hold the answer.
 *
 * @param tolerance relative; left out, the search stops at the last digits of a double
 */
export function invertCdf(
  cdf: (x: number) => number,
  level: number,
  { low, high }: Bracket,
  tolerance = 2e-16,
): number {
  let a = { x: high, y: cdf(high) - level };
  let b = { x: low, y: cdf(low) - level };
  let c = a;
  let share = 0.5;
  for (let step = 0; step < 200; step++) {
    const x = b.x + share * (a.x - b.x);
    const next = { x, y: cdf(x) - level };
    if (Math.sign(next.y) === Math.sign(b.y)) c = b;
    else [c, a] = [a, b];
    b = next;
    const best = Math.abs(b.y) < Math.abs(a.y) ? b : a;
    const closest = tolerance * Math.abs(best.x) + 1e-300;
    const limit = closest / Math.abs(a.x - b.x);
    if (best.y === 0 || !(limit < 0.5)) return best.x;
    share = Math.min(1 - limit, Math.max(limit, nextShare(b, a, c)));
  }
  return b.x;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

function nextShare(b: Point, a: Point, c: Point): number {
  const xi = (b.x - a.x) / (c.x - a.x);
  const phi = (b.y - a.y) / (c.y - a.y);
  const trusted = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
  if (!trusted) return 0.5;
  const slope = (c.x - b.x) / (a.x - b.x);
  return (b.y / (a.y - b.y)) * (c.y / (a.y - c.y)) + slope * (b.y / (c.y - b.y)) * (a.y / (c.y - a.y));
}

/** Doubles an upper end, from a start above 0, until the function there has passed the level. */
export function upperEnd(cdf: (x: number) => number, level: number, start: number): number {
  let high = start;
  while (cdf(high) < level && high < 1e300) high *= 2;
  return high;
}
