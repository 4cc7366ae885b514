import type { NameReading, SheetReading, TableReading, WorkbookReading } from "../../../workbook/findings";
import type { Area } from "../../../workbook/plan";
import { areaAddress, parseSheetAddress } from "../../address";
import { areaFrom, sizeOf } from "../../../workbook/area";
import type { HostValue } from "../../port";
import { withBlanks } from "./read-range";
import { runExcel } from "../run-excel";

/** Excel on the web hands over 5 MB at most; this many cells of long formulas and their values stay below. */
const mostCellsAtOnce = 20_000;

/** More cells than this are not looked through: a pane has to answer while one waits. */
const mostCellsInAll = 400_000;

interface UsedSheet {
  readonly name: string;
  readonly area: Area;
}

interface Part extends UsedSheet {
  readonly range: Excel.Range;
}

/** Reads the open workbook: a request for its parts, one for their sizes, and one for every 20,000 cells. */
export function readSheets(): Promise<WorkbookReading> {
  return runExcel(async (context) => {
    const { worksheets, names, tables } = context.workbook;
    worksheets.load("items/name,items/visibility");
    names.load("items/name,items/type,items/value");
    tables.load("items/name,items/showTotals");
    await context.sync();
    const visible = worksheets.items.filter(({ visibility }) => visibility === Excel.SheetVisibility.visible);
    const used = visible.map((sheet) => ({ name: sheet.name, range: sheet.getUsedRangeOrNullObject(true) }));
    for (const { range } of used) range.load("rowIndex,columnIndex,rowCount,columnCount");
    const placed = tables.items.map((table) => ({ table, range: table.getRange() }));
    for (const { range } of placed) range.load("address");
    await context.sync();
    const { sheets, cutShort } = withinLimit(used.flatMap(usedSheet));
    const parts = await readParts(context, sheets.flatMap(partsOf));
    const places = placed.flatMap(({ table, range }) => tableReading(table, range.address));
    return { sheets: sheets.map((sheet) => sheetReading(sheet, parts, places)), names: nameReadings(names), cutShort };
  });
}

function usedSheet({ name, range }: { name: string; range: Excel.Range }): UsedSheet[] {
  if (range.isNullObject) return [];
  const { rowIndex: row, columnIndex: column, rowCount: rows, columnCount: columns } = range;
  return [{ name, area: areaFrom({ row, column }, { rows, columns }) }];
}

/** Sheets as far as they fit into what is looked through. */
function withinLimit(used: readonly UsedSheet[]): { sheets: UsedSheet[]; cutShort: string[] } {
  let left = mostCellsInAll;
  const cutShort: string[] = [];
  const sheets = used.map(({ name, area }) => {
    const { rows: used, columns } = sizeOf(area);
    const rows = Math.min(used, Math.max(1, Math.floor(left / columns)));
    left -= rows * columns;
    if (rows < used) cutShort.push(name);
    return { name, area: { ...area, bottom: area.top + rows - 1 } };
  });
  return { sheets, cutShort };
}

/** Bands of rows, each small enough to be handed over. */
function partsOf({ name, area }: UsedSheet): UsedSheet[] {
  const rows = Math.max(1, Math.floor(mostCellsAtOnce / sizeOf(area).columns));
  const parts: UsedSheet[] = [];
  for (let top = area.top; top <= area.bottom; top += rows) {
    parts.push({ name, area: { ...area, top, bottom: Math.min(area.bottom, top + rows - 1) } });
  }
  return parts;
}

/** Fills a request with parts, sends it, and goes on with the rest. */
async function readParts(context: Excel.RequestContext, parts: readonly UsedSheet[]): Promise<Part[]> {
  const count = fitting(parts);
  if (count === 0) return [];
  const read = parts.slice(0, count).map((part) => {
    const range = context.workbook.worksheets.getItem(part.name).getRange(areaAddress(part.area));
    range.load("formulas,values");
    return { ...part, range };
  });
  await context.sync();
  return [...read, ...(await readParts(context, parts.slice(count)))];
}

/** How many of the first parts one request can bring. */
function fitting(parts: readonly UsedSheet[]): number {
  let cells = 0;
  const over = parts.findIndex(({ area }) => {
    const { rows, columns } = sizeOf(area);
    cells += rows * columns;
    return cells > mostCellsAtOnce;
  });
  return over < 0 ? parts.length : Math.max(1, over);
}

function sheetReading({ name, area }: UsedSheet, parts: readonly Part[], places: readonly PlacedTable[]): SheetReading {
  const own = parts.filter((part) => part.name === name);
  const formulas: (string | number | boolean)[][] = own.flatMap(({ range }) => range.formulas);
  const values: HostValue[][] = own.flatMap(({ range }) => range.values);
  return {
    name,
    top: area.top,
    left: area.left,
    formulas,
    values: values.map((row, index) => withBlanks(row, formulas[index])),
    tables: places.filter(({ sheet }) => sheet === name),
    // Excel keeps the sentence behind an error to itself.
    messages: new Map(),
  };
}

type PlacedTable = TableReading & { readonly sheet: string };

function tableReading({ name, showTotals }: Excel.Table, address: string): PlacedTable[] {
  const place = parseSheetAddress(address);
  return place ? [{ name, ...place, totals: showTotals }] : [];
}

/** Names of cells; what else a name may stand for is passed over. */
function nameReadings(names: Excel.NamedItemCollection): NameReading[] {
  return names.items.flatMap(({ name, type, value }): NameReading[] => {
    const place = type === Excel.NamedItemType.range ? parseSheetAddress(String(value)) : undefined;
    return place ? [{ name, ...place }] : [];
  });
}
