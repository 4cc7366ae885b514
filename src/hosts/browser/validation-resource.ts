import {
  DataValidationErrorStyle,
  DataValidationOperator,
  DataValidationRenderMode,
  DataValidationType,
  type IResources,
} from "@univerjs/core";
import { serializeListOptions } from "@univerjs/sheets";
import type { SheetPlan, ValidationPlan } from "../../workbook/plan";
import { rangeOf } from "../engine/name-and-table-resources";

export const validationPlugin = "SHEET_DATA_VALIDATION_PLUGIN";

/** Entry rules of a plan, as the grid stores them in a workbook. A bad entry is refused, not merely marked. */
export function validationsResource(sheets: readonly SheetPlan[], sheetIds: readonly string[]): IResources[number] {
  const entries = sheets.flatMap((sheet, index) => {
    const id = sheetIds[index];
    if (id === undefined || sheet.validations.length === 0) return [];
    return [[id, sheet.validations.map((rule, n) => validationData(rule, `${id}-entry-${n}`))]];
  });
  return { name: validationPlugin, data: JSON.stringify(Object.fromEntries(entries)) };
}

function validationData(rule: ValidationPlan, uid: string): object {
  return {
    uid,
    ranges: [rangeOf(rule.area)],
    allowBlank: true,
    errorStyle: DataValidationErrorStyle.STOP,
    showErrorMessage: true,
    error: rule.refusal,
    showInputMessage: true,
    prompt: rule.prompt,
    ...(rule.kind === "list" ? listOf(rule.words) : between(rule)),
  };
}

function listOf(words: readonly string[] | string): object {
  const formula1 = typeof words === "string" ? withEquals(words) : serializeListOptions([...words]);
  return { type: DataValidationType.LIST, formula1, showDropDown: true, renderMode: DataValidationRenderMode.ARROW };
}

function withEquals(reference: string): string {
  return reference.startsWith("=") ? reference : `=${reference}`;
}

function between({ min, max, whole }: ValidationPlan & { kind: "between" }): object {
  return {
    type: whole ? DataValidationType.WHOLE : DataValidationType.DECIMAL,
    operator: DataValidationOperator.BETWEEN,
    formula1: String(min),
    formula2: String(max),
  };
}
