import { refuse } from "../fault";
import { within } from "../limit";
import { crops, type CropKey } from "../../reference/crops";
import { conservationCover } from "../../reference/cover/erosion";
import { cropResidue, type CropResidueRow } from "../../reference/cover/crop-residue";
import { coverLimits } from "./cover-limits";

export interface ResidueCover {
  readonly coverPct: number;
  /** Pounds that would cover 30 % of the ground. */
  readonly poundsForThirtyPct: number;
  readonly published: CropResidueRow;
}

/**
 * Ground that a weight of residue covers.
 *
 *   100 (1 - e^(-coefficient × lb/ac))
 *
 * @source usda-ah703-1997
 */
export function residueCover(crop: CropKey, residueLbPerAc: number): ResidueCover {
  within("residue", residueLbPerAc, coverLimits.residue);
  const published = cropResidue.rows.find((row) => row.crop === crop);
  if (!published) {
    refuse({
      kind: "notPublished",
      what: `cover per pound of ${crops[crop].label} residue`,
      where: `"${cropResidue.title}"`,
      instead: `It has ${cropResidue.rows.map((row) => crops[row.crop].label).join(", ")}.`,
    });
  }
  return {
    coverPct: -100 * Math.expm1(-published.coverAcPerLb * residueLbPerAc),
    poundsForThirtyPct: -Math.log1p(-conservationCover.coverPct / 100) / published.coverAcPerLb,
    published,
  };
}
