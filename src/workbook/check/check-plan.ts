import type { WorksheetFunction } from "../../functions/frame";
import type { WorkbookPlan } from "../plan";
import { checkFormulas } from "./check-formulas";
import { checkNames } from "./check-names";
import { checkSheet } from "./check-sheet";

/**
 * Everything about a plan that a spreadsheet would refuse or show as an error, in words for the developer.
 * Empty when the plan holds together.
 */
export function checkPlan(plan: WorkbookPlan, functions: readonly WorksheetFunction[]): string[] {
  return [...checkNames(plan), ...plan.sheets.flatMap(checkSheet), ...checkFormulas(plan, functions)];
}
