/** Lengths in one unit, whichever it is. */
export interface DrainGeometry {
  /** From the drain down to the barrier. */
  readonly barrierBelowDrain: number;
  readonly spacing: number;
  readonly radius: number;
}

/**
 * Depth that stands for the barrier's in a formula of level flow, so that the flow lines that crowd toward the pipe are
 * allowed for.
 *
 *   x = 2 pi D / L
 *   d = (pi L / 8) / (ln(L / (pi r)) + F(x)),   never more than D
 *
 * NaN where the pipe is too wide for its spacing (the bracket is not above 0).
 *
 * @source van-der-molen-wesseling-1991
 */
export function equivalentDepth({ barrierBelowDrain, spacing, radius }: DrainGeometry): number {
  if (barrierBelowDrain === 0) return 0;
  const x = (2 * Math.PI * barrierBelowDrain) / spacing;
  const bracket = Math.log(spacing / (Math.PI * radius)) + crowding(x);
  if (!(bracket > 0)) return Number.NaN;
  return Math.min(barrierBelowDrain, (Math.PI * spacing) / 8 / bracket);
}

/**
 *   F(x) = sum over odd n of 4 e^(-2nx) / (n (1 - e^(-2nx)))      above 1
 *   F(x) = pi² / (4x) + ln(x / (2 pi))                            up to 1
 */
function crowding(x: number): number {
  if (x <= 1) return Math.PI ** 2 / (4 * x) + Math.log(x / (2 * Math.PI));
  let sum = 0;
  for (let n = 1; n < 100; n += 2) {
    const shrinking = Math.exp(-2 * n * x);
    const term = (4 * shrinking) / (n * (1 - shrinking));
    sum += term;
    if (term < 1e-15) break;
  }
  return sum;
}
