import { within } from "../limit";
import { capitalLimits } from "./capital-limits";
import { capitalRecoveryFactor } from "./capital-recovery";
import { investmentFlows, type Investment, type InvestmentFlows } from "./investment-flows";

/**
 * Worth today of yearly amounts, the first of them today.
 *
 *   sum of flow k / (1+i)^k
 *
 * @param rate fraction a year, above -1
 * @source time-value-of-money
 */
export function netPresentValue(flowsUsd: readonly number[], rate: number): number {
  // Horner from the far end: no powers, so neither over- nor underflow on the way.
  return flowsUsd.reduceRight((later, flow) => flow + later / (1 + rate), 0);
}

export interface InvestmentValue extends InvestmentFlows {
  readonly valueUsd: number;
  /** The same as a level amount each year of its life. */
  readonly valueUsdPerYr: number;
  readonly inflowsTodayUsd: number;
}

/**
 * Worth today of an investment beyond what it costs; above 0 it earns more than the rate.
 *
 * @param rate fraction a year; after tax when a tax rate is given
 * @source time-value-of-money
 */
export function investmentValue(investment: Investment, rate: number): InvestmentValue {
  within("rate", rate, capitalLimits.rate);
  const flows = investmentFlows(investment);

  const valueUsd = netPresentValue(flows.flowsUsd, rate);
  return {
    ...flows,
    valueUsd,
    valueUsdPerYr: valueUsd * capitalRecoveryFactor(rate, investment.years),
    inflowsTodayUsd: valueUsd + investment.investmentUsd,
  };
}
