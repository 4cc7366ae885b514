import type { MixMaterial, MixNutrient, MixRequest } from "../../../src/core/materials/mix-request";

/** A request in short: needs as [nutrient, lb/ac, overshoot], materials as [name, $/ton, percents, least, most]. */
export function request(
  needs: readonly (readonly [MixNutrient["nutrient"], number, number?])[],
  materials: readonly (readonly [string, number, readonly number[], number?, number?])[],
  more: Partial<Pick<MixRequest, "saltLimitLbPerAc" | "totalLimitLbPerAc">> = {},
): MixRequest {
  return {
    nutrients: needs.map(([nutrient, needLbPerAc, overshootLbPerAc = null]) => ({
      nutrient,
      needLbPerAc,
      overshootLbPerAc,
    })),
    materials: materials.map(
      ([name, priceUsdPerTon, analysisPct, leastLbPerAc = 0, mostLbPerAc = null]): MixMaterial => ({
        name,
        priceUsdPerTon,
        analysisPct,
        leastLbPerAc,
        mostLbPerAc,
      }),
    ),
    saltLimitLbPerAc: null,
    totalLimitLbPerAc: null,
    ...more,
  };
}
