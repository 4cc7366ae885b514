import { within } from "../limit";
import { sum } from "../statistics/sums";
import { moneyLimits } from "./money-limits";

export interface ShareRentInput {
  readonly yieldBuPerAc: number;
  readonly priceUsdPerBu: number;
  /** The owner's share of the crop, a fraction. */
  readonly share: number;
  /** Costs that owner and tenant split. */
  readonly sharedCostsUsdPerAc: readonly number[];
  /** The owner's share of those costs, a fraction. */
  readonly costShare: number;
  readonly otherIncomeUsdPerAc: number;
}

export interface ShareRent {
  readonly rentUsdPerAc: number;
  readonly grossUsdPerAc: number;
  readonly ownerCropUsdPerAc: number;
  readonly sharedCostsUsdPerAc: number;
  readonly ownerCostsUsdPerAc: number;
  /** What the tenant has left for all other costs. */
  readonly tenantUsdPerAc: number;
}

/**
 * What the owner of the land has from a crop-share lease.
 *
 *   share × (yield × price + other income) - cost share × shared costs
 *
 * @source lease-definitions
 */
export function shareRent(input: ShareRentInput): ShareRent {
  check(input);
  const grossUsdPerAc = input.yieldBuPerAc * input.priceUsdPerBu + input.otherIncomeUsdPerAc;
  const sharedCostsUsdPerAc = sum(input.sharedCostsUsdPerAc);
  const ownerCropUsdPerAc = input.share * grossUsdPerAc;
  const ownerCostsUsdPerAc = input.costShare * sharedCostsUsdPerAc;
  const rentUsdPerAc = ownerCropUsdPerAc - ownerCostsUsdPerAc;
  return {
    rentUsdPerAc,
    grossUsdPerAc,
    ownerCropUsdPerAc,
    sharedCostsUsdPerAc,
    ownerCostsUsdPerAc,
    tenantUsdPerAc: grossUsdPerAc - sharedCostsUsdPerAc - rentUsdPerAc,
  };
}

function check(input: ShareRentInput): void {
  within("yield", input.yieldBuPerAc, moneyLimits.yield);
  within("price", input.priceUsdPerBu, moneyLimits.price);
  within("share", input.share, moneyLimits.share);
  for (const cost of input.sharedCostsUsdPerAc) within("sharedCosts", cost, moneyLimits.costPerAc);
  within("costShare", input.costShare, moneyLimits.share);
  within("otherIncome", input.otherIncomeUsdPerAc, moneyLimits.otherIncome);
}
