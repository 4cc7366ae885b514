import { refuseArgument } from "../fault";

export interface NitrogenOptimumInput {
  /** bu per lb of N at the start of the curve. */
  readonly linear: number;
  /** bu per lb² of N; below 0. */
  readonly quadratic: number;
  readonly priceNUsdPerLb: number;
  readonly priceGrainUsdPerBu: number;
  /** lb N/ac where the curve turns flat; null: no plateau. */
  readonly plateauLbPerAc: number | null;
  /** Highest rate of the trial, lb N/ac; null: not given. */
  readonly highestLbPerAc: number | null;
}

export interface NitrogenOptimum {
  readonly optimumLbPerAc: number;
  /** Rates whose return is within $1/ac of the best. */
  readonly lowLbPerAc: number;
  readonly highLbPerAc: number;
  /** $ per lb of N over $ per bu. */
  readonly priceRatio: number;
  /** bu/ac over no nitrogen. */
  readonly gainBuPerAc: number;
  readonly returnUsdPerAc: number;
  /** Rate of the highest yield, whatever it costs. */
  readonly mostYieldLbPerAc: number;
  readonly heldAt: "nothing" | "no nitrogen" | "plateau" | "highest rate";
}

/**
 * Nitrogen rate that returns most, lb/ac, on yield = a + linear × N + quadratic × N².
 *
 *   N* = (price ratio − linear) / (2 × quadratic)
 *
 * never below 0, above the start of a plateau or above the highest rate of the trial. A curve that does not bend down
 * has no best rate and is refused.
 *
 * @source fausti-2017, cerrato-blackmer-1990
 */
export function nitrogenOptimum(input: NitrogenOptimumInput): NitrogenOptimum {
  check(input);
  const { linear, quadratic, priceNUsdPerLb, priceGrainUsdPerBu } = input;
  const priceRatio = priceNUsdPerLb / priceGrainUsdPerBu;
  const vertex = Math.max(0, -linear / (2 * quadratic));
  const plateau = input.plateauLbPerAc === null ? null : Math.min(input.plateauLbPerAc, vertex);
  const free = (priceRatio - linear) / (2 * quadratic);
  const highest = input.highestLbPerAc ?? Number.POSITIVE_INFINITY;
  const optimumLbPerAc = Math.max(0, Math.min(free, plateau ?? free, highest));
  const gainBuPerAc = optimumLbPerAc * (linear + quadratic * optimumLbPerAc);
  const returnUsdPerAc = priceGrainUsdPerBu * gainBuPerAc - priceNUsdPerLb * optimumLbPerAc;
  const { low, high } = withinADollar(input, priceRatio, returnUsdPerAc, plateau);
  return {
    optimumLbPerAc,
    lowLbPerAc: Math.max(0, low),
    highLbPerAc: Math.min(high, highest),
    priceRatio,
    gainBuPerAc,
    returnUsdPerAc,
    mostYieldLbPerAc: Math.min(plateau ?? vertex, highest),
    heldAt: heldAt(free, plateau, highest),
  };
}

function check({ quadratic, priceGrainUsdPerBu, priceNUsdPerLb }: NitrogenOptimumInput): void {
  if (!(quadratic < 0)) {
    refuseArgument("quadratic", "must be below 0: a curve that does not bend down has no best rate.");
  }
  if (!(priceGrainUsdPerBu > 0)) refuseArgument("priceGrain", "must be above 0 $/bu.");
  if (!(priceNUsdPerLb > 0)) refuseArgument("priceN", "must be above 0 $/lb.");
}

/** Where the return is $1 under the best: roots of quadratic × N² + (linear − ratio) × N = (best − 1) / grain price. */
function withinADollar(
  { linear, quadratic, priceNUsdPerLb, priceGrainUsdPerBu }: NitrogenOptimumInput,
  priceRatio: number,
  best: number,
  plateau: number | null,
): { low: number; high: number } {
  const slope = linear - priceRatio;
  const half =
    Math.sqrt(Math.max(0, slope ** 2 + (4 * quadratic * (best - 1)) / priceGrainUsdPerBu)) / (-2 * quadratic);
  const middle = slope / (-2 * quadratic);
  const high = middle + half;
  if (plateau === null || high <= plateau) return { low: middle - half, high };
  // On the plateau each further pound costs its price and brings nothing.
  const atPlateau = priceGrainUsdPerBu * plateau * (linear + quadratic * plateau) - priceNUsdPerLb * plateau;
  return { low: middle - half, high: plateau + (atPlateau - best + 1) / priceNUsdPerLb };
}

function heldAt(free: number, plateau: number | null, highest: number): NitrogenOptimum["heldAt"] {
  if (free <= 0) return "no nitrogen";
  if (free > highest && highest <= (plateau ?? highest)) return "highest rate";
  return plateau !== null && free > plateau ? "plateau" : "nothing";
}
