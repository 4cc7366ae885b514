import { within } from "../limit";
import { moneyLimits } from "./money-limits";

/** Months in use, or the rule that all operating money is out for half a year. */
export type MonthsInUse = number | "halfSeason";

export interface OperatingInterestInput {
  readonly costUsdPerAc: number;
  /** Fraction a year. */
  readonly rate: number;
  readonly months: MonthsInUse;
}

export interface OperatingInterest {
  readonly interestUsdPerAc: number;
  readonly monthsInUse: number;
  readonly isHalfSeason: boolean;
}

const halfSeasonMonths = 6;

/**
 * Interest on money that is out from the purchase until the crop is sold. Two conventions are printed:
 *
 *   cost × rate × months / 12      or the half-season rule      cost / 2 × rate
 *
 * @source enterprise-budget
 */
export function operatingInterest({ costUsdPerAc, rate, months }: OperatingInterestInput): OperatingInterest {
  within("cost", costUsdPerAc, moneyLimits.costPerAc);
  within("rate", rate, moneyLimits.rate);
  const monthsInUse = months === "halfSeason" ? halfSeasonMonths : months;
  within("months", monthsInUse, moneyLimits.months);

  return {
    interestUsdPerAc: (costUsdPerAc * rate * monthsInUse) / 12,
    monthsInUse,
    isHalfSeason: months === "halfSeason",
  };
}
