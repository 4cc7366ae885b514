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
  nutrients,
  parts,
  removalSets,
  type NutrientKey,
  type PartKey,
  type RemovalSetKey,
} from "../reference/nutrients";
import {
  finenessSystems,
  limeMethods,
  sieveReports,
  soilKinds,
  type FinenessSystemKey,
  type LimeMethodKey,
  type SieveReportKey,
  type SoilKindKey,
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
