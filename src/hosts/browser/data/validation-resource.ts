import {
  DataValidationErrorStyle,
  DataValidationOperator,
  DataValidationRenderMode,
  DataValidationType,
  type IResources,
} from "@univerjs/core";
import { serializeListOptions } from "@univerjs/sheets";
import type { SheetPlan, ValidationPlan } from "../../../workbook/plan";
import { rangeOf } from "../../engine/ranges";
import { listed, sheetResource } from "../../engine/sheet-resource";

export const validationPlugin = "SHEET_DATA_VALIDATION_PLUGIN";

/** Entry rules of a plan, as the grid stores them in a workbook. A bad entry is refused, not merely marked. */
export function validationsResource(sheets: readonly SheetPlan[], sheetIds: readonly string[]): IResources[number] {
  return sheetResource(validationPlugin, sheets, sheetIds, ({ validations }, id) =>
    listed(validations, (rule, index) => validationData(rule, `${id}-entry-${index}`)),
  );
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
