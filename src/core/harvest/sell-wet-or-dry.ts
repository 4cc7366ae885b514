import { waitFor } from "../fault";
import { within } from "../limit";
import { harvestLimits } from "./harvest-limits";
import { shrunkBushels, type ShrinkInput } from "./grain-shrink";
import type { Cited } from "../../reference/table";

export interface Sale {
  readonly wetBu: number;
  readonly grain: ShrinkInput["grain"];
  readonly moisturePct: number;
  readonly marketMoisturePct: number | null;
  readonly handlingLossPct: number | null;
  /** For a bushel at market moisture. */
  readonly priceUsdPerBu: number;
  /** Off the price of each wet bushel; null: not offered. */
  readonly wetDiscountUsdPerBu: number | null;
  /** The elevator's shrink for each point and its charge for each wet bushel; null: not offered. */
  readonly elevatorShrinkPct: number | null;
  readonly elevatorChargeUsdPerBu: number | null;
  /** Drying at home, for each wet bushel; null: no dryer. */
  readonly homeCostUsdPerBu: number | null;
}

export interface Way {
  readonly name: "sell wet" | "elevator dries" | "dry at home";
  readonly paidBu: number;
  readonly priceUsdPerBu: number;
  readonly incomeUsd: number;
  readonly costUsd: number;
  readonly netUsd: number;
}

export interface WetOrDry {
  readonly ways: readonly Way[];
  readonly best: Way;
  /** Net of the best over the next. */
  readonly aheadUsd: number;
  readonly cited: readonly Cited[];
}

/**
 * Selling wet, letting the elevator dry, or drying at home; the ways whose terms are given.
 *
 *   wet       bushels × (price - discount)
 *   elevator  bushels × (1 - shrink × points) × price - bushels × charge
 *   home      bushels × (1 - water - handling) × price - bushels × cost
 *
 * @source isu-a2-32
 */
export function sellWetOrDry(sale: Sale): WetOrDry {
  within("price", sale.priceUsdPerBu, harvestLimits.price);
  const home = shrunkBushels(sale.wetBu, { ...sale, shrinkPerPointPct: null });
  const ways = [wet(sale), elevator(sale), atHome(sale, home.paidBu)].flatMap((way) => way ?? []);
  const [best, next] = [...ways].sort((a, b) => b.netUsd - a.netUsd);
  if (!best) waitFor("wetDiscount, elevatorCharge or homeCost");
  return { ways, best, aheadUsd: best.netUsd - (next ?? best).netUsd, cited: home.shrink.cited };
}

function wet({ wetBu, priceUsdPerBu, wetDiscountUsdPerBu }: Sale): Way | null {
  if (wetDiscountUsdPerBu === null) return null;
  within("wetDiscount", wetDiscountUsdPerBu, { ...harvestLimits.costPerBushel, max: priceUsdPerBu });
  return way("sell wet", wetBu, priceUsdPerBu - wetDiscountUsdPerBu, 0);
}

function elevator(sale: Sale): Way | null {
  if (sale.elevatorChargeUsdPerBu === null) return null;
  within("elevatorCharge", sale.elevatorChargeUsdPerBu, harvestLimits.costPerBushel);
  if (sale.elevatorShrinkPct === null) waitFor("elevatorShrink");
  const { paidBu } = shrunkBushels(sale.wetBu, { ...sale, shrinkPerPointPct: sale.elevatorShrinkPct });
  return way("elevator dries", paidBu, sale.priceUsdPerBu, sale.wetBu * sale.elevatorChargeUsdPerBu);
}

function atHome({ wetBu, priceUsdPerBu, homeCostUsdPerBu }: Sale, paidBu: number): Way | null {
  if (homeCostUsdPerBu === null) return null;
  within("homeCost", homeCostUsdPerBu, harvestLimits.costPerBushel);
  return way("dry at home", paidBu, priceUsdPerBu, wetBu * homeCostUsdPerBu);
}

function way(name: Way["name"], paidBu: number, priceUsdPerBu: number, costUsd: number): Way {
  const incomeUsd = paidBu * priceUsdPerBu;
  return { name, paidBu, priceUsdPerBu, incomeUsd, costUsd, netUsd: incomeUsd - costUsd };
}
