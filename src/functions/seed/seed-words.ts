import { leafGuideWords as leafGuides, type LeafGuideKey } from "../../reference/seed/corn-heat";
import { delayRegions, type DelayRegionKey } from "../../reference/seed/planting-delay";
import { populationCurveWords as curves, type PopulationCurveKey } from "../../reference/seed/population-curves";
import { spacingLossWords as losses, type SpacingLossKey } from "../../reference/seed/spacing-loss";
import {
  hybridWords as hybrids,
  standGuideWords as guides,
  type HybridKey,
  type StandGuideKey,
} from "../../reference/seed/stand-guides";
import { unevenWords as unevens, type UnevenKey } from "../../reference/seed/uneven-stand";
import { vocabulary } from "../frame";

/** Words that only the functions of this family take. */
export const spacingLossWords = vocabulary<SpacingLossKey>("spacing loss", losses);
export const populationCurveWords = vocabulary<PopulationCurveKey>("population curve", curves);
export const standGuideWords = vocabulary<StandGuideKey>("stand guide", guides);
export const hybridWords = vocabulary<HybridKey>("hybrid", hybrids);
export const unevenWords = vocabulary<UnevenKey>("uneven stand", unevens);
export const leafGuideWords = vocabulary<LeafGuideKey>("leaf guide", leafGuides);
export const delayRegionWords = vocabulary<DelayRegionKey>("delay region", delayRegions);
