import { within } from "../limit";
import { bushelMarginUsd } from "./bushel-margin";
import { moneyLimits } from "./money-limits";

export interface BreakEvenGain {
  readonly gainBuPerAc: number;
  readonly marginUsdPerBu: number;
}

export interface BreakEvenGainInput {
  /** Cost of the practice after what it saves. */
  readonly costUsdPerAc: number;
  readonly priceUsdPerBu: number;
  /** Hauling, drying and storing of each extra bushel. */
  readonly costUsdPerBu: number;
}

/**
 * Yield gain that pays for a practice.
 *
 *   cost / (price - cost per bushel)
 *
 * @source partial-budget
 */
export function breakEvenGain({ costUsdPerAc, priceUsdPerBu, costUsdPerBu }: BreakEvenGainInput): BreakEvenGain {
  within("cost", costUsdPerAc, moneyLimits.costPerAc);
  const marginUsdPerBu = bushelMarginUsd(priceUsdPerBu, costUsdPerBu);

  return { gainBuPerAc: costUsdPerAc / marginUsdPerBu, marginUsdPerBu };
}
