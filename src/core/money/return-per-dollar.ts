import { refuseArgument } from "../fault";
import { within } from "../limit";
import { moneyLimits } from "./money-limits";

export interface ReturnPerDollar {
  readonly returnPerDollar: number;
  /** What a dollar leaves after it is paid back. */
  readonly netPerDollar: number;
  readonly netUsd: number;
  readonly pays: boolean;
}

/**
 * Dollars returned for each dollar of added cost; a practice pays above 1.
 *
 *   added returns / added costs
 *
 * @source partial-budget
 */
export function returnPerDollar({
  addedReturnsUsd,
  addedCostsUsd,
}: {
  addedReturnsUsd: number;
  addedCostsUsd: number;
}): ReturnPerDollar {
  within("addedReturns", addedReturnsUsd, moneyLimits.amount);
  within("addedCosts", addedCostsUsd, moneyLimits.amount);
  if (addedCostsUsd === 0) {
    refuseArgument("addedCosts", "is 0, and a return per dollar needs a dollar spent.");
  }

  const ratio = addedReturnsUsd / addedCostsUsd;
  return {
    returnPerDollar: ratio,
    netPerDollar: ratio - 1,
    netUsd: addedReturnsUsd - addedCostsUsd,
    pays: ratio > 1,
  };
}
