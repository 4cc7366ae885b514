/** One point of a quadrature rule on −1 … 1. */
export interface Node {
  readonly at: number;
  readonly weight: number;
}

const points = 16;
const rule = legendreRule();

/** Integral of f through the stretches between neighbouring breakpoints, 16 Gauss–Legendre points in each. */
export function integrate(f: (x: number) => number, breakpoints: readonly number[]): number {
  return quadratureNodes(breakpoints).reduce((sum, { at, weight }) => sum + weight * f(at), 0);
}

/** The points and weights that `integrate` uses, for integrands with parts worth computing once. */
export function quadratureNodes(breakpoints: readonly number[]): Node[] {
  const nodes: Node[] = [];
  for (let index = 1; index < breakpoints.length; index++) {
    const low = breakpoints[index - 1] ?? 0;
    const half = ((breakpoints[index] ?? 0) - low) / 2;
    for (const { at, weight } of rule) nodes.push({ at: low + half * (1 + at), weight: half * weight });
  }
  return nodes;
}

/** Roots of the Legendre polynomial by Newton's method from the usual cosine start. */
function legendreRule(): Node[] {
  return Array.from({ length: points }, (_, index) => {
    let at = Math.cos((Math.PI * (index + 0.75)) / (points + 0.5));
    let slope = 1;
    for (let step = 0; step < 8; step++) {
      const { value, before } = legendre(at);
      slope = (points * (at * value - before)) / (at * at - 1);
      at -= value / slope;
    }
    return { at, weight: 2 / ((1 - at * at) * slope * slope) };
  });
}

function legendre(x: number): { value: number; before: number } {
  let before = 1;
  let value = x;
  for (let n = 2; n <= points; n++) [before, value] = [value, ((2 * n - 1) * x * value - (n - 1) * before) / n];
  return { value, before };
}
