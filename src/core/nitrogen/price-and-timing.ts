import { refuseArgument, waitFor } from "../fault";
import { within } from "../limit";
import type { NitrogenRule, TimingKey } from "../../reference/nitrogen";
import type { Cited } from "../../reference/table";

export interface Factors {
  /** 1 where prices were not given or the guide has no price adjustment. */
  readonly price: number;
  readonly timing: number;
  /** $ per bushel over $ per pound of nitrogen. */
  readonly priceRatio: number | null;
  readonly cited: readonly Cited[];
}

interface Asked {
  readonly timing: TimingKey | null;
  readonly priceNUsdPerLb: number | null;
  readonly priceGrainUsdPerBu: number | null;
}

/**
 * Factors a guide puts on its rate for prices and for the time of application.
 *
 *   price = constant + linear × R + square × R²     R = $/bu over $/lb of N
 */
export function priceAndTiming({ factors }: NitrogenRule, asked: Asked): Factors {
  if (!factors) return { price: 1, timing: 1, priceRatio: null, cited: [] };
  const priceRatio = ratioOf(asked);
  if (priceRatio !== null) within("priceGrain / priceN", priceRatio, { ...factors.ratio, unit: "lb of N per bu" });
  const price =
    priceRatio === null ? 1 : factors.constant + factors.linear * priceRatio + factors.square * priceRatio ** 2;
  const timing = factors.timing[asked.timing ?? "preplant"];
  const isUsed = priceRatio !== null || asked.timing !== null;
  return { price, timing, priceRatio, cited: isUsed ? [factors] : [] };
}

/** Bushels' price over the pound's; null where neither is given, waits for the other where one is. */
function ratioOf({ priceNUsdPerLb, priceGrainUsdPerBu }: Omit<Asked, "timing">): number | null {
  if (priceNUsdPerLb === null && priceGrainUsdPerBu === null) return null;
  if (priceNUsdPerLb === null) waitFor("priceN");
  if (priceGrainUsdPerBu === null) waitFor("priceGrain");
  if (!(priceNUsdPerLb > 0)) {
    refuseArgument("priceN", "a price adjustment needs a price above 0 $/lb.");
  }
  return priceGrainUsdPerBu / priceNUsdPerLb;
}
