import { refuseArgument } from "../fault";
import { within } from "../limit";
import { capitalLimits } from "./capital-limits";

export interface PaybackInput {
  readonly investmentUsd: number;
  readonly yearlyGainUsd: number;
  /** Fraction a year; 0 for the simple payback. */
  readonly rate: number;
}

export interface Payback {
  readonly years: number;
  readonly simpleYears: number;
  /** The gain has to be above this for the investment ever to come back. */
  readonly firstInterestUsdPerYr: number;
}

/**
 * Years until an investment with a level gain has come back, interest counted when a rate is given.
 *
 *   ln(1 / (1 - investment × rate / gain)) / ln(1 + rate), and investment / gain without interest
 *
 * @source time-value-of-money
 */
export function paybackYears({ investmentUsd, yearlyGainUsd, rate }: PaybackInput): Payback {
  within("investment", investmentUsd, capitalLimits.investment);
  within("yearlyGain", yearlyGainUsd, capitalLimits.yearlyGain);
  within("rate", rate, capitalLimits.rate);
  const firstInterestUsdPerYr = investmentUsd * rate;
  if (yearlyGainUsd <= Math.max(0, firstInterestUsdPerYr)) refuseNever(yearlyGainUsd, firstInterestUsdPerYr);

  const simpleYears = investmentUsd / yearlyGainUsd;
  const years = rate === 0 ? simpleYears : -Math.log1p(-firstInterestUsdPerYr / yearlyGainUsd) / Math.log1p(rate);
  return { years, simpleYears, firstInterestUsdPerYr };
}

function refuseNever(yearlyGainUsd: number, interestUsdPerYr: number): never {
  const because =
    interestUsdPerYr > 0
      ? `interest alone is ${Number(interestUsdPerYr.toPrecision(6))} $/yr, so this never pays it back; got ${yearlyGainUsd}.`
      : `must be above 0 to pay anything back; got ${yearlyGainUsd}.`;
  refuseArgument("yearlyGain", because);
}
