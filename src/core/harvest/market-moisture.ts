import { refuse } from "../fault";
import { within } from "../limit";
import { grains, marketMoistures, type GrainKey } from "../../reference/grain";
import type { Cited } from "../../reference/table";
import { harvestLimits } from "./harvest-limits";

export interface MarketMoisture {
  readonly moisturePct: number;
  readonly cited: readonly Cited[];
}

/**
 * The moisture at which a bushel is paid in full: the buyer's own where it is given, the usual one of the grain
 * otherwise. Grains without a usual one ask for it.
 *
 * @source uwex-bushels-test-weight, ufl-ag442-2020
 */
export function marketMoisture(grain: GrainKey, givenPct: number | null): MarketMoisture {
  if (givenPct !== null) {
    within("marketMoisture", givenPct, harvestLimits.marketMoisture);
    return { moisturePct: givenPct, cited: [] };
  }
  const row = marketMoistures.rows.find((candidate) => candidate.grain === grain);
  if (row) return { moisturePct: row.marketMoisturePct, cited: [row] };
  refuse({
    kind: "notPublished",
    what: `market moisture of ${grains[grain].label}`,
    where: "the list of market moistures",
    instead: "Enter marketMoisture, the buyer's own.",
  });
}
