import type { WorksheetFunction } from "../frame";
import { seedCost, seedReturn, seedUnits } from "./buying";
import { maturityMargin, maturityNeed, stageHeat, stageLeaves } from "./corn-stage";
import { heatUnits, stageDays } from "./heat-units";
import { seedCurveOptimum, seedOptimum } from "./optimum";
import { seedCatch, seedPerFoot, seedPounds, seedRate, seedSpacing } from "./planting";
import { plantingDelay } from "./planting-delay";
import { replantChance, replantGain } from "./replant";
import { rowLength, standCount } from "./row-counts";
import { standEvenness, standHoop, standRange } from "./stand";
import { standYield } from "./stand-yield";
import { treatmentCost, treatmentLiquid } from "./treatment";

/** Everything this family puts on the sheet, in the order of the documentation. */
export const seedFunctions: readonly WorksheetFunction[] = [
  seedRate,
  seedPounds,
  seedPerFoot,
  seedSpacing,
  seedCatch,
  seedUnits,
  seedCost,
  seedReturn,
  seedOptimum,
  seedCurveOptimum,
  treatmentCost,
  treatmentLiquid,
  rowLength,
  standCount,
  standRange,
  standHoop,
  standEvenness,
  standYield,
  plantingDelay,
  replantGain,
  replantChance,
  heatUnits,
  stageDays,
  stageHeat,
  stageLeaves,
  maturityNeed,
  maturityMargin,
];
