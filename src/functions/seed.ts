import type { WorksheetFunction } from "./frame";
import { seedCost, seedUnits } from "./seed/buying";
import { seedRate, seedSpacing } from "./seed/planting";
import { rowLength, standCount } from "./seed/row-counts";

export { rowLength, seedCost, seedRate, seedSpacing, seedUnits, standCount };

/** Everything this family puts on the sheet. */
export const seedFunctions: readonly WorksheetFunction[] = [
  seedRate,
  seedSpacing,
  seedUnits,
  seedCost,
  rowLength,
  standCount,
];
