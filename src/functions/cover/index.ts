import type { WorksheetFunction } from "../frame";
import { coverCount } from "./cover-count";
import { coverLeft } from "./cover-left";
import { contourFactor, coverFactor, slopeFactor, soilLoss, soilLossRatio } from "./erosion";
import { capacityNeed, fieldCapacity, latenessCost } from "./field-work";
import { fuelUse, passFuel, systemFuel } from "./fuel";
import { customRate, machineValue, repairCost, wearCost } from "./machine-money";
import { passCost } from "./pass-cost";
import { powerNeed } from "./power-need";
import { residueCover, residuePounds, tilledShare } from "./residue";
import { tillageCompare } from "./tillage-compare";

/** Everything this family puts on the sheet, in the order of the documentation. */
export const coverFunctions: readonly WorksheetFunction[] = [
  coverLeft,
  coverCount,
  residuePounds,
  residueCover,
  tilledShare,
  slopeFactor,
  coverFactor,
  contourFactor,
  soilLoss,
  soilLossRatio,
  fieldCapacity,
  capacityNeed,
  latenessCost,
  fuelUse,
  passFuel,
  systemFuel,
  powerNeed,
  machineValue,
  repairCost,
  wearCost,
  customRate,
  passCost,
  tillageCompare,
];
