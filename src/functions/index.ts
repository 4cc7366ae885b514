import { coverFunctions } from "./cover";
import { curveFunctions } from "./curves";
import { drainageFunctions } from "./drainage";
import type { WorksheetFunction } from "./frame";
import { harvestFunctions } from "./harvest";
import { materialFunctions } from "./materials";
import { moneyFunctions } from "./money";
import { nutrientFunctions } from "./nutrients";
import { practiceFunctions } from "./practices";
import { protectionFunctions } from "./protection";
import { seedFunctions } from "./seed";
import { soilFunctions } from "./soil";
import { trialFunctions } from "./trials";
import { unitFunctions } from "./units";
import { sourceFunction } from "./units/source";

const sourced: readonly WorksheetFunction[] = [
  ...nutrientFunctions,
  ...soilFunctions,
  ...materialFunctions,
  ...seedFunctions,
  ...protectionFunctions,
  ...coverFunctions,
  ...drainageFunctions,
  ...moneyFunctions,
  ...trialFunctions,
  ...practiceFunctions,
  ...curveFunctions,
  ...harvestFunctions,
  ...unitFunctions,
];

/** Every worksheet function, in the order of the documentation. */
export const allFunctions: readonly WorksheetFunction[] = [...sourced, sourceFunction(sourced)];
