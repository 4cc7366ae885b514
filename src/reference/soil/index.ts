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
export { soilKinds, type SoilKindKey } from "./soil-kinds";
