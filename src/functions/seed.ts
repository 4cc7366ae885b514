import type { WorksheetFunction } from "./frame";
import { seedCost, seedReturn, seedUnits } from "./seed/buying";
import { seedCurveOptimum, seedOptimum } from "./seed/optimum";
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
  replantGain,
  replantChance,
];
