import { refuseArgument } from "../fault";
import { sum } from "../statistics/sums";
import { investmentFlows, type Investment, type InvestmentFlows } from "./investment-flows";
import { netPresentValue } from "./net-present-value";

const lowestRate = -0.99;
const highestRate = 10;
/** Halvings of the bracket; 60 leave less than one part in 10^16 of it. */
const halvings = 60;

/**
 * Rate at which yearly amounts are worth nothing today; null when no rate between -99 % and 1,000 % does it.
 * Bisection on that bracket. Amounts that change sign more than once may have several such rates.
 *
 * @source time-value-of-money
 */
export function internalRate(flowsUsd: readonly number[]): number | null {
  const worthAt = (rate: number) => netPresentValue(flowsUsd, rate);
  let low = lowestRate;
  let high = highestRate;
  const lowSign = Math.sign(worthAt(low));
  if (lowSign === 0 || lowSign === Math.sign(worthAt(high))) return null;
  for (let step = 0; step < halvings; step++) {
    const middle = (low + high) / 2;
    if (Math.sign(worthAt(middle)) === lowSign) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

export interface InvestmentReturn extends InvestmentFlows {
  /** Fraction a year. */
  readonly rate: number;
  /** Gains and salvage after tax, over the price. */
  readonly returnedPerDollar: number;
}

/**
 * Yearly return of an investment: the dearest loan it could just carry.
 *
 * @source time-value-of-money
 */
export function investmentReturn(investment: Investment): InvestmentReturn {
  const flows = investmentFlows(investment);
  if (investment.investmentUsd === 0) {
    refuseArgument("investment", "is 0, and a return needs money put in.");
  }
  const rate = internalRate(flows.flowsUsd);
  if (rate === null) refuseNoRate(flows);
  const inUsd = sum(flows.flowsUsd.slice(1));
  return { ...flows, rate, returnedPerDollar: inUsd / investment.investmentUsd };
}

function refuseNoRate({ flowsUsd }: InvestmentFlows): never {
  const brings = flowsUsd.slice(1).some((flow) => flow > 0);
  const because = brings
    ? "no rate between -99 % and 1,000 % a year makes this investment even: check the amounts."
    : "brings nothing back, so there is no return.";
  refuseArgument("yearlyGain", because);
}
