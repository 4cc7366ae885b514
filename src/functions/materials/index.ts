import type { WorksheetFunction } from "../frame";
import { leastCostMix } from "./least-cost-mix";
import { liquidRate } from "./liquid-rate";
import { nutrientPrice } from "./nutrient-price";
import { productRate } from "./product-rate";
import { spreadRate } from "./spread-rate";

/** Everything this family puts on the sheet, in the order of the documentation. */
export const materialFunctions: readonly WorksheetFunction[] = [
  productRate,
  liquidRate,
  nutrientPrice,
  leastCostMix,
  spreadRate,
];
