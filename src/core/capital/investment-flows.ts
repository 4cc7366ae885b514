import { within } from "../limit";
import { capitalLimits, withinWholeYears } from "./capital-limits";

/** Something bought now that gains the same each year and may be sold at the end. */
export interface Investment {
  readonly investmentUsd: number;
  readonly yearlyGainUsd: number;
  readonly years: number;
  readonly salvageUsd: number;
  /** Fraction of income; 0 before tax. */
  readonly taxRate: number;
  /** Years over which the price is written off in equal parts. */
  readonly taxYears: number;
}

export interface InvestmentFlows {
  /** Money in (+) and out (-), now and at the end of each year. */
  readonly flowsUsd: readonly number[];
  readonly gainAfterTaxUsdPerYr: number;
  /** Tax spared in each year of write-off. */
  readonly taxSparedUsdPerYr: number;
  readonly salvageAfterTaxUsd: number;
  /** Not yet written off at the end; its tax is left out. */
  readonly notWrittenOffUsd: number;
}

/**
 * Yearly money of an investment, after tax with straight-line write-off.
 *
 *   now -C;  year k  gain (1-t) + t C / D while k <= D;  at the end also salvage (1-t)
 *
 * @source time-value-of-money
 */
export function investmentFlows(investment: Investment): InvestmentFlows {
  check(investment);
  const { investmentUsd, yearlyGainUsd, years, salvageUsd, taxRate, taxYears } = investment;

  const gainAfterTaxUsdPerYr = yearlyGainUsd * (1 - taxRate);
  const taxSparedUsdPerYr = (taxRate * investmentUsd) / taxYears;
  const salvageAfterTaxUsd = salvageUsd * (1 - taxRate);
  const flowsUsd = [-investmentUsd];
  for (let year = 1; year <= years; year++) {
    const spared = year <= taxYears ? taxSparedUsdPerYr : 0;
    flowsUsd.push(gainAfterTaxUsdPerYr + spared + (year === years ? salvageAfterTaxUsd : 0));
  }
  const notWrittenOffUsd = taxRate > 0 ? investmentUsd * Math.max(0, 1 - years / taxYears) : 0;
  return { flowsUsd, gainAfterTaxUsdPerYr, taxSparedUsdPerYr, salvageAfterTaxUsd, notWrittenOffUsd };
}

function check({ investmentUsd, yearlyGainUsd, years, salvageUsd, taxRate, taxYears }: Investment): void {
  within("investment", investmentUsd, capitalLimits.investment);
  within("yearlyGain", yearlyGainUsd, capitalLimits.yearlyGain);
  withinWholeYears("years", years);
  within("salvage", salvageUsd, capitalLimits.salvage);
  within("taxRate", taxRate, capitalLimits.taxRate);
  withinWholeYears("taxYears", taxYears);
}
