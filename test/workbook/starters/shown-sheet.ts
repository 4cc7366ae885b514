import { isMeantForChart } from "../../../src/build/samples/problems";
import { allFunctions } from "../../../src/functions";
import { calculate } from "../../../src/hosts/engine";
import type { CalculatedValue, CalculatedWorkbook } from "../../../src/hosts/calculated-workbook";
import type { WorkbookPlan } from "../../../src/workbook/plan";
import { defaultChoices, starters, type StarterChoices } from "../../../src/workbook/starters";
import { makePlan } from "../../../src/workbook/starters/make-plan";
import { retyped } from "../retyped";

/** A calculated workbook, read the way a person finds a cell: by sheet, row and column heading. */
export interface ShownBook {
  readonly plan: WorkbookPlan;
  /** The cell in the row that starts with these words, under this heading. */
  inTable(sheet: string, row: string, heading: string): CalculatedValue | undefined;
  /** The value beside a label; further columns by number. */
  beside(sheet: string, label: string, column?: number): CalculatedValue | undefined;
  at(sheet: string, row: number, column: number): CalculatedValue | undefined;
  /** Every cell that shows an error not meant for a chart, as "Sheet!row,column code". */
  errors(): string[];
  /** All words that a sheet shows in its first column. */
  words(sheet: string): string[];
}

export function planOf(key: string, changes: Partial<StarterChoices> = {}): WorkbookPlan {
  const starter = starters.find((each) => each.key === key);
  if (!starter) throw new Error(`no starter ${key}`);
  return makePlan(starter, { ...defaultChoices, ...changes });
}

export async function show(plan: WorkbookPlan): Promise<ShownBook> {
  return shownBook(plan, await calculate(plan, allFunctions));
}

function shownBook(plan: WorkbookPlan, book: CalculatedWorkbook): ShownBook {
  const cellsOf = (name: string) => plan.sheets.find((sheet) => sheet.name === name)?.cells ?? [];
  const rowsOf = (name: string) => Math.max(...cellsOf(name).map(({ row }) => row)) + 1;
  const labelRow = (name: string, label: string) => {
    for (let row = 0; row < rowsOf(name); row++) if (book.valueAt(name, row, 0) === label) return row;
    throw new Error(`no row "${label}" on ${name}`);
  };
  return {
    plan,
    inTable(name, label, heading) {
      const head = cellsOf(name).find(({ style, content }) => style === "head" && content === heading);
      if (!head) throw new Error(`no heading "${heading}" on ${name}`);
      return book.valueAt(name, labelRow(name, label), head.column);
    },
    beside: (name, label, column = 1) => book.valueAt(name, labelRow(name, label), column),
    at: (name, row, column) => book.valueAt(name, row, column),
    errors: () =>
      plan.sheets.flatMap(({ name, cells }) =>
        cells.flatMap((cell) => {
          const { row, column } = cell;
          const value = book.valueAt(name, row, column);
          return typeof value === "object" && !isMeantForChart(cell) ? [`${name}!${row},${column} ${value.code}`] : [];
        }),
      ),
    words: (name) =>
      Array.from({ length: rowsOf(name) }, (_, row) => book.valueAt(name, row, 0)).filter(
        (value): value is string => typeof value === "string",
      ),
  };
}

/** A typed cell by its sheet, the words its row starts with and its heading. */
type Spot = readonly [sheet: string, row: string, heading: string];

/** The same plan with some typed cells emptied. */
export function emptied(plan: WorkbookPlan, holes: readonly Spot[]): WorkbookPlan {
  return typed(
    plan,
    holes.map((spot) => [spot, null] as const),
  );
}

/** The same plan with other values in some typed cells; null empties one. */
export function typed(
  plan: WorkbookPlan,
  changes: readonly (readonly [spot: Spot, value: string | number | null])[],
): WorkbookPlan {
  return changes.reduce((before, [[name, label, heading], value]) => {
    const cells = before.sheets.find((sheet) => sheet.name === name)?.cells ?? [];
    const row = cells.find(({ column, content }) => column === 0 && content === label)?.row;
    const column = cells.find(({ style, content }) => style === "head" && content === heading)?.column;
    if (row === undefined || column === undefined) throw new Error(`no cell for ${label}, ${heading}`);
    return retyped(before, name, { row, column }, value);
  }, plan);
}
