import type { WorkbookModel } from "../../model/workbook-model";
import type { StarterChoices } from "../choices";
import type { FarmPart } from "../farm-parts";
import { assumptionsSheet } from "./assumptions/assumptions-sheet";
import { budgetSheet } from "./budgets/budget-sheet";
import { farmPageSheet } from "./farm-page/farm-page-sheet";
import { practiceSheets } from "./practices/practice-sheets";
import { profitRangeSheet } from "./farm-page/profit-range-sheet";
import { drainageSheet } from "./drainage/drainage-sheet";
import { farmContext } from "./farm-context";
import { isMade } from "./farm-sheets";
import { fertilityPlanSheet } from "./fertility/fertility-plan-sheet";
import { fieldsSheet } from "./fields-sheet";
import { guidesSheet } from "./fertility/guides-sheet";
import { harvestCheckSheet } from "./harvest/harvest-check-sheet";
import { ledgerSheet, phosphate, potash } from "./soil/ledger-sheet";
import { limePlanSheet } from "./soil/lime-plan-sheet";
import { listsSheet } from "./lists-sheet";
import { materialsSheet } from "./materials/materials-sheet";
import { productPlanSheet } from "./fertility/product-plan-sheet";
import { protectionSheet } from "./protection/protection-sheet";
import { rotationPlanSheet } from "./fertility/rotation-plan-sheet";
import { seedPlanSheet } from "./seed/seed-plan-sheet";
import { shoppingListSheet } from "./fertility/shopping-list-sheet";
import { soilTestsSheet } from "./soil/soil-tests-sheet";
import { standSheet } from "./stand/stand-sheet";
import { startHereSheet } from "./start-here-sheet";
import { summarySheet } from "./summary/summary-sheet";
import { tillageSheet } from "./tillage/tillage-sheet";
import { whatIfSheet } from "./budgets/what-if-sheet";

/** A grower's winter planning: field by field, then the whole farm. */
export function farmPlan(choices: StarterChoices): WorkbookModel {
  const context = farmContext(choices);
  const has = (part: FarmPart) => context.parts.includes(part);
  return {
    starter: "farm-plan",
    title: `${choices.farmName} farm plan`,
    sheets: [
      startHereSheet(context),
      assumptionsSheet(context),
      materialsSheet(context),
      fieldsSheet(context),
      soilTestsSheet(context),
      ledgerSheet(potash, context),
      ledgerSheet(phosphate, context),
      limePlanSheet(context),
      fertilityPlanSheet(context),
      rotationPlanSheet(context),
      productPlanSheet(context),
      shoppingListSheet(),
      guidesSheet(context),
      seedPlanSheet(context),
      ...(has("stand") ? [standSheet(context)] : []),
      ...(has("protection") ? [protectionSheet(context)] : []),
      ...(has("tillage") ? [tillageSheet(context)] : []),
      ...(has("drainage") ? [drainageSheet(context)] : []),
      budgetSheet(context),
      whatIfSheet(context),
      ...(has("practices") ? practiceSheets(context) : []),
      ...(has("page") ? [profitRangeSheet(context)] : []),
      ...(has("harvest") ? [harvestCheckSheet(context)] : []),
      summarySheet(context),
      ...(has("page") ? [farmPageSheet(context)] : []),
      ...(isMade("lists", context.parts) ? [listsSheet(context)] : []),
    ],
  };
}
