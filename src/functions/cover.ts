import { coverCount } from "./cover/cover-count";
import { coverLeft } from "./cover/cover-left";
import { contourFactor, coverFactor, slopeFactor, soilLoss, soilLossRatio } from "./cover/erosion";
import { capacityNeed, fieldCapacity, latenessCost } from "./cover/field-work";
import { fuelUse, passFuel, systemFuel } from "./cover/fuel";
import { customRate, machineValue, repairCost, wearCost } from "./cover/machine-money";
import { passCost } from "./cover/pass-cost";
import { powerNeed } from "./cover/power-need";
import { residueCover, residuePounds, tilledShare } from "./cover/residue";
import { tillageCompare } from "./cover/tillage-compare";
import type { WorksheetFunction } from "./frame";

/** Everything this family puts on the sheet. */
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
