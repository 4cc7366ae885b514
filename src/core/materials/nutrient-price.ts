import { refuseArgument } from "../fault";
import { poundPerTon } from "../units/units";

export interface NutrientPriceInput {
  readonly priceUsdPerTon: number;
  readonly analysisPct: number;
  /** Worth of the other nutrients in a ton, $. */
  readonly otherNutrientsUsdPerTon: number;
}

export interface NutrientPrice {
  readonly priceUsdPerLb: number;
  readonly nutrientLbPerTon: number;
  readonly leftUsdPerTon: number;
}

/**
 * Price of a pound of nutrient.
 *
 *   ($ per ton − worth of the other nutrients) / (20 × analysis %)
 *
 * @source nmsu-a133
 */
export function nutrientPrice({
  priceUsdPerTon,
  analysisPct,
  otherNutrientsUsdPerTon,
}: NutrientPriceInput): NutrientPrice {
  if (otherNutrientsUsdPerTon > priceUsdPerTon) {
    refuseArgument(
      "otherNutrientsValue",
      "the other nutrients are worth more than the ton costs, so nothing is left to price.",
    );
  }
  const nutrientLbPerTon = (poundPerTon * analysisPct) / 100;
  const leftUsdPerTon = priceUsdPerTon - otherNutrientsUsdPerTon;
  return { priceUsdPerLb: leftUsdPerTon / nutrientLbPerTon, nutrientLbPerTon, leftUsdPerTon };
}
