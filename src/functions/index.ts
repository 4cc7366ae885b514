import { materialFunctions } from "./materials";
import { moneyFunctions } from "./money";
import { nutrientFunctions } from "./nutrients";
import { seedFunctions } from "./seed";
import { soilFunctions } from "./soil";
import { unitFunctions } from "./units";
import type { WorksheetFunction } from "./frame";

/** Every worksheet function, in the order of the documentation. */
export const allFunctions: readonly WorksheetFunction[] = [
  ...nutrientFunctions,
  ...soilFunctions,
  ...materialFunctions,
  ...seedFunctions,
  ...moneyFunctions,
  ...unitFunctions,
];
