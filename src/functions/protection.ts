import type { WorksheetFunction } from "./frame";
import { sprayBand, sprayDensity } from "./protection/carrier";
import { nozzleFlowAt, sprayCourse, sprayFlow, sprayPressure, spraySpeed, sprayVolume } from "./protection/nozzles";
import { pestThreshold } from "./protection/pest-threshold";
import { pestActionLevel, pestDays, pestInjuryLevel } from "./protection/pests";
import { plantBackDays } from "./protection/plant-back";
import { weedFreePeriod, weedTable } from "./protection/weed-tables";
import { weedBenefit, weedLoss, weedThreshold } from "./protection/weeds";
import { programGroups } from "./protection/program-groups";
import { resistanceRisk } from "./protection/resistance-risk";
import { siteOfAction } from "./protection/site-of-action";
import { productFromActive, sprayAdjuvant, tankFill, tankLoads } from "./protection/tank";
import { tankPlan } from "./protection/tank-plan";

/** Everything this family puts on the sheet. */
export const protectionFunctions: readonly WorksheetFunction[] = [
  sprayFlow,
  sprayVolume,
  spraySpeed,
  sprayCourse,
  sprayPressure,
  nozzleFlowAt,
  sprayDensity,
  sprayBand,
  productFromActive,
  tankFill,
  tankLoads,
  tankPlan,
  sprayAdjuvant,
  pestInjuryLevel,
  pestActionLevel,
  pestDays,
  pestThreshold,
  weedLoss,
  weedBenefit,
  weedThreshold,
  weedTable,
  weedFreePeriod,
  plantBackDays,
  siteOfAction,
  programGroups,
  resistanceRisk,
];
