import type { WorkbookModel } from "../../model/workbook-model";
import type { StarterChoices } from "../choices";
import { assumptionsSheet } from "./assumptions-sheet";
import { budgetSheet } from "./budget-sheet";
import { farmContext } from "./farm-context";
import { fieldsSheet } from "./fields-sheet";
import { ledgerSheet, phosphate, potash } from "./ledger-sheet";
import { limePlanSheet } from "./lime-plan-sheet";
import { nutrientPlanSheet } from "./nutrient-plan-sheet";
import { seedPlanSheet } from "./seed-plan-sheet";
import { soilTestsSheet } from "./soil-tests-sheet";
import { startHereSheet } from "./start-here-sheet";
import { summarySheet } from "./summary-sheet";
import { whatIfSheet } from "./what-if-sheet";

/** A grower's winter planning: field by field, then the whole farm. */
export function farmPlan(choices: StarterChoices): WorkbookModel {
  const context = farmContext(choices);
  return {
    starter: "farm-plan",
    title: `${choices.farmName} farm plan`,
    sheets: [
      startHereSheet(context),
      assumptionsSheet(context),
      fieldsSheet(context),
      soilTestsSheet(context),
      ledgerSheet(potash, context),
      ledgerSheet(phosphate, context),
      limePlanSheet(context),
      nutrientPlanSheet(context),
      seedPlanSheet(context),
      budgetSheet(context),
      whatIfSheet(context),
      summarySheet(context),
    ],
  };
}
