import { integrate } from "../statistics/gauss-legendre";
import { normalCdf, normalPdf } from "../statistics/normal";

/** A value known up to a normal spread. */
export interface Uncertain {
  readonly value: number;
  readonly sd: number;
}

/**
 * The chance that each of several independent normal values is the largest: ∫ φᵢ(x) Π Φₖ(x) dx. The chances add to 1.
 * Values without spread share the chance among those that are largest.
 */
export function chanceOfBest(values: readonly Uncertain[]): number[] {
  if (values.some(({ sd }) => sd === 0)) return sharedByLargest(values);
  const raw = values.map((mine, index) => {
    const { value, sd } = mine;
    const others = values.filter((_, other) => other !== index);
    const density = (x: number) =>
      others.reduce(
        (product, other) => product * normalCdf((x - other.value) / other.sd),
        normalPdf((x - value) / sd) / sd,
      );
    return integrate(
      density,
      [-8, -4, -2, -1, 0, 1, 2, 4, 8].map((step) => value + step * sd),
    );
  });
  const total = raw.reduce((sum, chance) => sum + chance, 0);
  return raw.map((chance) => chance / total);
}

function sharedByLargest(values: readonly Uncertain[]): number[] {
  const largest = Math.max(...values.map(({ value }) => value));
  const holders = values.filter(({ value }) => value === largest).length;
  return values.map(({ value }) => (value === largest ? 1 / holders : 0));
}
