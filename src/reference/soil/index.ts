export { acidityBuffers, cationPpmPerMeq, type AcidityBufferKey } from "./cations";
export { chlorosisClasses, chlorosisRisk, type ChlorosisClass } from "./chlorosis";
export {
  finenessSystems,
  limeSplit,
  sieveReports,
  type FinenessSystem,
  type FinenessSystemKey,
  type SieveReportKey,
} from "./fineness";
export type { LimeForm, LimeMethod } from "./lime-method";
export { limeMethods, organicSoilLime, residualLime, type LimeMethodKey } from "./lime-methods";
export {
  markedRates,
  microGuides,
  micronutrients,
  microPlacements,
  microRules,
  type MicroForm,
  type MicroGuideKey,
  type MicronutrientKey,
  type MicroPlacementKey,
  type MicroRule,
} from "./micronutrients";
export {
  bandLimits,
  drySoil,
  furrowCorn,
  furrowNone,
  furrowTriState,
  saltGuides,
  saltPlacements,
  type BandLimit,
  type SaltGuideKey,
  type SaltPlacementKey,
} from "./salt-limits";
export { soilKinds, type SoilKindKey } from "./soil-kinds";
export { sulfurGuides, sulfurRules, type SulfurForm, type SulfurGuideKey, type SulfurRule } from "./sulfur";
