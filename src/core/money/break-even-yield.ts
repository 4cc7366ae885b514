import { within } from "../limit";
import { bushelMarginUsd } from "./bushel-margin";
import { moneyLimits } from "./money-limits";

export interface BreakEvenYieldInput {
  /** Costs that do not depend on the yield: variable only for the short run, all for the long run. */
  readonly costUsdPerAc: number;
  readonly priceUsdPerBu: number;
  readonly otherIncomeUsdPerAc: number;
  readonly costUsdPerBu: number;
}

export interface BreakEvenYield {
  readonly yieldBuPerAc: number;
  readonly marginUsdPerBu: number;
  readonly costToCoverUsdPerAc: number;
  /** Other income pays for everything: any yield will do. */
  readonly isCovered: boolean;
}

/**
 * Lowest yield at which a crop covers its costs.
 *
 *   (cost - other income) / (price - cost per bushel), never below 0
 *
 * @source enterprise-budget
 */
export function breakEvenYield(input: BreakEvenYieldInput): BreakEvenYield {
  const { costUsdPerAc, priceUsdPerBu, otherIncomeUsdPerAc, costUsdPerBu } = input;
  within("cost", costUsdPerAc, moneyLimits.costPerAc);
  within("otherIncome", otherIncomeUsdPerAc, moneyLimits.otherIncome);
  const marginUsdPerBu = bushelMarginUsd(priceUsdPerBu, costUsdPerBu);

  const costToCoverUsdPerAc = costUsdPerAc - otherIncomeUsdPerAc;
  const yieldBuPerAc = Math.max(0, costToCoverUsdPerAc / marginUsdPerBu);
  return { yieldBuPerAc, marginUsdPerBu, costToCoverUsdPerAc, isCovered: costToCoverUsdPerAc <= 0 };
}
