import { within } from "../limit";
import { profitDistribution, type Outlook } from "./profit-distribution";
import { likelyProfit } from "./profit-odds";
import { riskLimits } from "./risk-limits";
import { riskMeasures } from "./risk-measures";

export interface ProfitRangeInput {
  readonly outlook: Outlook;
  readonly targetUsdPerAc: number;
  /** Share of the worst years looked at. */
  readonly tail: number;
  /** Absolute risk aversion per $/ac; null: no certain value is worked out. */
  readonly riskAversion: number | null;
}

export interface ProfitRange {
  readonly lowUsdPerAc: number;
  readonly middleUsdPerAc: number;
  readonly highUsdPerAc: number;
  readonly meanUsdPerAc: number;
  readonly sdUsdPerAc: number;
  /** Chance of the target or less, 0 to 1. */
  readonly chanceShort: number;
  /** Below the target, averaged over all years. */
  readonly shortfallUsdPerAc: number;
  /** The profit that the worst share of the years stays at or below. */
  readonly valueAtRiskUsdPerAc: number;
  /** The mean of those years. */
  readonly tailMeanUsdPerAc: number;
  /** Certain profit worth as much; null without a risk aversion. */
  readonly certainUsdPerAc: number | null;
  readonly likelyUsdPerAc: number;
  readonly worstUsdPerAc: number;
  readonly bestUsdPerAc: number;
}

/**
 * How far profit of an acre may range when yield and price are uncertain and move together.
 *
 * @source gaussian-copula
 */
export function profitRange({ outlook, targetUsdPerAc, tail, riskAversion }: ProfitRangeInput): ProfitRange {
  within("target", targetUsdPerAc, riskLimits.target);
  within("tail", tail, riskLimits.tail);
  if (riskAversion !== null) within("riskAversion", riskAversion, riskLimits.riskAversion);

  const distribution = profitDistribution(outlook);
  const measures = riskMeasures(distribution);
  return {
    lowUsdPerAc: measures.percentile(0.1),
    middleUsdPerAc: measures.percentile(0.5),
    highUsdPerAc: measures.percentile(0.9),
    meanUsdPerAc: measures.mean,
    sdUsdPerAc: measures.sd,
    chanceShort: distribution.cdf(targetUsdPerAc),
    shortfallUsdPerAc: measures.shortfall(targetUsdPerAc),
    valueAtRiskUsdPerAc: measures.percentile(tail),
    tailMeanUsdPerAc: measures.tailMean(tail),
    certainUsdPerAc: riskAversion === null ? null : measures.certaintyEquivalent(riskAversion),
    likelyUsdPerAc: likelyProfit(outlook),
    worstUsdPerAc: distribution.lowest,
    bestUsdPerAc: distribution.highest,
  };
}
