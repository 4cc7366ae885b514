import type { WorksheetFunction } from "./frame";
import { leastCostMix } from "./materials/least-cost-mix";
import { liquidRate } from "./materials/liquid-rate";
import { nutrientPrice } from "./materials/nutrient-price";
import { productRate } from "./materials/product-rate";
import { spreadRate } from "./materials/spread-rate";

export { leastCostMix, liquidRate, nutrientPrice, productRate, spreadRate };

/** Everything this family puts on the sheet. */
export const materialFunctions: readonly WorksheetFunction[] = [
  productRate,
  liquidRate,
  nutrientPrice,
  leastCostMix,
  spreadRate,
];
