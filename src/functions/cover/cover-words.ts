import { residuePurposes, type ResiduePurposeKey } from "../../reference/cover/crop-residue";
import { coverEffects, slopeMethods, type CoverEffectKey, type SlopeMethodKey } from "../../reference/cover/erosion";
import { residueKinds, type ResidueKindKey } from "../../reference/cover/residue-kinds";
import { coverKept, type CoverPassKey } from "../../reference/cover/tillage-residue";
import { bestDays, type BestDayKey } from "../../reference/machinery/best-days";
import {
  customRates,
  customSurveys,
  type CustomRateKey,
  type CustomSurveyKey,
} from "../../reference/machinery/custom-rates";
import { drafts, draftSoils, type DraftKey, type DraftSoilKey } from "../../reference/machinery/draft";
import { fuels, type FuelKey } from "../../reference/machinery/fuel";
import {
  fieldMachines,
  machines,
  tractors,
  type FieldMachineKey,
  type MachineKey,
  type TractorKey,
} from "../../reference/machinery/machines";
import {
  operationFuels,
  tillageSystems,
  type OperationFuelKey,
  type TillageSystemKey,
} from "../../reference/machinery/operation-fuel";
import { remainingValues, type ValueClassKey } from "../../reference/machinery/remaining-value";
import { vocabulary } from "../frame";

export const coverPassWords = vocabulary<CoverPassKey>("tillage pass", coverKept);
export const residueKindWords = vocabulary<ResidueKindKey>("residue kind", residueKinds);
export const residuePurposeWords = vocabulary<ResiduePurposeKey>("residue purpose", residuePurposes);
export const slopeMethodWords = vocabulary<SlopeMethodKey>("slope method", slopeMethods);
export const coverEffectWords = vocabulary<CoverEffectKey>("cover effect", coverEffects);
export const machineWords = vocabulary<MachineKey>("machine", machines);
export const fieldMachineWords = vocabulary<FieldMachineKey>("field machine", fieldMachines);
export const tractorWords = vocabulary<TractorKey>("tractor", tractors);
export const valueClassWords = vocabulary<ValueClassKey>("machine class", remainingValues);
export const fuelWords = vocabulary<FuelKey>("fuel", fuels);
export const draftWords = vocabulary<DraftKey>("draft implement", drafts);
export const draftSoilWords = vocabulary<DraftSoilKey>("draft soil", draftSoils);
export const operationFuelWords = vocabulary<OperationFuelKey>("field operation", operationFuels);
export const tillageSystemWords = vocabulary<TillageSystemKey>("tillage system", tillageSystems);
export const customRateWords = vocabulary<CustomRateKey>("custom operation", customRates);
export const customSurveyWords = vocabulary<CustomSurveyKey>("custom survey", customSurveys);
export const bestDayWords = vocabulary<BestDayKey>("best day", bestDays);

const ends = {
  low: { label: "low", also: ["least"] },
  middle: { label: "middle", also: ["mid", "likely"] },
  high: { label: "high", also: ["most"] },
} as const;

export type EndKey = keyof typeof ends;

/** Which end of a published range. */
export const endWords = vocabulary<EndKey>("end of range", ends);

const seasonLoads = { average: { label: "average", also: ["season average", "mixed work"] } } as const;

/** In place of a load in percent. */
export const loadWords = vocabulary<keyof typeof seasonLoads>("engine load", seasonLoads);
