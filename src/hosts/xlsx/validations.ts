import type { DataValidation } from "hucre/xlsx";
import type { ValidationPlan } from "../../workbook/plan";
import { areaAddress } from "../address";
import { withoutEquals } from "./formulas/stored-formula";

/** Longest texts that spreadsheets open without complaint. */
const longest = { prompt: 255, refusal: 225, list: 255 } as const;

/** What may be typed into an area, what to say beforehand and what when it is refused. */
export function dataValidation(plan: ValidationPlan): DataValidation {
  const common = {
    range: areaAddress(plan.area),
    allowBlank: true,
    showInputMessage: plan.prompt !== "",
    showErrorMessage: true,
    errorStyle: "stop",
    inputMessage: fitting(plan.prompt, "prompt"),
    errorMessage: fitting(plan.refusal, "refusal"),
  } as const;
  if (plan.kind === "list") return { ...common, type: "list", ...listSource(plan.words) };
  return {
    ...common,
    type: plan.whole ? "whole" : "decimal",
    operator: "between",
    formula1: String(plan.min),
    formula2: String(plan.max),
  };
}

function listSource(words: readonly string[] | string): Pick<DataValidation, "values" | "formula1"> {
  if (typeof words === "string") return { formula1: withoutEquals(words) };
  const comma = words.find((word) => word.includes(","));
  if (comma !== undefined) throw new Error(`A choice cannot hold a comma ("${comma}"): list the choices on a sheet.`);
  // A quotation mark inside the list ends it unless it is doubled.
  const values = words.map((word) => word.replace(/"/g, '""'));
  fitting(values.join(","), "list");
  return { values };
}

function fitting(text: string, kind: keyof typeof longest): string {
  if (text.length <= longest[kind]) return text;
  throw new Error(`A ${kind} may have ${longest[kind]} characters; this one has ${text.length}: ${text}`);
}
