import { BooleanNumber, type ICellData, type IWorkbookData, type Nullable, type Worksheet } from "@univerjs/core";
import type { CellPlan, NamePlan, SheetPlan, WorkbookPlan } from "../../../workbook/plan";
import { parseSheetAddress } from "../../address";
import { columnCharacters, pointsOf } from "../../cell-sizes";
import { namesPlugin } from "../../engine/name-and-table-resources";
import type { CellReader } from "../../engine/read-cells";
import type { OpenWorkbook } from "../open-workbook";
import { withSheets } from "../charts/chart-moves";
import { memoryOf, type PageMemory } from "./page-memory";
import { plannedCell } from "./planned-cell";
import { notesOf, rulesOf, tablesOf, validationsOf, type SheetResources } from "./plan-from-resources";
import { parsed } from "./workbook-parts";
import { hostWords } from "../../words";

/**
 * The workbook as it stands, as a plan again: what the person typed, added, moved or took away included. Looks that
 * the person gave a cell by hand are not kept; its number format is.
 */
export function currentPlan(workbook: OpenWorkbook, reader: CellReader): WorkbookPlan {
  const data = workbook.snapshot();
  const memory = memoryOf(data);
  const resources = new Map((data.resources ?? []).map((resource) => [resource.name, parsed(resource) ?? {}]));
  const sheets = workbook.model.getSheets().map((sheet) => sheetPlan(sheet, data, memory, resources, reader));
  return {
    starter: memory.starter,
    title: memory.title || hostWords.files.untitled,
    sheets,
    names: Object.values(resources.get(namesPlugin) ?? {}).flatMap(namePlan),
  };
}

function sheetPlan(
  sheet: Worksheet,
  data: IWorkbookData,
  memory: PageMemory,
  resources: SheetResources,
  reader: CellReader,
): SheetPlan {
  const id = sheet.getSheetId();
  const kept = memory.sheets[id];
  const tabColor = sheet.getTabColor();
  const freeze = sheet.getFreeze();
  return {
    name: sheet.getName(),
    ...(typeof tabColor === "string" && /^#[0-9a-f]{6}$/i.test(tabColor) && { tabColor }),
    columnWidths: widthsOf(sheet),
    rowHeights: heightsOf(sheet),
    cells: cellsOf(sheet, data, reader),
    ...((freeze.xSplit > 0 || freeze.ySplit > 0) && { freeze: { rows: freeze.ySplit, columns: freeze.xSplit } }),
    tables: tablesOf(resources, id),
    validations: validationsOf(resources, id),
    rules: rulesOf(resources, id),
    charts: (kept?.charts ?? []).map((chart) => withSheets(chart, (id) => data.sheets[id]?.name ?? id)),
    notes: notesOf(resources, id),
    print: kept?.print ?? { orientation: "landscape", fit: { wide: 1, tall: 0 }, footer: "Page &P of &N" },
  };
}

function cellsOf(sheet: Worksheet, data: IWorkbookData, reader: CellReader): CellPlan[] {
  const cells: CellPlan[] = [];
  sheet.getCellMatrix().forValue((row, column, cell) => {
    const content = contentOf(sheet, row, column, reader);
    const { look, link } = plannedCell(cell);
    if (content === undefined && look === undefined) return;
    const format = formatOf(cell, data);
    cells.push({
      row,
      column,
      style: look ?? "body",
      ...(content !== undefined && { content }),
      ...(format !== undefined && { format }),
      ...(link !== undefined && { link }),
    });
  });
  return cells;
}

function contentOf(sheet: Worksheet, row: number, column: number, reader: CellReader): CellPlan["content"] {
  const formula = reader.formulaAt(sheet, row, column);
  if (formula !== undefined) {
    const spill = reader.spillAt(sheet, row, column);
    return { formula, ...(spill && { spill }) };
  }
  if (reader.isSpilled(sheet, row, column)) return undefined;
  const value = reader.valueAt(sheet, row, column);
  // Text that reads like an error code is typed text here: nothing calculates this cell.
  return typeof value === "object" ? value.code : value;
}

function formatOf(cell: Nullable<ICellData>, data: IWorkbookData): string | undefined {
  const style = typeof cell?.s === "string" ? data.styles[cell.s] : cell?.s;
  return style?.n?.pattern;
}

function widthsOf(sheet: Worksheet): number[] {
  const { columnData = {}, defaultColumnWidth } = sheet.getConfig();
  const columns = Object.keys(columnData).map(Number);
  const count = columns.length === 0 ? 0 : Math.max(...columns) + 1;
  return Array.from({ length: count }, (_, column) => columnCharacters(columnData[column]?.w ?? defaultColumnWidth));
}

/** Heights that were set; rows that fit their text stay free to do so. */
function heightsOf(sheet: Worksheet): Record<number, number> {
  const heights: Record<number, number> = {};
  for (const [row, facts] of Object.entries(sheet.getConfig().rowData)) {
    if (facts?.h && facts.ia !== BooleanNumber.TRUE) heights[Number(row)] = pointsOf(facts.h);
  }
  return heights;
}

/** Names of cells; names that stand for a calculation have no place in a plan. */
function namePlan(entry: unknown): NamePlan[] {
  const { name, formulaOrRefString, comment } = { name: "", formulaOrRefString: "", comment: "", ...Object(entry) };
  const place = parseSheetAddress(String(formulaOrRefString));
  return place ? [{ name: String(name), ...place, says: String(comment) }] : [];
}
