const tiny = 1e-300;
const mostSteps = 20_000;

/** One step of a continued fraction: (above / (below + … */
export interface FractionStep {
  readonly above: number;
  readonly below: number;
}

/**
 * The value of above₁/(below₁ + above₂/(below₂ + …)), by the modified Lentz method, to the last digits of a double.
 * NaN if it has not settled after 20,000 steps.
 */
export function continuedFraction(step: (index: number) => FractionStep): number {
  let value = tiny;
  let ratioC = value;
  let ratioD = 0;
  for (let index = 1; index <= mostSteps; index++) {
    const { above, below } = step(index);
    ratioD = 1 / awayFromZero(below + above * ratioD);
    ratioC = awayFromZero(below + above / ratioC);
    const change = ratioC * ratioD;
    value *= change;
    if (Math.abs(change - 1) < 2e-16) return value;
  }
  return Number.NaN;
}

function awayFromZero(value: number): number {
  return Math.abs(value) < tiny ? tiny : value;
}
