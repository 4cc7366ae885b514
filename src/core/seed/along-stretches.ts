/** A stretch of x with the y at its two ends; both ends may be one point. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly start: number;
  readonly end: number;
}

/**
 * Reads y at x along stretches that run upward: inside a stretch and between two of them in a straight line. Where
 * stretches share an end the earlier one wins.
 *
 * @returns nothing outside the stretches: the caller knows what that means
 */
export function alongStretches(stretches: readonly Stretch[], x: number): number | undefined {
  let before: Stretch | undefined;
  for (const stretch of stretches) {
    if (x < stretch.from) {
      return before && between({ from: before.to, to: stretch.from, start: before.end, end: stretch.start }, x);
    }
    if (x <= stretch.to) return between(stretch, x);
    before = stretch;
  }
  return undefined;
}

function between({ from, to, start, end }: Stretch, x: number): number {
  return from === to || start === end ? start : start + ((end - start) * (x - from)) / (to - from);
}
