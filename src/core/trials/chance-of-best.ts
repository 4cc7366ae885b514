import { quadratureNodes } from "../statistics/gauss-legendre";
import { normalCdf, normalPdf } from "../statistics/normal";
import { sum } from "../statistics/sums";

/** A value known up to a normal spread. */
export interface Uncertain {
  readonly value: number;
  readonly sd: number;
}

/** So many standard deviations out, nothing is left. */
const far = 8.5;
/** Stretches of the integration: two of the smallest spreads wide, unless that takes more than this many. */
const mostPanels = 400;

/**
 * The chance that each of several independent normal values is the largest: ∫ φᵢ(x) Π Φₖ(x) dx. The chances add to 1.
 * Values without spread share the chance among those that are largest.
 */
export function chanceOfBest(values: readonly Uncertain[]): number[] {
  if (values.some(({ sd }) => sd === 0)) return sharedByLargest(values);
  const raw = values.map(() => 0);
  // All share the points: the product over all rivals is worked out once for each.
  for (const { at, weight } of quadratureNodes(panels(values))) {
    const below = values.map(({ value, sd }) => normalCdf((at - value) / sd));
    const allBelow = below.reduce((product, one) => product * one, weight);
    if (allBelow === 0) continue;
    values.forEach(({ value, sd }, index) => {
      const density = normalPdf((at - value) / sd) / sd;
      raw[index] = (raw[index] ?? 0) + (density * allBelow) / (below[index] ?? 1);
    });
  }
  const total = sum(raw);
  return raw.map((chance) => chance / total);
}

/** From where the surest of the high values begins to where the last one ends. */
function panels(values: readonly Uncertain[]): number[] {
  const from = Math.max(...values.map(({ value, sd }) => value - far * sd));
  const to = Math.max(...values.map(({ value, sd }) => value + far * sd));
  const narrowest = Math.min(...values.map(({ sd }) => sd));
  const count = Math.min(mostPanels, Math.ceil((to - from) / (2 * narrowest)));
  return Array.from({ length: count + 1 }, (_, index) => from + ((to - from) * index) / count);
}

function sharedByLargest(values: readonly Uncertain[]): number[] {
  const largest = Math.max(...values.map(({ value }) => value));
  const holders = values.filter(({ value }) => value === largest).length;
  return values.map(({ value }) => (value === largest ? 1 / holders : 0));
}
