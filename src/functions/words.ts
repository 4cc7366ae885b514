import { crops, type CropKey } from "../reference/crops";
import { grains, type GrainKey } from "../reference/grain";
import {
  approaches,
  extractants,
  guides,
  type ApproachKey,
  type ExtractantKey,
  type GuideKey,
} from "../reference/guides";
import {
  manureGuides,
  manureNutrients,
  manurePlacements,
  manures,
  type ManureGuideKey,
  type ManureKey,
  type ManureNutrientKey,
  type ManurePlacementKey,
} from "../reference/manure";
import {
  creditGuides,
  nitrogenGuides,
  organicRelease,
  previousCrops,
  stands,
  textures,
  tillages,
  timings,
  type CreditGuideKey,
  type NitrogenGuideKey,
  type PreviousKey,
  type ReleaseKey,
  type StandKey,
  type TextureKey,
  type TillageKey,
  type TimingKey,
} from "../reference/nitrogen";
import {
  nutrients,
  parts,
  removalSets,
  type NutrientKey,
  type PartKey,
  type RemovalSetKey,
} from "../reference/nutrients";
import {
  acidityBuffers,
  finenessSystems,
  limeMethods,
  microGuides,
  micronutrients,
  microPlacements,
  saltGuides,
  saltPlacements,
  sieveReports,
  soilKinds,
  sulfurGuides,
  type AcidityBufferKey,
  type FinenessSystemKey,
  type LimeMethodKey,
  type MicroGuideKey,
  type MicronutrientKey,
  type MicroPlacementKey,
  type SaltGuideKey,
  type SaltPlacementKey,
  type SieveReportKey,
  type SoilKindKey,
  type SulfurGuideKey,
} from "../reference/soil";
import { vocabulary } from "./frame";

/** The closed word lists that arguments accept; the words themselves are reference data. */
export const cropWords = vocabulary<CropKey>("crop", crops);
/** Crops, and grains that only have a bushel. */
export const grainWords = vocabulary<GrainKey>("grain", grains);
export const nutrientWords = vocabulary<NutrientKey>("nutrient", nutrients);
export const partWords = vocabulary<PartKey>("part", parts);
export const removalSetWords = vocabulary<RemovalSetKey>("removal set", removalSets);
export const guideWords = vocabulary<GuideKey>("guide", guides);
export const extractantWords = vocabulary<ExtractantKey>("test method", extractants);
export const approachWords = vocabulary<ApproachKey>("approach", approaches);
export const limeMethodWords = vocabulary<LimeMethodKey>("lime method", limeMethods);
export const soilKindWords = vocabulary<SoilKindKey>("soil", soilKinds);
export const finenessSystemWords = vocabulary<FinenessSystemKey>("fineness system", finenessSystems);
export const sieveReportWords = vocabulary<SieveReportKey>("sieve report", sieveReports);
export const nitrogenGuideWords = vocabulary<NitrogenGuideKey>("nitrogen guide", nitrogenGuides);
export const creditGuideWords = vocabulary<CreditGuideKey>("credit guide", creditGuides);
export const previousCropWords = vocabulary<PreviousKey>("previous crop", previousCrops);
export const releaseWords = vocabulary<ReleaseKey>("release region", organicRelease);
export const standWords = vocabulary<StandKey>("stand", stands);
export const textureWords = vocabulary<TextureKey>("texture", textures);
export const timingWords = vocabulary<TimingKey>("timing", timings);
export const tillageWords = vocabulary<TillageKey>("tillage", tillages);
export const sulfurGuideWords = vocabulary<SulfurGuideKey>("sulfur guide", sulfurGuides);
export const micronutrientWords = vocabulary<MicronutrientKey>("micronutrient", micronutrients);
export const microGuideWords = vocabulary<MicroGuideKey>("micronutrient guide", microGuides);
export const microPlacementWords = vocabulary<MicroPlacementKey>("micronutrient placement", microPlacements);
export const saltPlacementWords = vocabulary<SaltPlacementKey>("starter placement", saltPlacements);
export const saltGuideWords = vocabulary<SaltGuideKey>("starter guide", saltGuides);
export const acidityBufferWords = vocabulary<AcidityBufferKey>("acidity buffer", acidityBuffers);
export const manureWords = vocabulary<ManureKey>("manure", manures);
export const manureNutrientWords = vocabulary<ManureNutrientKey>("manure nutrient", manureNutrients);
export const manureGuideWords = vocabulary<ManureGuideKey>("manure guide", manureGuides);
export const manurePlacementWords = vocabulary<ManurePlacementKey>("manure placement", manurePlacements);
