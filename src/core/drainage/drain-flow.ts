import { equivalentDepth } from "./equivalent-depth";

/** Parallel drains in one soil; lengths in one unit, conductivity in that unit a day. */
export interface DrainedSoil {
  /** Height of the water table over the drains, midway between them. */
  readonly tableOverDrain: number;
  readonly barrierBelowDrain: number;
  readonly conductivityAbove: number;
  readonly conductivityBelow: number;
  readonly radius: number;
}

export interface DrainFlow {
  /** Depth of water a day. */
  readonly rate: number;
  readonly equivalentDepth: number;
}

/**
 * Water that drains at a spacing carry off in steady rain.
 *
 *   q = (8 Kb d h + 4 Ka h²) / L²
 *
 * @source hooghoudt-1940
 */
export function drainFlow(soil: DrainedSoil, spacing: number): DrainFlow {
  const depth = equivalentDepth({ ...soil, spacing });
  return { rate: flowSquared(soil, depth) / spacing ** 2, equivalentDepth: depth };
}

/** The rate times the spacing squared. */
function flowSquared({ tableOverDrain: h, conductivityAbove, conductivityBelow }: DrainedSoil, depth: number): number {
  return 8 * conductivityBelow * depth * h + 4 * conductivityAbove * h ** 2;
}

const mostSteps = 200;
const tolerance = 1e-12;

/**
 * Spacing at which the drains carry off a rate. The equivalent depth depends on the spacing, so it is found step by
 * step: the rate falls with a power of the spacing between 1 and 2, so a step by the power 2/3 of what is missing brings
 * it at least three times nearer; a step out of the known bounds is replaced by their middle.
 *
 * @param narrowest spacing below which the formula no longer holds
 * @returns NaN where the answer lies below narrowest or above widest
 */
export function spacingFor(soil: DrainedSoil, rate: number, narrowest: number, widest: number): number {
  const share = (spacing: number) => drainFlow(soil, spacing).rate / rate;
  // Nearer than pi times the radius the pipe itself would fill the space that the formula is about.
  let low = Math.max(narrowest, Math.PI * soil.radius);
  let high = widest;
  if (!(share(low) >= 1) || share(high) >= 1) return Number.NaN;
  let spacing = Math.sqrt(low * high);
  for (let step = 0; step < mostSteps && high - low > tolerance * high; step++) {
    const carried = share(spacing);
    if (carried >= 1) low = spacing;
    else high = spacing;
    const next = spacing * carried ** (2 / 3);
    if (Math.abs(next - spacing) <= tolerance * spacing) return next;
    spacing = next > low && next < high ? next : (low + high) / 2;
  }
  return spacing;
}
