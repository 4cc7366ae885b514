import type { WorkbookModel } from "../../model/workbook-model";
import type { StarterChoices } from "../choices";
import type { FarmPart } from "../farm-parts";
import { assumptionsSheet } from "./assumptions-sheet";
import { budgetSheet } from "./budget-sheet";
import { farmPageSheet } from "./decisions/farm-page-sheet";
import { practiceSheets } from "./decisions/practice-sheets";
import { profitRangeSheet } from "./decisions/profit-range-sheet";
import { drainageSheet } from "./drainage/drainage-sheet";
import { farmContext } from "./farm-context";
import { isMade } from "./farm-sheets";
import { fertilityPlanSheet } from "./fertility-plan-sheet";
import { fieldsSheet } from "./fields-sheet";
import { guidesSheet } from "./guides-sheet";
import { harvestCheckSheet } from "./harvest/harvest-check-sheet";
import { ledgerSheet, phosphate, potash } from "./ledger-sheet";
import { limePlanSheet } from "./lime-plan-sheet";
import { listsSheet } from "./lists-sheet";
import { materialsSheet } from "./materials-sheet";
import { productPlanSheet } from "./product-plan-sheet";
import { protectionSheet } from "./protection/protection-sheet";
import { rotationPlanSheet } from "./rotation-plan-sheet";
import { seedPlanSheet } from "./seed-plan-sheet";
import { shoppingListSheet } from "./shopping-list-sheet";
import { soilTestsSheet } from "./soil-tests-sheet";
import { standSheet } from "./stand/stand-sheet";
import { startHereSheet } from "./start-here-sheet";
import { summarySheet } from "./summary-sheet";
import { tillageSheet } from "./tillage/tillage-sheet";
import { whatIfSheet } from "./what-if-sheet";

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
