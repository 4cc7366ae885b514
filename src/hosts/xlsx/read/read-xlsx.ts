import { readXlsx as readBook, type Sheet, type Workbook } from "hucre/xlsx";
import { namespace } from "../../../functions/frame/formula-text";
import type { NamePlan, PrintPlan, SheetPlan, TablePlan, WorkbookPlan } from "../../../workbook/plan";
import { parseAddress, parseSheetAddress } from "../../address";
import { columnCharacters, digitPixels } from "../../cell-sizes";
import { HostError } from "../../port";
import { colorOf } from "../cell-styles";
import { readCells, readNotes } from "./read-cells";
import { readCharts } from "./read-charts";
import { readRules, readValidations } from "./read-rules";
import { damaged, refuseAtSight } from "./refuse-at-sight";
import { hostWords } from "../../words";

const say = hostWords.files;

/** What was read, and what of the file has no place in a plan. */
export interface ReadWorkbook {
  readonly plan: WorkbookPlan;
  /** In words: "merged cells", "pictures". */
  readonly leftOut: readonly string[];
}

/**
 * An .xlsx file of ours as a plan again, with everything typed and changed in it since, in a spreadsheet or here.
 * Numbers behind formulas are not taken over: they are calculated anew.
 *
 * @throws HostError with a sentence when the file cannot be read or is none of ours
 */
export async function readXlsx(bytes: Uint8Array): Promise<ReadWorkbook> {
  refuseAtSight(bytes);
  const { book, sheets } = await opened(bytes);
  if (!isOurs(book, sheets)) throw new HostError(say.notOurs, "NotOurs");
  return {
    plan: {
      starter: "",
      title: book.properties?.title ?? "Workbook",
      sheets,
      names: (book.namedRanges ?? []).flatMap(readName),
    },
    leftOut: leftOutOf(book.sheets),
  };
}

async function opened(bytes: Uint8Array): Promise<{ book: Workbook; sheets: SheetPlan[] }> {
  try {
    const book = await readBook(bytes, { readStyles: true });
    if (book.sheets.length > 0) return { book, sheets: book.sheets.map(readSheet) };
  } catch (cause) {
    throw damaged(cause);
  }
  throw damaged("no sheets");
}

function readSheet(sheet: Sheet): SheetPlan {
  const { view, freezePane } = sheet;
  const tab = view?.tabColor?.rgb;
  const rows = freezePane?.rows ?? 0;
  const columns = freezePane?.columns ?? 0;
  return {
    name: sheet.name,
    ...(tab !== undefined && { tabColor: colorOf(tab) }),
    columnWidths: (sheet.columns ?? []).map(({ width = 9 }) => columnCharacters(width * digitPixels)),
    rowHeights: Object.fromEntries(
      [...(sheet.rowDefs ?? [])].flatMap(([row, { height }]) => (height === undefined ? [] : [[row, height]])),
    ),
    cells: readCells(sheet),
    ...(rows + columns > 0 && { freeze: { rows, columns } }),
    tables: (sheet.tables ?? []).flatMap(readTable),
    validations: readValidations(sheet.dataValidations ?? []),
    rules: readRules(sheet.conditionalRules ?? []),
    charts: readCharts(sheet),
    notes: readNotes(sheet),
    print: readPrint(sheet),
  };
}

function readTable({ name, range, showTotalRow }: NonNullable<Sheet["tables"]>[number]): TablePlan[] {
  const area = range === undefined ? undefined : parseAddress(range)?.area;
  return area ? [{ name, area, totals: showTotalRow ?? false }] : [];
}

function readPrint({ pageSetup, headerFooter }: Sheet): PrintPlan {
  const [, first, last] = /^\$?(\d+):\$?(\d+)$/.exec(pageSetup?.printTitlesRow ?? "") ?? [];
  const area = pageSetup?.printArea === undefined ? undefined : parseAddress(pageSetup.printArea)?.area;
  return {
    orientation: pageSetup?.orientation ?? "portrait",
    fit: { wide: pageSetup?.fitToWidth ?? 1, tall: pageSetup?.fitToHeight ?? 0 },
    ...(first !== undefined &&
      last !== undefined && { repeatRows: { first: Number(first) - 1, last: Number(last) - 1 } }),
    ...(area && { area }),
    footer: headerFooter?.oddFooter ?? "",
  };
}

/** Names of cells in the whole workbook; what a spreadsheet keeps under names of its own is left to it. */
function readName({ name, range, comment, scope }: NonNullable<Workbook["namedRanges"]>[number]): NamePlan[] {
  const place = parseSheetAddress(range);
  if (!place || scope !== undefined || name.startsWith("_xl")) return [];
  return [{ name, ...place, says: comment ?? "" }];
}

const ownCall = new RegExp(`\\b${namespace}\\.`);

function isOurs({ properties }: Workbook, sheets: readonly SheetPlan[]): boolean {
  if (properties?.creator === "Loamsheet") return true;
  return sheets.some(({ cells }) =>
    cells.some(({ content }) => typeof content === "object" && ownCall.test(content.formula)),
  );
}

function leftOutOf(sheets: readonly Sheet[]): string[] {
  const has = (what: (sheet: Sheet) => readonly unknown[] | undefined) =>
    sheets.some((sheet) => (what(sheet)?.length ?? 0) > 0);
  return [
    ...(has(({ merges }) => merges) ? [say.leftOut.merges] : []),
    ...(has(({ images }) => images) ? [say.leftOut.images] : []),
    ...(has(({ textBoxes }) => textBoxes) ? [say.leftOut.textBoxes] : []),
    ...(has(({ pivotTables }) => pivotTables) ? [say.leftOut.pivotTables] : []),
  ];
}
