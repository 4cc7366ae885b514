import { isCellError } from "../../functions/frame/cell";
import type { SheetPlan } from "../../workbook/plan";
import type { CalculatedWorkbook } from "../calculated-workbook";
import { cellAddress, isFormula } from "./cells";
import { replaceOnce } from "./package-parts";

/** Cached errors of formulas are errors, not texts that look like them. */
export function withCachedErrors(xml: string, sheet: SheetPlan, values: CalculatedWorkbook): string {
  const wrong = sheet.cells.filter(
    ({ content, row, column }) => isFormula(content) && isCellError(values.valueAt(sheet.name, row, column)),
  );
  return wrong.reduce((text, { row, column }) => {
    const start = new RegExp(`<c r="${cellAddress(row, column)}"[^>]* t="str"`).exec(text)?.[0] ?? "";
    return replaceOnce(text, start, start.replace(/"str"$/, '"e"'));
  }, xml);
}
