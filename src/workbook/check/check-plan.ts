import type { WorksheetFunction } from "../../functions/frame";
import type { WorkbookPlan } from "../plan";
import { checkFormulas } from "./check-formulas";
import { checkNames } from "./check-names";
import { checkSheet } from "./check-sheet";

/**
 * Everything about a plan that a spreadsheet would refuse or show as an error, in words for the developer.
 * Empty when the plan holds together.
 *
 * @param sheetsBeside sheets that are in the workbook already; formulas may point to any cell of theirs
 */
export function checkPlan(
  plan: WorkbookPlan,
  functions: readonly WorksheetFunction[],
  sheetsBeside: readonly string[] = [],
): string[] {
  return [...checkNames(plan), ...plan.sheets.flatMap(checkSheet), ...checkFormulas(plan, functions, sheetsBeside)];
}
