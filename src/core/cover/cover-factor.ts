import { within } from "../limit";
import { coverEffects, type CoverEffectKey } from "../../reference/cover/erosion";
import type { Cited } from "../../reference/table";
import { coverLimits } from "./cover-limits";

export interface CoverFactor {
  readonly factor: number;
  readonly exponentPerPct: number;
  /** Loss by each published exponent, %. */
  readonly ofBareSoilPct: Readonly<Record<CoverEffectKey, number>>;
  readonly published: Cited;
}

/**
 * Soil loss under surface residue against that of bare soil.
 *
 *   e^(-exponent × cover %)
 *
 * @source usda-ah703-1997, usda-ars-rusle-notes
 */
export function coverFactor(coverPct: number, effect: CoverEffectKey): CoverFactor {
  within("cover", coverPct, coverLimits.cover);
  const at = (key: CoverEffectKey) => Math.exp(-coverEffects[key].exponentPerPct * coverPct);
  return {
    factor: at(effect),
    exponentPerPct: coverEffects[effect].exponentPerPct,
    ofBareSoilPct: { interrill: 100 * at("interrill"), typical: 100 * at("typical"), rill: 100 * at("rill") },
    published: coverEffects[effect],
  };
}
