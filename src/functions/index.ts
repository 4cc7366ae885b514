import { budgetFunctions } from "./budget";
import { capitalFunctions } from "./capital";
import { coverFunctions } from "./cover";
import { curveFunctions } from "./curves";
import { drainageFunctions } from "./drainage";
import type { WorksheetFunction } from "./frame";
import { harvestFunctions } from "./harvest";
import { materialFunctions } from "./materials";
import { moneyFunctions } from "./money";
import { nitrogenFunctions } from "./nitrogen";
import { nutrientFunctions } from "./nutrients";
import { practiceFunctions } from "./practices";
import { protectionFunctions } from "./protection";
import { rentFunctions } from "./rent";
import { riskFunctions } from "./risk";
import { seedFunctions } from "./seed";
import { soilFunctions } from "./soil";
import { soilReadingFunctions } from "./soil-readings";
import { sourceFunction } from "./source";
import { trialFunctions } from "./trials";
import { unitFunctions } from "./units";

const sourced: readonly WorksheetFunction[] = [
  ...nutrientFunctions,
  ...soilFunctions,
  ...nitrogenFunctions,
  ...soilReadingFunctions,
  ...materialFunctions,
  ...seedFunctions,
  ...protectionFunctions,
  ...coverFunctions,
  ...drainageFunctions,
  ...moneyFunctions,
  ...budgetFunctions,
  ...rentFunctions,
  ...capitalFunctions,
  ...riskFunctions,
  ...trialFunctions,
  ...practiceFunctions,
  ...curveFunctions,
  ...harvestFunctions,
  ...unitFunctions,
];

/** Every worksheet function, in the order of the documentation. */
export const allFunctions: readonly WorksheetFunction[] = [...sourced, sourceFunction(sourced)];
