import { refuse, waitFor } from "../fault";
import { within } from "../limit";
import { sameLength } from "../same-length";
import { curveLimits, mostPairs } from "./curve-limits";

/** Rates with the yields they gave; null keeps the place of a blank cell. */
export interface TrialPairs {
  readonly rates: readonly (number | null)[];
  readonly yieldsBuPerAc: readonly (number | null)[];
}

/** The filled pairs in rising order, so that the order of the strips cannot move the last digit. */
export interface ResponsePairs {
  readonly rates: readonly number[];
  readonly yieldsBuPerAc: readonly number[];
  readonly distinctRates: readonly number[];
  /** Pairs with one of the two blank. */
  readonly leftOut: number;
}

/** Checks the pairs of a trial and puts them in order. Arguments are named x and y, as the sheet names them. */
export function responsePairs({ rates, yieldsBuPerAc }: TrialPairs): ResponsePairs {
  sameLength("x", rates, "y", yieldsBuPerAc);
  const pairs: { rate: number; yieldBuPerAc: number }[] = [];
  let leftOut = 0;
  rates.forEach((rate, index) => {
    const yieldBuPerAc = yieldsBuPerAc[index] ?? null;
    if (rate !== null && yieldBuPerAc !== null) pairs.push(checked(rate, yieldBuPerAc));
    else if (rate !== null || yieldBuPerAc !== null) leftOut++;
  });
  if (pairs.length === 0) waitFor(rates.every((rate) => rate === null) ? "x" : "y");
  if (pairs.length > mostPairs) refuse({ kind: "tooLarge", argument: "x", received: pairs.length, max: mostPairs });
  pairs.sort((one, other) => one.rate - other.rate || one.yieldBuPerAc - other.yieldBuPerAc);
  return {
    rates: pairs.map(({ rate }) => rate),
    yieldsBuPerAc: pairs.map(({ yieldBuPerAc }) => yieldBuPerAc),
    distinctRates: [...new Set(pairs.map(({ rate }) => rate))],
    leftOut,
  };
}

function checked(rate: number, yieldBuPerAc: number) {
  within("x", rate, curveLimits.rate);
  within("y", yieldBuPerAc, curveLimits.yield);
  return { rate, yieldBuPerAc };
}
