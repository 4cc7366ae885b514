import {
  BooleanNumber,
  CellValueType,
  LocaleType,
  type ICellData,
  type IFreeze,
  type IResources,
  type IWorkbookData,
  type IWorksheetData,
} from "@univerjs/core";
import type { CellPlan, SheetPlan, StyleName, WorkbookPlan } from "../../workbook/plan";
import { columnPixels, pixelsOf } from "../cell-sizes";
import { formatOf } from "../text-format";
import { styleData, styleKey } from "./cell-styles";
import { namesResource, tablesResource } from "./name-and-table-resources";

/** Room kept free below and right of what a plan fills, for results that grow and for the person's own notes. */
export interface SheetRoom {
  readonly rows: number;
  readonly columns: number;
  readonly atLeastRows: number;
  readonly atLeastColumns: number;
}

export interface WorkbookIds {
  readonly workbook: string;
  /** One id a sheet, in the order of the plan. */
  readonly sheets: readonly string[];
}

/** A plan as the engine's own workbook: cells, looks, sizes, names and tables. */
export function workbookData(plan: WorkbookPlan, ids: WorkbookIds, room: SheetRoom): IWorkbookData {
  const sheets = plan.sheets.map((sheet, index) => sheetData(sheet, idOf(ids, index), room));
  return {
    id: ids.workbook,
    name: plan.title,
    appVersion: "",
    locale: LocaleType.EN_US,
    styles: stylesOf(plan),
    sheetOrder: plan.sheets.map((_, index) => idOf(ids, index)),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id, sheet])),
    resources: resourcesOf(plan, ids),
  };
}

function resourcesOf(plan: WorkbookPlan, ids: WorkbookIds): IResources {
  return [namesResource(plan), tablesResource(plan, ids.sheets)];
}

function idOf(ids: WorkbookIds, index: number): string {
  return ids.sheets[index] ?? `${ids.workbook}-${index}`;
}

function stylesOf(plan: WorkbookPlan): IWorkbookData["styles"] {
  const styles: IWorkbookData["styles"] = {};
  for (const sheet of plan.sheets) {
    for (const cell of sheet.cells) {
      const format = formatOf(cell);
      styles[styleKey(cell.style, format)] ??= styleData(cell.style, format);
    }
  }
  return styles;
}

function sheetData(sheet: SheetPlan, id: string, room: SheetRoom): Partial<IWorksheetData> & { id: string } {
  const lastRow = sheet.cells.reduce((last, cell) => Math.max(last, cell.row), 0);
  const lastColumn = sheet.cells.reduce((last, cell) => Math.max(last, cell.column), sheet.columnWidths.length - 1);
  return {
    id,
    name: sheet.name,
    rowCount: Math.max(lastRow + 1 + room.rows, room.atLeastRows),
    columnCount: Math.max(lastColumn + 1 + room.columns, room.atLeastColumns),
    cellData: cellDataOf(sheet.cells),
    columnData: Object.fromEntries(
      sheet.columnWidths.map((width, column) => [column, { w: Math.round(columnPixels(width)) }]),
    ),
    rowData: Object.fromEntries(
      Object.entries(sheet.rowHeights).map(([row, points]) => {
        const height = Math.round(pixelsOf(points));
        return [row, { h: height, ia: BooleanNumber.FALSE, ah: height }];
      }),
    ),
    showGridlines: BooleanNumber.FALSE,
    ...(sheet.tabColor !== undefined && { tabColor: sheet.tabColor }),
    ...(sheet.freeze && { freeze: freezeOf(sheet.freeze) }),
  };
}

function cellDataOf(cells: readonly CellPlan[]): IWorksheetData["cellData"] {
  const rows: Record<number, Record<number, ICellData>> = {};
  for (const cell of cells) {
    const row = (rows[cell.row] ??= {});
    row[cell.column] = {
      ...contentData(cell.content),
      s: styleKey(cell.style, formatOf(cell)),
      custom: { ...planned(cell) },
    };
  }
  return rows;
}

/** What stays with a cell when rows move or a person changes its looks. */
export interface PlannedCell {
  readonly look: StyleName;
  /** Sheet that a click leads to. */
  readonly link?: string;
}

function planned({ style, link }: CellPlan): PlannedCell {
  return { look: style, ...(link !== undefined && { link }) };
}

/** What a cell holds, in the engine's terms; text stays text even where it looks like a number. */
function contentData(content: CellPlan["content"]): ICellData {
  if (content === undefined) return {};
  if (typeof content === "number") return { v: content, t: CellValueType.NUMBER };
  if (typeof content === "boolean") return { v: content ? 1 : 0, t: CellValueType.BOOLEAN };
  if (typeof content === "string") return { v: content, t: CellValueType.STRING };
  return { f: content.formula };
}

function freezeOf({ rows, columns }: { readonly rows: number; readonly columns: number }): IFreeze {
  return {
    xSplit: columns,
    ySplit: rows,
    startRow: rows > 0 ? rows : -1,
    startColumn: columns > 0 ? columns : -1,
  };
}
