import type { WorksheetFunction } from "./frame";
import { seedCost, seedReturn, seedUnits } from "./seed/buying";
import { maturityMargin, maturityNeed, stageHeat, stageLeaves } from "./seed/corn-stage";
import { heatUnits, stageDays } from "./seed/heat-units";
import { seedCurveOptimum, seedOptimum } from "./seed/optimum";
import { plantingDelay } from "./seed/planting-delay";
import { seedCatch, seedPerFoot, seedPounds, seedRate, seedSpacing } from "./seed/planting";
import { replantChance, replantGain } from "./seed/replant";
import { rowLength, standCount } from "./seed/row-counts";
import { standEvenness, standHoop, standRange } from "./seed/stand";
import { standYield } from "./seed/stand-yield";
import { treatmentCost, treatmentLiquid } from "./seed/treatment";

export { rowLength, seedCost, seedRate, seedSpacing, seedUnits, standCount };

/** Everything this family puts on the sheet. */
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
