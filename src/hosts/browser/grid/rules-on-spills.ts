import type { ICellData, Injector, Nullable, Worksheet } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import {
  ConditionalFormattingRuleModel,
  ConditionalFormattingViewModel,
} from "@univerjs/preset-sheets-conditional-formatting";
import type { OpenWorkbook } from "../open-workbook";
import type { Grid } from "./start-grid";

/** The part of a conditional format at work that matters here. */
interface RuleContext {
  readonly accessor: Injector;
  readonly worksheet: Worksheet;
  getCellValue(row: number, column: number): Nullable<ICellData>;
}

const makeRule = "_createRuleCalculateUnitInstance";

/**
 * Lets conditional formats see cells that another cell's formula fills. The grid takes them for empty and has no
 * setting for it, so this reaches into a part of it that is not public; its version is pinned, and a browser test
 * looks at the colours. Call it before the grid starts.
 */
export function letRulesSeeSpills(): void {
  const { prototype } = ConditionalFormattingViewModel;
  const make: unknown = Reflect.get(prototype, makeRule);
  if (typeof make !== "function") return;
  Reflect.set(prototype, makeRule, function (this: unknown, ...given: unknown[]) {
    const rule: unknown = Reflect.apply(make, this, given);
    const context: unknown = typeof rule === "object" && rule !== null ? Reflect.get(rule, "_context") : undefined;
    if (isContext(context)) seeSpills(context);
    return rule;
  });
}

function isContext(context: unknown): context is RuleContext {
  return typeof context === "object" && context !== null && "getCellValue" in context && "worksheet" in context;
}

function seeSpills(context: RuleContext): void {
  const { worksheet } = context;
  const own = context.getCellValue.bind(context);
  context.getCellValue = (row, column) => {
    const cell = own(row, column);
    if (cell?.v !== undefined && cell.v !== null) return cell;
    const spilled = context.accessor.get(FormulaDataModel).getArrayFormulaCellData();
    return spilled[worksheet.getUnitId()]?.[worksheet.getSheetId()]?.[row]?.[column] ?? cell;
  };
}

/** Works the conditional formats of the sheet in sight out anew after each calculation, where it has spilled cells. */
export function refreshRulesOnSpills({ api, univer }: Grid, workbook: OpenWorkbook): void {
  const injector = univer.__getInjector();
  api.getFormula().calculationResultApplied(() => {
    const sheet = workbook.model.getActiveSheet();
    const [unitId, sheetId] = [sheet.getUnitId(), sheet.getSheetId()];
    if (!injector.get(FormulaDataModel).getArrayFormulaRange()[unitId]?.[sheetId]) return;
    const view = injector.get(ConditionalFormattingViewModel);
    for (const rule of injector.get(ConditionalFormattingRuleModel).getSubunitRules(unitId, sheetId) ?? []) {
      view.markRuleDirty(unitId, sheetId, rule.cfId);
    }
  });
}
