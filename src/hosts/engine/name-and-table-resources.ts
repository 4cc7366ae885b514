import type { IResources } from "@univerjs/core";
import type { NamePlan, SheetPlan, TablePlan, WorkbookPlan } from "../../workbook/plan";
import { absoluteAddress } from "../address";
import { rangeOf } from "./ranges";
import { listed, sheetResource } from "./sheet-resource";

type Resource = IResources[number];

export const namesPlugin = "SHEET_DEFINED_NAME_PLUGIN";
export const tablesPlugin = "SHEET_TABLE_PLUGIN";

/** Defined names of a plan, as the engine stores them in a workbook. */
export function namesResource(plan: Pick<WorkbookPlan, "names">): Resource {
  const names = plan.names.map((name) => [nameId(name), nameData(name)]);
  return { name: namesPlugin, data: JSON.stringify(Object.fromEntries(names)) };
}

function nameId({ name }: NamePlan): string {
  return `name-${name}`;
}

function nameData(name: NamePlan) {
  return {
    id: nameId(name),
    name: name.name,
    formulaOrRefString: absoluteAddress(name.sheet, name.area),
    comment: name.says,
    localSheetId: "AllDefaultWorkbook",
  };
}

/** Tables of a plan, as the engine stores them in a workbook. */
export function tablesResource(plan: Pick<WorkbookPlan, "sheets">, sheetIds: readonly string[]): Resource {
  return sheetResource(tablesPlugin, plan.sheets, sheetIds, (sheet) => {
    const tables = listed(sheet.tables, (table) => tableData(table, sheet));
    return tables && { tables, tableFilteredOutRows: [] };
  });
}

/** The look that keeps a table as the plan coloured it, and its id in the page's grid. */
export const tableLook = "loam-plain";

function tableData(table: TablePlan, sheet: SheetPlan) {
  return {
    id: `table-${table.name}`,
    name: table.name,
    range: tableRange(table),
    options: { showHeader: true, showFooter: false, tableStyleId: tableLook },
    filters: { tableColumnFilterList: [], tableSortInfo: {} },
    columns: headersOf(table, sheet).map((header, index) => ({
      id: `${table.name}-${index}`,
      displayName: header,
      dataType: "string",
      formula: "",
      meta: {},
      style: {},
    })),
    meta: { totals: table.totals },
  };
}

/** The engine knows no totals row: left inside the table, it would be added to itself. */
function tableRange({ area, totals }: TablePlan): object {
  return rangeOf(totals ? { ...area, bottom: area.bottom - 1 } : area);
}

function headersOf({ area }: TablePlan, sheet: SheetPlan): string[] {
  const texts = new Map(
    sheet.cells.filter((cell) => cell.row === area.top).map((cell) => [cell.column, String(cell.content ?? "")]),
  );
  const headers: string[] = [];
  for (let column = area.left; column <= area.right; column++) headers.push(texts.get(column) ?? "");
  return headers;
}
