import { leaseForms, type LeaseForm, type LeaseFormKey } from "../../reference/money/lease-forms";
import { needed, refuseArgument } from "../fault";
import { within, type Limit } from "../limit";
import { moneyLimits } from "./money-limits";

/** Terms of the lease; null where it does not name one. */
export interface FlexRentInput {
  readonly method: LeaseFormKey;
  readonly yieldBuPerAc: number;
  readonly priceUsdPerBu: number;
  readonly share: number | null;
  readonly baseRentUsdPerAc: number | null;
  readonly baseYieldBuPerAc: number | null;
  readonly basePriceUsdPerBu: number | null;
  /** Gross above which a bonus starts; null: base yield × base price. */
  readonly baseGrossUsdPerAc: number | null;
  readonly leastRentUsdPerAc: number | null;
  readonly mostRentUsdPerAc: number | null;
}

export interface FlexRent {
  readonly form: LeaseForm;
  readonly rentUsdPerAc: number;
  /** Before the least and the most of the lease. */
  readonly byRuleUsdPerAc: number;
  readonly grossUsdPerAc: number;
  /** Gross above which a bonus is paid; null for the other forms. */
  readonly baseGrossUsdPerAc: number | null;
  readonly heldBy: "least" | "most" | null;
  /** null when there is no gross. */
  readonly shareOfGross: number | null;
}

/**
 * Cash rent that follows the crop, settled after harvest.
 *
 *   share of gross    share × yield × price
 *   base plus bonus   base rent + share × (yield × price - base gross), no bonus below the base gross
 *   price and yield   base rent × price / base price × yield / base yield; or one of the two alone
 *
 * kept between the least and the most rent of the lease.
 *
 * @source iowa-c2-21-2023
 */
export function flexRent(input: FlexRentInput): FlexRent {
  check(input);
  const grossUsdPerAc = input.yieldBuPerAc * input.priceUsdPerBu;
  const byRuleUsdPerAc = rules[input.method](input, grossUsdPerAc);

  const least = input.leastRentUsdPerAc ?? 0;
  const most = input.mostRentUsdPerAc ?? Number.POSITIVE_INFINITY;
  const rentUsdPerAc = Math.min(most, Math.max(least, byRuleUsdPerAc));
  return {
    form: leaseForms[input.method],
    rentUsdPerAc,
    byRuleUsdPerAc,
    grossUsdPerAc,
    baseGrossUsdPerAc: input.method === "basePlusBonus" ? baseGrossOf(input) : null,
    heldBy: byRuleUsdPerAc < least ? "least" : byRuleUsdPerAc > most ? "most" : null,
    shareOfGross: grossUsdPerAc > 0 ? rentUsdPerAc / grossUsdPerAc : null,
  };
}

const rules: Readonly<Record<LeaseFormKey, (input: FlexRentInput, grossUsdPerAc: number) => number>> = {
  shareOfGross: ({ share }, gross) => needed("share", share) * gross,
  basePlusBonus: (input, gross) =>
    needed("baseRent", input.baseRentUsdPerAc) + needed("share", input.share) * Math.max(0, gross - baseGrossOf(input)),
  priceAndYield: (input) => needed("baseRent", input.baseRentUsdPerAc) * yieldRatio(input) * priceRatio(input),
  priceOnly: (input) => needed("baseRent", input.baseRentUsdPerAc) * priceRatio(input),
  yieldOnly: (input) => needed("baseRent", input.baseRentUsdPerAc) * yieldRatio(input),
};

function baseGrossOf(input: FlexRentInput): number {
  if (input.baseGrossUsdPerAc !== null) return input.baseGrossUsdPerAc;
  return needed("baseYield", input.baseYieldBuPerAc) * needed("basePrice", input.basePriceUsdPerBu);
}

function yieldRatio({ yieldBuPerAc, baseYieldBuPerAc }: FlexRentInput): number {
  return yieldBuPerAc / aboveZero("baseYield", needed("baseYield", baseYieldBuPerAc));
}

function priceRatio({ priceUsdPerBu, basePriceUsdPerBu }: FlexRentInput): number {
  return priceUsdPerBu / aboveZero("basePrice", needed("basePrice", basePriceUsdPerBu));
}

function aboveZero(argument: string, value: number): number {
  if (value > 0) return value;
  refuseArgument(argument, "is 0: the rent is in proportion to it.");
}

function check(input: FlexRentInput): void {
  within("yield", input.yieldBuPerAc, moneyLimits.yield);
  within("price", input.priceUsdPerBu, moneyLimits.price);
  withinIfGiven("share", input.share, moneyLimits.share);
  withinIfGiven("baseRent", input.baseRentUsdPerAc, moneyLimits.rent);
  withinIfGiven("baseYield", input.baseYieldBuPerAc, moneyLimits.yield);
  withinIfGiven("basePrice", input.basePriceUsdPerBu, moneyLimits.price);
  withinIfGiven("baseGross", input.baseGrossUsdPerAc, moneyLimits.gross);
  const { leastRentUsdPerAc: least, mostRentUsdPerAc: most } = input;
  withinIfGiven("leastRent", least, moneyLimits.rent);
  withinIfGiven("mostRent", most, moneyLimits.rent);
  if (least !== null && most !== null && least > most) {
    const because = `must not be above mostRent (${most} $/ac); got ${least}.`;
    refuseArgument("leastRent", because);
  }
}

function withinIfGiven(argument: string, value: number | null, limit: Limit): void {
  if (value !== null) within(argument, value, limit);
}
