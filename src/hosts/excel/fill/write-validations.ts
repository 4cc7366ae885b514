import type { SheetPlan, ValidationPlan } from "../../../workbook/plan";
import { areaAddress } from "../../address";
import type { Requests } from "./requests";

/** What may be typed into a cell, what is said beforehand and what when it is refused. */
export async function writeValidations({ name, validations }: SheetPlan, requests: Requests): Promise<void> {
  for (const plan of validations) {
    await requests.makeRoom({ steps: 6 });
    const { dataValidation } = requests.sheet(name).getRange(areaAddress(plan.area));
    dataValidation.rule = ruleOf(plan);
    dataValidation.ignoreBlanks = true;
    dataValidation.prompt = { showPrompt: plan.prompt !== "", title: "", message: plan.prompt };
    dataValidation.errorAlert = { showAlert: true, style: "Stop", title: "", message: plan.refusal };
  }
}

function ruleOf(plan: ValidationPlan): Excel.DataValidationRule {
  if (plan.kind === "list") return { list: { inCellDropDown: true, source: listSource(plan.words) } };
  const limits = { formula1: plan.min, formula2: plan.max, operator: "Between" } as const;
  return plan.whole ? { wholeNumber: limits } : { decimal: limits };
}

function listSource(words: readonly string[] | string): string {
  if (typeof words !== "string") return words.join(",");
  return words.startsWith("=") ? words : `=${words}`;
}
