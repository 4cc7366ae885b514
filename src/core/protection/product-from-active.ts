import { waitFor } from "../fault";
import { within } from "../limit";
import { pctToFraction } from "../units/units";
import { sprayLimits } from "./spray-limits";

export type ProductForm = "liquid" | "dry";

export interface ProductFromActiveInput {
  readonly activeLbPerAc: number;
  /** Pounds of active ingredient in a gallon of a liquid; percent of a dry product. */
  readonly concentration: number;
  /** null: asked for. */
  readonly form: ProductForm | null;
}

export interface ProductFromActive {
  /** gal/ac of a liquid, lb/ac of a dry product. */
  readonly productPerAc: number;
  readonly form: ProductForm;
}

/**
 * Product that carries a rate of active ingredient.
 *
 *   lb active / lb active per gallon      liquids, gal/ac
 *   lb active / (percent active / 100)    dry products, lb/ac
 *
 * Both amounts stand on one basis: active ingredient or acid equivalent.
 *
 * @source tank-arithmetic
 */
export function productFromActive({ activeLbPerAc, concentration, form }: ProductFromActiveInput): ProductFromActive {
  within("activeRate", activeLbPerAc, sprayLimits.activeRate);
  if (form === null) {
    waitFor("form", "liquid (concentration in lb of active per gallon) or dry (concentration in percent)");
  }
  if (form === "liquid") {
    within("concentration", concentration, sprayLimits.activePerGallon);
    return { productPerAc: activeLbPerAc / concentration, form };
  }
  within("concentration", concentration, sprayLimits.activePct);
  return { productPerAc: activeLbPerAc / pctToFraction(concentration), form };
}
