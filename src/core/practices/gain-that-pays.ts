import { breakEvenGain } from "../money/break-even-gain";
import { within } from "../limit";
import { practiceLimits } from "./practice-limits";

/** Gain that pays for a practice, bu/ac. Refuses a price of 0, at which none does. */
export function gainThatPays({ costUsdPerAc, priceUsdPerBu }: { costUsdPerAc: number; priceUsdPerBu: number }): number {
  within("cost", costUsdPerAc, practiceLimits.cost);
  return breakEvenGain({ costUsdPerAc, priceUsdPerBu, costUsdPerBu: 0 }).gainBuPerAc;
}
