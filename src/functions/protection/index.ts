import type { WorksheetFunction } from "../frame";
import { sprayBand, sprayDensity } from "./carrier";
import { nozzleFlowAt, sprayCourse, sprayFlow, sprayPressure, spraySpeed, sprayVolume } from "./nozzles";
import { pestThreshold } from "./pest-threshold";
import { pestActionLevel, pestDays, pestInjuryLevel } from "./pests";
import { plantBackDays } from "./plant-back";
import { programGroups } from "./program-groups";
import { resistanceRisk } from "./resistance-risk";
import { siteOfAction } from "./site-of-action";
import { productFromActive, sprayAdjuvant, tankFill, tankLoads } from "./tank";
import { tankPlan } from "./tank-plan";
import { weedFreePeriod, weedTable } from "./weed-tables";
import { weedBenefit, weedLoss, weedThreshold } from "./weeds";

/** Everything this family puts on the sheet, in the order of the documentation. */
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
