import { within } from "../limit";
import { harvestLimits } from "./harvest-limits";

export interface Carry {
  readonly priceUsdPerBu: number;
  readonly months: number;
  /** Interest a year, 0.08 for 8 %. */
  readonly rate: number;
  readonly chargeUsdPerBuMonth: number;
  /** Into and out of the bin, once. */
  readonly handlingUsdPerBu: number;
  readonly extraDryingUsdPerBu: number;
  readonly extraShrinkPct: number;
}

export interface StorageCost {
  readonly costUsdPerBu: number;
  readonly breakEvenUsdPerBu: number;
  readonly interestUsdPerBu: number;
  readonly chargeUsdPerBu: number;
  readonly shrinkUsdPerBu: number;
  readonly perMonthUsdPerBu: number;
}

/**
 * What holding a bushel costs, and the later price that pays it back.
 *
 *   price × rate / 12 × months + charge × months + handling + extra drying + extra shrink × price
 *
 * @source carrying-grain
 */
export function storageCost(carry: Carry): StorageCost {
  within("price", carry.priceUsdPerBu, harvestLimits.price);
  within("months", carry.months, harvestLimits.months);
  within("rate", carry.rate, harvestLimits.rate);
  within("monthlyCharge", carry.chargeUsdPerBuMonth, harvestLimits.costPerBushel);
  within("handling", carry.handlingUsdPerBu, harvestLimits.costPerBushel);
  within("extraDrying", carry.extraDryingUsdPerBu, harvestLimits.costPerBushel);
  within("extraShrink", carry.extraShrinkPct, harvestLimits.extraShrink);

  const interestPerMonth = (carry.priceUsdPerBu * carry.rate) / 12;
  const shrinkUsdPerBu = (carry.priceUsdPerBu * carry.extraShrinkPct) / 100;
  const perMonthUsdPerBu = interestPerMonth + carry.chargeUsdPerBuMonth;
  const once = carry.handlingUsdPerBu + carry.extraDryingUsdPerBu + shrinkUsdPerBu;
  const costUsdPerBu = perMonthUsdPerBu * carry.months + once;
  return {
    costUsdPerBu,
    breakEvenUsdPerBu: carry.priceUsdPerBu + costUsdPerBu,
    interestUsdPerBu: interestPerMonth * carry.months,
    chargeUsdPerBu: carry.chargeUsdPerBuMonth * carry.months,
    shrinkUsdPerBu,
    perMonthUsdPerBu,
  };
}
