import type { MarketMoistureRow } from "../../reference/crops";
import { grains, marketMoistures, type GrainKey } from "../../reference/grain";
import { refuse } from "../fault";

/** The moisture at which a grain is paid in full, with its citation. */
export function marketMoisture(grain: GrainKey): MarketMoistureRow<GrainKey> {
  const row = marketMoistures.rows.find((candidate) => candidate.grain === grain);
  if (row) return row;
  refuse({
    kind: "notPublished",
    what: `market moisture of ${grains[grain].label}`,
    where: "the list of market moistures",
    instead: "Give marketMoisture.",
  });
}
