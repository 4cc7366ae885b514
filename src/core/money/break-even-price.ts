import { refuseArgument } from "../fault";
import { within } from "../limit";
import { moneyLimits } from "./money-limits";

export interface BreakEvenPriceInput {
  /** Costs that do not depend on the yield: variable only for the short run, all for the long run. */
  readonly costUsdPerAc: number;
  readonly yieldBuPerAc: number;
  readonly otherIncomeUsdPerAc: number;
  readonly costUsdPerBu: number;
}

export interface BreakEvenPrice {
  readonly priceUsdPerBu: number;
  readonly costToCoverUsdPerAc: number;
  /** Other income pays for everything: any price will do. */
  readonly isCovered: boolean;
}

/**
 * Lowest price at which a crop covers its costs.
 *
 *   (cost + cost per bushel × yield - other income) / yield, never below 0
 *
 * @source enterprise-budget
 */
export function breakEvenPrice(input: BreakEvenPriceInput): BreakEvenPrice {
  const { costUsdPerAc, yieldBuPerAc, otherIncomeUsdPerAc, costUsdPerBu } = input;
  within("cost", costUsdPerAc, moneyLimits.costPerAc);
  within("yield", yieldBuPerAc, moneyLimits.yield);
  within("otherIncome", otherIncomeUsdPerAc, moneyLimits.otherIncome);
  within("costPerBushel", costUsdPerBu, moneyLimits.costPerBushel);
  if (yieldBuPerAc === 0) refuseArgument("yield", "is 0: no price pays for the cost.");

  const costToCoverUsdPerAc = costUsdPerAc + costUsdPerBu * yieldBuPerAc - otherIncomeUsdPerAc;
  const priceUsdPerBu = Math.max(0, costToCoverUsdPerAc / yieldBuPerAc);
  return { priceUsdPerBu, costToCoverUsdPerAc, isCovered: costToCoverUsdPerAc <= 0 };
}
