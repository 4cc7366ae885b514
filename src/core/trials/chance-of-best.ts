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
  // The strongest rivals first: beside them most chances vanish at once.
  const rivals = [...values].sort((a, b) => b.value - a.value);
  const raw = values.map((mine) => integrate((x) => densityOfBest(mine, rivals, x), panels(mine)));
  const total = raw.reduce((sum, chance) => sum + chance, 0);
  return raw.map((chance) => chance / total);
}

const negligible = 1e-20;

function densityOfBest(mine: Uncertain, rivals: readonly Uncertain[], x: number): number {
  let density = normalPdf((x - mine.value) / mine.sd) / mine.sd;
  for (const rival of rivals) {
    if (density < negligible) return 0;
    if (rival !== mine) density *= normalCdf((x - rival.value) / rival.sd);
  }
  return density;
}

function panels({ value, sd }: Uncertain): number[] {
  return [-8, -4, -2, -1, 0, 1, 2, 4, 8].map((step) => value + step * sd);
}

function sharedByLargest(values: readonly Uncertain[]): number[] {
  const largest = Math.max(...values.map(({ value }) => value));
  const holders = values.filter(({ value }) => value === largest).length;
  return values.map(({ value }) => (value === largest ? 1 / holders : 0));
}
