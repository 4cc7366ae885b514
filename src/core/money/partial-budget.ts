import { within } from "../limit";
import { sum } from "../statistics/sums";
import { moneyLimits } from "./money-limits";

/** What a change brings and costs, in dollars of the same acres and season; each a list of entries. */
export interface Change {
  readonly addedReturnsUsd: readonly number[];
  readonly reducedCostsUsd: readonly number[];
  readonly addedCostsUsd: readonly number[];
  readonly reducedReturnsUsd: readonly number[];
}

export interface PartialBudget {
  readonly netUsd: number;
  readonly gainsUsd: number;
  readonly lossesUsd: number;
  readonly addedReturnsUsd: number;
  readonly reducedCostsUsd: number;
  readonly addedCostsUsd: number;
  readonly reducedReturnsUsd: number;
  /** Returned per dollar of added cost, above 1 when the change pays; none without an added cost. */
  readonly returnPerDollar: number | null;
}

/**
 * Net change of a business when one part of it changes.
 *
 *   (added returns + reduced costs) - (added costs + reduced returns)
 *
 * Costs that stay either way (land, machinery already owned) do not belong in it; a purchase enters as its yearly
 * cost, not its price.
 *
 * @source partial-budget
 */
export function partialBudget(change: Change): PartialBudget {
  const addedReturnsUsd = sumOf("addedReturns", change.addedReturnsUsd);
  const reducedCostsUsd = sumOf("reducedCosts", change.reducedCostsUsd);
  const addedCostsUsd = sumOf("addedCosts", change.addedCostsUsd);
  const reducedReturnsUsd = sumOf("reducedReturns", change.reducedReturnsUsd);

  const gainsUsd = addedReturnsUsd + reducedCostsUsd;
  const lossesUsd = addedCostsUsd + reducedReturnsUsd;
  return {
    netUsd: gainsUsd - lossesUsd,
    gainsUsd,
    lossesUsd,
    addedReturnsUsd,
    reducedCostsUsd,
    addedCostsUsd,
    reducedReturnsUsd,
    returnPerDollar: addedCostsUsd > 0 ? (gainsUsd - reducedReturnsUsd) / addedCostsUsd : null,
  };
}

function sumOf(argument: string, amountsUsd: readonly number[]): number {
  for (const amountUsd of amountsUsd) within(argument, amountUsd, moneyLimits.amount);
  return sum(amountsUsd);
}
