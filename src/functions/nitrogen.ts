import type { WorksheetFunction } from "./frame";
import { legumeCredit } from "./soil/legume-credit";
import { manureCredit } from "./soil/manure-credit";
import { nitrogenNeed } from "./soil/nitrogen-need";
import { nitrogenOptimum } from "./soil/nitrogen-optimum";
import { organicNitrogen } from "./soil/organic-nitrogen";

export { legumeCredit, manureCredit, nitrogenNeed, nitrogenOptimum, organicNitrogen };

/** The nitrogen functions of the soil family. */
export const nitrogenFunctions: readonly WorksheetFunction[] = [
  nitrogenNeed,
  nitrogenOptimum,
  legumeCredit,
  manureCredit,
  organicNitrogen,
];
