import type { Area, SheetPlan, TablePlan, WorkbookPlan } from "../../../workbook/plan";
import { cellLooks, fontFamily } from "../../../workbook/styles";
import { areaAddress } from "../../address";
import type { Requests } from "./requests";
import { writtenOf, type Written } from "../written-content";

/**
 * Adds the sheets with their tables, and the workbook's names: what formulas refer to has to be there before them.
 * A table's totals row is added while nothing stands below it, because Excel pushes down what does.
 */
export async function writeSheets(plan: WorkbookPlan, requests: Requests): Promise<void> {
  for (const sheet of plan.sheets) {
    await requests.makeRoom({ steps: 12 + 12 * sheet.tables.length });
    addSheet(sheet, requests.context);
  }
  for (const { name, sheet, area, says } of plan.names) {
    await requests.makeRoom({ steps: 3 });
    requests.context.workbook.names.add(name, requests.sheet(sheet).getRange(areaAddress(area)), says);
  }
}

function addSheet(plan: SheetPlan, context: Excel.RequestContext): void {
  const sheet = context.workbook.worksheets.add(plan.name);
  if (plan.tabColor !== undefined) sheet.tabColor = plan.tabColor;
  sheet.showGridlines = false;
  const { format } = sheet.getRange();
  format.font.name = fontFamily;
  format.font.size = cellLooks.body.size;
  format.font.color = cellLooks.body.color;
  format.verticalAlignment = "Center";
  for (const table of plan.tables) addTable(table, plan, sheet);
}

function addTable({ name, area, totals }: TablePlan, plan: SheetPlan, sheet: Excel.Worksheet): void {
  const heads = { ...area, bottom: area.top };
  sheet.getRange(areaAddress(heads)).formulas = [rowOf(plan, heads)];
  const table = sheet.tables.add(areaAddress({ ...area, bottom: totals ? area.bottom - 1 : area.bottom }), true);
  table.name = name;
  table.style = "TableStyleLight1";
  table.showBandedRows = false;
  if (totals) table.showTotals = true;
}

/** What stands in the row of an area; null where nothing does. */
function rowOf({ cells }: SheetPlan, { top, left, right }: Area): (Written | null)[] {
  const row = new Array<Written | null>(right - left + 1).fill(null);
  for (const cell of cells) {
    if (cell.row !== top || cell.column < left || cell.column > right || cell.content === undefined) continue;
    row[cell.column - left] = writtenOf(cell.content);
  }
  return row;
}
