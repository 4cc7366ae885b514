import { within } from "../limit";
import { profitDistribution, type Outlook } from "./profit-distribution";
import { riskLimits } from "./risk-limits";

export interface ProfitOdds {
  /** Chance of more than the target, 0 to 1. */
  readonly chance: number;
  readonly worstUsdPerAc: number;
  readonly bestUsdPerAc: number;
  /** At the likeliest yield and price. */
  readonly likelyUsdPerAc: number;
}

/**
 * Chance that an acre earns more than a target.
 *
 * @source gaussian-copula
 */
export function profitOdds(outlook: Outlook, targetUsdPerAc: number): ProfitOdds {
  within("target", targetUsdPerAc, riskLimits.target);
  const { cdf, lowest, highest } = profitDistribution(outlook);
  return {
    chance: 1 - cdf(targetUsdPerAc),
    worstUsdPerAc: lowest,
    bestUsdPerAc: highest,
    likelyUsdPerAc: likelyProfit(outlook),
  };
}

export function likelyProfit({ yieldBuPerAc, priceUsdPerBu, ...costs }: Outlook): number {
  return (
    yieldBuPerAc.likely * (priceUsdPerBu.likely - costs.costUsdPerBu) + costs.otherIncomeUsdPerAc - costs.costUsdPerAc
  );
}
