import { within } from "../limit";
import { moneyLimits } from "../money/money-limits";
import { riskLimits } from "./risk-limits";

export interface RevenueSpreadInput {
  readonly meanYieldBuPerAc: number;
  /** Standard deviation from year to year. */
  readonly yieldSdBuPerAc: number;
  readonly meanPriceUsdPerBu: number;
  readonly priceSdUsdPerBu: number;
  readonly correlation: number;
}

export interface RevenueSpread {
  readonly meanUsdPerAc: number;
  readonly sdUsdPerAc: number;
  /** Mean price times mean yield: what the mean would be if the two went their own ways. */
  readonly productOfMeansUsdPerAc: number;
}

/**
 * Mean and standard deviation of revenue when price and yield are normal and correlated.
 *
 *   mean = μp μy + ρ σp σy
 *   variance = μp² σy² + μy² σp² + 2 μp μy ρ σp σy + σp² σy² (1 + ρ²)
 *
 * @source bivariate-normal-product
 */
export function revenueSpread(input: RevenueSpreadInput): RevenueSpread {
  const { meanYieldBuPerAc: y, yieldSdBuPerAc: ySd, meanPriceUsdPerBu: p, priceSdUsdPerBu: pSd, correlation } = input;
  within("meanYield", y, moneyLimits.yield);
  within("yieldSpread", ySd, moneyLimits.yield);
  within("meanPrice", p, moneyLimits.price);
  within("priceSpread", pSd, moneyLimits.price);
  within("correlation", correlation, riskLimits.correlation);

  const covariance = correlation * pSd * ySd;
  const variance = (p * ySd) ** 2 + (y * pSd) ** 2 + 2 * p * y * covariance + (pSd * ySd) ** 2 + covariance ** 2;
  return {
    meanUsdPerAc: p * y + covariance,
    sdUsdPerAc: Math.sqrt(Math.max(0, variance)),
    productOfMeansUsdPerAc: p * y,
  };
}
