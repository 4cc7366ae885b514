import { refuseArgument, waitFor } from "../../core/fault";
import type { GainMoney } from "../../core/trials/gain-in-words";
import { trialLimits } from "../../core/trials/trial-limits";
import { listWithGaps, optional, quantity, text, type ManyArgument, type OneArgument } from "../frame";

export const price = optional(
  quantity(trialLimits.price, { says: "price of a bushel, less hauling and drying" }),
  null,
  "no money",
);

/** A name of a treatment, block, variety or place. A rate of 0 is a name like any other. */
export function names(says: string): ManyArgument<readonly (string | null)[]> {
  const name: OneArgument<string> = { ...text({ says }), zeroIsBlank: false, read: (cell) => String(cell).trim() };
  return listWithGaps(name, { says });
}

export function yields(says: string): ManyArgument<readonly (number | null)[]> {
  return listWithGaps(quantity(trialLimits.yield, { says }), { says });
}

/** Price and cost belong together; without both there is no talk of money. */
export function moneyOf(priceUsdPerBu: number | null, costUsdPerAc: number | null): GainMoney | null {
  if (priceUsdPerBu === null && costUsdPerAc === null) return null;
  if (priceUsdPerBu === null) waitFor("price");
  if (costUsdPerAc === null) waitFor("cost");
  if (priceUsdPerBu > 0) return { priceUsdPerBu, costUsdPerAc };
  refuseArgument("price", "is 0: no gain pays for the cost.");
}
