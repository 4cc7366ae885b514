import type { CellPlan, WorkbookPlan } from "../../../src/workbook/plan";
import { retyped } from "../retyped";
import type { ShownBook } from "./shown-sheet";

/** The heading of a table on a sheet. */
export function headOf(plan: WorkbookPlan, sheet: string, heading: string): CellPlan {
  const cells = plan.sheets.find(({ name }) => name === sheet)?.cells ?? [];
  const head = cells.find(({ style, content }) => style === "head" && content === heading);
  if (!head) throw new Error(`no heading "${heading}" on ${sheet}`);
  return head;
}

/** What stands below a heading in the row of a label; several tables of a sheet may name the same things. */
export function below(book: ShownBook, sheet: string, heading: string, label: string | number): unknown {
  const head = headOf(book.plan, sheet, heading);
  for (let row = head.row + 1; row <= head.row + 12; row++)
    if (book.at(sheet, row, 0) === label) return book.at(sheet, row, head.column);
  throw new Error(`no row "${label}" below ${heading}`);
}

/** The plan with another value beside a label. */
export function retypedBeside(plan: WorkbookPlan, sheet: string, label: string, value: string | number | null) {
  const cells = plan.sheets.find(({ name }) => name === sheet)?.cells ?? [];
  const line = cells.find(({ column, content }) => column === 0 && content === label);
  if (!line) throw new Error(`no line "${label}" on ${sheet}`);
  return retyped(plan, sheet, { row: line.row, column: 1 }, value);
}

/** The plan with another value so many rows below a heading. */
export function retypedBelow(
  plan: WorkbookPlan,
  sheet: string,
  heading: string,
  down: number,
  value: string | number | null,
): WorkbookPlan {
  const { row, column } = headOf(plan, sheet, heading);
  return retyped(plan, sheet, { row: row + down, column }, value);
}
