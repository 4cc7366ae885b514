import { allFunctions } from "../functions";
import { checkPlan } from "./check/check-plan";
import { layout } from "./layout/layout";
import type { WorkbookModel } from "./model/workbook-model";
import { chooseNames } from "./names/choose-names";
import type { WorkbookPlan } from "./plan";
import type { TakenNames } from "./taken-names";
import { resolverFor } from "./write/resolver";
import { writeSheet } from "./write/write-sheet";

/**
 * From a model to what the writers receive.
 *
 *   model ──▶ names ──▶ layout ──▶ write ──▶ check ──▶ plan
 *   sheets,   final     every      keys      overlaps,
 *   tables,   names     block      become    references,
 *   formulas  around    gets its   addresses LOAM calls,
 *   by key    those     rows and   and cell  names, sizes
 *             taken     columns    styles
 *
 * Every phase is pure and knows only the one before it.
 */
export function planWorkbook(model: WorkbookModel, taken: TakenNames): WorkbookPlan {
  const names = chooseNames(model, taken);
  const sheets = layout(model, names);
  const resolver = resolverFor(sheets, names);
  const plan: WorkbookPlan = {
    starter: model.starter,
    title: model.title,
    sheets: sheets.map((sheet) => writeSheet(sheet, { names, resolver, workbookTitle: model.title })),
    names: sheets.flatMap(({ model: { key }, content }) =>
      content.names.map((named) => ({
        ...named,
        name: names.names.get(named.name) ?? named.name,
        sheet: names.sheets.get(key) ?? key,
      })),
    ),
  };
  const problems = checkPlan(plan, allFunctions, taken.sheets);
  if (problems.length > 0) throw new Error(`This model does not hold together:\n${problems.join("\n")}`);
  return plan;
}
