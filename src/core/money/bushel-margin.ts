import { refuseArgument } from "../fault";
import { within } from "../limit";
import { moneyLimits } from "./money-limits";

/** What one more bushel leaves after hauling and drying it; refused when it leaves nothing. */
export function bushelMarginUsd(priceUsdPerBu: number, costUsdPerBu: number): number {
  within("price", priceUsdPerBu, moneyLimits.price);
  within("costPerBushel", costUsdPerBu, moneyLimits.costPerBushel);
  if (priceUsdPerBu > costUsdPerBu) return priceUsdPerBu - costUsdPerBu;
  const because =
    costUsdPerBu > 0
      ? `must be above costPerBushel (${costUsdPerBu} $/bu), or a bushel brings nothing; got ${priceUsdPerBu}.`
      : "is 0: no yield pays for the cost.";
  refuseArgument("price", because);
}
