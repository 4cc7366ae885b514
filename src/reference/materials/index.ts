export { materialAcidity, type AcidityRow } from "./acidity";
export { materialAnalysis, materialAnalysisRange, type AnalysisRangeRow, type AnalysisRow } from "./analysis";
export { bulkDensity, liquidDensity, type BulkDensityRow, type LiquidDensityRow } from "./density";
export { criticalHumidity, type CriticalHumidityRow } from "./humidity";
export { materials, type MaterialForm, type MaterialKey } from "./materials";
export { saltIndex, saltIndexPerUnit, type SaltIndexList, type SaltIndexRow, type SaltPerUnitRow } from "./salt-index";
