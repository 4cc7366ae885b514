import { refuse } from "../fault";
import { within } from "../limit";
import { crops, type CropKey } from "../../reference/crops";
import { baledResidue, cropResidue, type ResiduePurposeKey } from "../../reference/cover/crop-residue";
import type { Cited } from "../../reference/table";
import { coverLimits } from "./cover-limits";

export interface ResiduePounds {
  readonly residueLbPerAc: number;
  readonly poundsPerBushel: number;
  readonly published: Cited;
  readonly basis: string;
}

/**
 * Residue that a crop leaves at a yield: all of it for cover, or what can be baled.
 *
 *   yield × pounds of residue for each bushel
 *
 * @source usda-ah703-1997, unl-g1846, illinois-straw
 */
export function residuePounds(crop: CropKey, yieldBuPerAc: number, purpose: ResiduePurposeKey): ResiduePounds {
  within("yield", yieldBuPerAc, coverLimits.yield);
  const table = purpose === "cover" ? cropResidue : baledResidue;
  const row = table.rows.find((candidate) => candidate.crop === crop);
  if (!row) {
    refuse({
      kind: "notPublished",
      what: `residue per bushel of ${crops[crop].label}`,
      where: `"${table.title}"`,
      instead: `It has ${table.rows.map((known) => crops[known.crop].label).join(", ")}.`,
    });
  }
  const { poundsPerBushel } = row;
  return { residueLbPerAc: yieldBuPerAc * poundsPerBushel, poundsPerBushel, published: row, basis: table.basis };
}
