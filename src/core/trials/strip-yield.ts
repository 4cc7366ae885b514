import { within } from "../limit";
import { harvestLimits } from "../harvest/harvest-limits";
import { limits } from "../limits";
import { squareFootPerAcre } from "../units/units";
import { trialLimits } from "./trial-limits";

export interface StripYieldInput {
  readonly weightLb: number;
  readonly lengthFt: number;
  readonly widthFt: number;
  readonly moisturePct: number;
  readonly marketMoisturePct: number;
  readonly bushelLb: number;
}

export interface StripYield {
  readonly acres: number;
  /** Weight of the same dry matter at market moisture. */
  readonly marketWeightLb: number;
  readonly bushels: number;
  readonly yieldBuPerAc: number;
}

/**
 * Yield of one strip at market moisture from its scale weight.
 *
 *   lb / (lb/bu) · (100 − moisture) / (100 − market moisture) / (feet · feet / 43,560)
 */
export function stripYield(input: StripYieldInput): StripYield {
  within("weight", input.weightLb, trialLimits.weight);
  within("length", input.lengthFt, trialLimits.feet);
  within("width", input.widthFt, trialLimits.width);
  within("moisture", input.moisturePct, limits.moisture);
  within("marketMoisture", input.marketMoisturePct, harvestLimits.marketMoisture);

  const acres = (input.lengthFt * input.widthFt) / squareFootPerAcre;
  const marketWeightLb = (input.weightLb * (100 - input.moisturePct)) / (100 - input.marketMoisturePct);
  const bushels = marketWeightLb / input.bushelLb;
  return { acres, marketWeightLb, bushels, yieldBuPerAc: bushels / acres };
}
