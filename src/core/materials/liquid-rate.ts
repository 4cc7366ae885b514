import type { Cited } from "../../reference/table";
import { within } from "../limit";
import { limits } from "../limits";
import { materialLimits } from "./material-limits";
import { productRate } from "./product-rate";

/** Weight of a gallon, typed or from a table. */
export interface GallonWeight {
  readonly lbPerGal: number;
  /** The table row it stands in; null when it was typed. */
  readonly cited: Cited | null;
}

export interface LiquidRateInput {
  readonly needLbPerAc: number;
  readonly analysisPct: number;
  readonly gallon: GallonWeight;
}

export interface LiquidRate {
  readonly rateGalPerAc: number;
  readonly productLbPerAc: number;
  readonly nutrientLbPerGal: number;
  readonly gallon: GallonWeight;
}

/**
 * Gallons of a liquid that carry a wanted amount of nutrient.
 *
 *   need / (pounds per gallon × analysis / 100)
 */
export function liquidRate({ needLbPerAc, analysisPct, gallon }: LiquidRateInput): LiquidRate {
  within("need", needLbPerAc, limits.ratePounds);
  within("analysis", analysisPct, limits.analysis);
  within("lbPerGallon", gallon.lbPerGal, materialLimits.lbPerGal);

  const { productLbPerAc } = productRate({ needLbPerAc, analysisPct });
  return {
    rateGalPerAc: productLbPerAc / gallon.lbPerGal,
    productLbPerAc,
    nutrientLbPerGal: (gallon.lbPerGal * analysisPct) / 100,
    gallon,
  };
}
