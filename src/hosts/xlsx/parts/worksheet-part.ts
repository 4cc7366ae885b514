import { isCellError } from "../../../functions/frame/cell";
import type { SheetPlan } from "../../../workbook/plan";
import type { CalculatedWorkbook } from "../../calculated-workbook";
import { cellAddress } from "../../address";
import { isFormula } from "../cells";
import { replaceOnce } from "./package-parts";

/** Cached errors of formulas are errors, not texts that look like them; typed text that looks like one is text. */
export function withErrorsApart(xml: string, sheet: SheetPlan, values: CalculatedWorkbook): string {
  const wrong = sheet.cells.filter(({ content, row, column }) =>
    isFormula(content)
      ? isCellError(values.valueAt(sheet.name, row, column))
      : typeof content === "string" && content.startsWith("#"),
  );
  return wrong.reduce((text, plan) => {
    const cell = `<c r="${cellAddress(plan)}"`;
    if (!isFormula(plan.content)) return text.replace(`${cell} t="e"`, `${cell} t="str"`);
    const start = new RegExp(`${cell}[^>]* t="str"`).exec(text)?.[0] ?? "";
    return replaceOnce(text, start, start.replace(/"str"$/, '"e"'));
  }, xml);
}
