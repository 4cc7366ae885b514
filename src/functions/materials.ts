import type { WorksheetFunction } from "./frame";
import { liquidRate } from "./materials/liquid-rate";
import { nutrientPrice } from "./materials/nutrient-price";
import { productRate } from "./materials/product-rate";
import { spreadRate } from "./materials/spread-rate";

export { liquidRate, nutrientPrice, productRate, spreadRate };

/** Everything this family puts on the sheet. */
export const materialFunctions: readonly WorksheetFunction[] = [productRate, liquidRate, nutrientPrice, spreadRate];
