import { isCellError } from "../../../src/functions/frame/cell";
import type { CalculatedWorkbook } from "../../../src/hosts/calculated-workbook";
import type { SheetPlan, WorkbookPlan } from "../../../src/workbook/plan";
import {
  cellKey,
  type CellContent,
  type SheetReading,
  type ShownValue,
  type WorkbookReading,
} from "../../../src/workbook/findings";

/** A calculated plan as a host would read it. */
export function readingOfPlan(plan: WorkbookPlan, values: CalculatedWorkbook): WorkbookReading {
  return {
    sheets: plan.sheets.map((sheet) => readSheet(sheet, values)),
    names: plan.names.map(({ name, sheet, area }) => ({ name, sheet, area })),
    cutShort: [],
  };
}

function readSheet({ name, cells, tables }: SheetPlan, calculated: CalculatedWorkbook): SheetReading {
  const bottom = Math.max(...cells.map(({ row }) => row));
  const right = Math.max(...cells.map(({ column }) => column));
  const messages = new Map<string, string>();
  const formulas: CellContent[][] = [];
  const values: ShownValue[][] = [];
  const contents = new Map(cells.map(({ row, column, content }) => [cellKey(row, column), content]));
  for (let row = 0; row <= bottom; row++) {
    const columns = Array.from({ length: right + 1 }, (_, column) => column);
    formulas.push(columns.map((column) => contentOf(contents.get(cellKey(row, column)))));
    values.push(
      columns.map((column) => {
        const shown = calculated.valueAt(name, row, column);
        if (!isCellError(shown)) return shown ?? null;
        if (shown.message !== undefined) messages.set(cellKey(row, column), shown.message);
        return shown.code;
      }),
    );
  }
  return { name, top: 0, left: 0, formulas, values, tables, messages };
}

function contentOf(content: SheetPlan["cells"][number]["content"]): CellContent {
  return typeof content === "object" ? content.formula : (content ?? "");
}
