import { within } from "../limit";
import { machineryLimits } from "./machinery-limits";

export interface WearCost {
  readonly costUsdPerAc: number;
  readonly setUsd: number;
}

/**
 * Cost of parts that wear out on the soil: points, sweeps, blades, openers.
 *
 *   parts × price of one / acres that the set lasts
 *
 * @source wear-by-acre
 */
export function wearCost(input: { parts: number; pricePerPartUsd: number; lifeAcres: number }): WearCost {
  within("parts", input.parts, machineryLimits.parts);
  within("pricePerPart", input.pricePerPartUsd, machineryLimits.pricePerPart);
  within("lifeAcres", input.lifeAcres, machineryLimits.acres);
  const setUsd = input.parts * input.pricePerPartUsd;
  return { costUsdPerAc: setUsd / input.lifeAcres, setUsd };
}
