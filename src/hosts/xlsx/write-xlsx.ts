import { writeXlsx as writeBook, type WriteSheet } from "hucre/xlsx";
import type { SheetPlan, WorkbookPlan } from "../../workbook/plan";
import { fontFamily } from "../../workbook/styles";
import type { CalculatedWorkbook } from "../calculated-workbook";
import { sheetCells } from "./cells";
import { chartReader, finishedChart } from "./parts/chart-part";
import { withDataBars } from "./parts/data-bars";
import { noteDrawing } from "./parts/note-drawing";
import { changePart, packParts, readParts, type PackageParts } from "./parts/package-parts";
import { writeSheet } from "./sheets";
import { addInFunctionsIn } from "./formulas/stored-formula";
import { withColumnFormulas } from "./parts/table-part";
import { tableFacts, type TableFacts } from "./tables";
import { addWebExtension, type AddIn } from "./parts/web-extension";
import { namesOfRanges, workbookNames } from "./workbook-names";
import { settleWorkbook } from "./parts/workbook-part";
import { withErrorsApart } from "./parts/worksheet-part";

export interface XlsxOptions {
  /** Locks computed cells, without a password. */
  readonly protect?: boolean;
  /** Named in the file so that a spreadsheet knows where the functions come from. */
  readonly addIn?: AddIn;
}

interface Draft {
  readonly plan: SheetPlan;
  readonly tables: readonly TableFacts[];
  readonly written: WriteSheet;
}

/**
 * A workbook as the bytes of an .xlsx file, with what every formula showed when it was calculated. The same plan and
 * values give the same bytes. Runs in Node and in the browser.
 *
 *   plan  ->  sheets, cells and names in the writer's words  ->  its file  ->  parts it cannot write itself  ->  bytes
 */
export async function writeXlsx(
  plan: WorkbookPlan,
  values: CalculatedWorkbook,
  { protect = false, addIn }: XlsxOptions = {},
): Promise<Uint8Array> {
  const names = namesOfRanges(plan);
  const drafts = plan.sheets.map((sheet): Draft => {
    const tables = sheet.tables.map((table) => tableFacts(sheet, table, names));
    return { plan: sheet, tables, written: writeSheet(sheet, sheetCells(sheet, values, names), tables, protect) };
  });
  const file = await writeBook({
    sheets: drafts.map(({ written }) => written),
    properties: { title: plan.title, creator: "Loamsheet" },
    namedRanges: workbookNames(plan),
    defaultFont: { name: fontFamily, size: 11 },
  });
  const parts = readParts(file);
  finishParts(parts, plan, drafts, values);
  if (addIn) addWebExtension(parts, addIn, addInFunctions(drafts));
  return packParts(parts);
}

/** The writer below numbers sheets, tables and charts through the workbook, from 1, in the order of the plan. */
function finishParts(
  parts: PackageParts,
  plan: WorkbookPlan,
  drafts: readonly Draft[],
  values: CalculatedWorkbook,
): void {
  settleWorkbook(parts);
  drafts.forEach(({ plan: sheet }, index) => {
    changePart(parts, `xl/worksheets/sheet${index + 1}.xml`, (xml) =>
      withDataBars(withErrorsApart(xml, sheet, values), sheet, index),
    );
    if (sheet.notes.length > 0) parts.set(`xl/drawings/vmlDrawing${index + 1}.vml`, noteDrawing(sheet, index));
  });
  drafts
    .flatMap(({ tables }) => tables)
    .forEach((table, index) => {
      changePart(parts, `xl/tables/table${index + 1}.xml`, (xml) => withColumnFormulas(xml, table));
    });
  const read = chartReader(plan, values);
  plan.sheets
    .flatMap(({ charts }) => charts)
    .forEach((chart, index) => {
      changePart(parts, `xl/charts/chart${index + 1}.xml`, (xml) => finishedChart(xml, chart, read));
    });
}

function addInFunctions(drafts: readonly Draft[]): string[] {
  const formulas = drafts.flatMap(({ written }) => [...(written.cells?.values() ?? [])].map(({ formula }) => formula));
  return [...new Set(formulas.flatMap((formula) => (formula ? addInFunctionsIn(formula) : [])))].sort();
}
