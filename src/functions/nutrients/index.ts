import type { WorksheetFunction } from "../frame";
import { limitingNutrient } from "./limiting-nutrient";
import { removal, removalTable } from "./removal";
import { rotationBalance } from "./rotation-balance";
import { testDrift } from "./test-drift";

/** Everything this family puts on the sheet, in the order of the documentation. */
export const nutrientFunctions: readonly WorksheetFunction[] = [
  removal,
  removalTable,
  rotationBalance,
  testDrift,
  limitingNutrient,
];
