import { within } from "../limit";
import { capitalLimits } from "./capital-limits";
import { capitalRecoveryFactor } from "./capital-recovery";

export interface YearlyCostInput {
  readonly investmentUsd: number;
  readonly years: number;
  /** Fraction a year. */
  readonly rate: number;
  /** What it still brings at the end. */
  readonly salvageUsd: number;
}

export interface YearlyCost {
  readonly costUsdPerYr: number;
  readonly recoveryFactor: number;
  /** The part of the price that is used up, spread over the years. */
  readonly recoveryUsdPerYr: number;
  /** Interest on the part that comes back at the end. */
  readonly salvageInterestUsdPerYr: number;
  readonly paidUsd: number;
  /** Paid over the years beyond the value used up. */
  readonly interestUsd: number;
}

/**
 * Level yearly cost of something bought once and used for years.
 *
 *   (investment - salvage) × capital recovery factor + salvage × rate
 *
 * @source time-value-of-money
 */
export function yearlyCost({ investmentUsd, years, rate, salvageUsd }: YearlyCostInput): YearlyCost {
  within("investment", investmentUsd, capitalLimits.investment);
  within("salvage", salvageUsd, capitalLimits.salvage);

  const recoveryFactor = capitalRecoveryFactor(rate, years);
  const recoveryUsdPerYr = (investmentUsd - salvageUsd) * recoveryFactor;
  const salvageInterestUsdPerYr = salvageUsd * rate;
  const costUsdPerYr = recoveryUsdPerYr + salvageInterestUsdPerYr;
  const paidUsd = costUsdPerYr * years;
  return {
    costUsdPerYr,
    recoveryFactor,
    recoveryUsdPerYr,
    salvageInterestUsdPerYr,
    paidUsd,
    interestUsd: paidUsd - (investmentUsd - salvageUsd),
  };
}
