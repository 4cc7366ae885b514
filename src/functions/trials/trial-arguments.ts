import { refuse } from "../../core/fault";
import type { GainMoney } from "../../core/trials/gain-in-words";
import { trialLimits } from "../../core/trials/trial-limits";
import { listWithGaps, optional, percent, quantity, text, type ManyArgument, type OneArgument } from "../frame";

/** How sure a range shall be. On-farm trials usually take 90: wrong once in ten. */
export const confidence = optional(
  percent(trialLimits.confidence, { says: "how sure the range shall be; 90 is wrong once in ten" }),
  90,
  "90",
);

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
  if (priceUsdPerBu === null) refuse({ kind: "waiting", argument: "price" });
  if (costUsdPerAc === null) refuse({ kind: "waiting", argument: "cost" });
  if (priceUsdPerBu > 0) return { priceUsdPerBu, costUsdPerAc };
  refuse({ kind: "refused", argument: "price", because: "is 0: no gain pays for the cost." });
}
