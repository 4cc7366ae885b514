import { refuse } from "../fault";
import type { GrainRow } from "../../reference/crops";
import { bushelWeights, grains, type GrainKey } from "../../reference/grain";

/** Words for a grain whose bushel is not agreed on. */
const soldOtherwise: Readonly<Partial<Record<GrainKey, string>>> = {
  sunflower: "It is sold by the hundredweight: its bushel runs from 24 to 32 lb from state to state.",
};

/**
 * What a trade bushel of a grain weighs, with its citation.
 *
 * @source mn-statutes-239.32, usda-weight-per-bushel, uwex-bushels-test-weight
 */
export function bushelWeight(grain: GrainKey): GrainRow<GrainKey> {
  const row = bushelWeights.rows.find((candidate) => candidate.grain === grain);
  if (row) return row;
  refuse({
    kind: "notPublished",
    what: `bushel of ${grains[grain].label}`,
    where: "the list of trade bushel weights",
    instead: soldOtherwise[grain] ?? "Use pounds, hundredweight or tons.",
  });
}
