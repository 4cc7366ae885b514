/** A rate of product that carries a wanted amount of nutrient. */
export interface ProductRate {
  readonly productLbPerAc: number;
  readonly needLbPerAc: number;
  readonly analysisPct: number;
}

/**
 * Product needed for a nutrient rate, lb/ac.
 *
 *   need / (analysis / 100)
 */
export function productRate({ needLbPerAc, analysisPct }: Omit<ProductRate, "productLbPerAc">): ProductRate {
  return { productLbPerAc: (needLbPerAc * 100) / analysisPct, needLbPerAc, analysisPct };
}
