import type { CellPlan, SheetPlan, TablePlan } from "../../workbook/plan";
import { parseAddress } from "../address";
import { isFormula, keyOf } from "./cells";
import { formulaTokens, isCall } from "./formulas/formula-tokens";
import { maySpill } from "./formulas/spills";
import { storedFormula, withoutEquals } from "./formulas/stored-formula";

const fixedCell = /^\$[A-Z]{1,3}\$\d{1,7}$/i;

/** A table as its part in the file describes it. */
export interface TableFacts {
  readonly plan: TablePlan;
  readonly columns: readonly TableColumnFacts[];
}

export interface TableColumnFacts {
  readonly name: string;
  /** The one formula that stands in every row of the column: a new row gets it by itself. */
  readonly rowFormula?: StoredFormula;
  /** What the totals row holds under this column. */
  readonly total?: StoredFormula | string;
}

export interface StoredFormula {
  readonly stored: string;
  readonly maySpill: boolean;
}

/** Reads the columns of a table from the cells it covers. */
export function tableFacts(sheet: SheetPlan, plan: TablePlan, rangeNames: ReadonlySet<string>): TableFacts {
  const { top, left, bottom, right } = plan.area;
  const cellAt = new Map(sheet.cells.map((cell) => [keyOf(cell), cell]));
  const lastRow = plan.totals ? bottom - 1 : bottom;
  const columns: TableColumnFacts[] = [];
  for (let column = left; column <= right; column++) {
    const name = cellAt.get(keyOf({ row: top, column }))?.content;
    if (typeof name !== "string")
      throw new Error(`Table ${plan.name} has a column without a heading in ${sheet.name}.`);
    const rows = range(top + 1, lastRow).map((row) => cellAt.get(keyOf({ row, column })));
    const rowFormula = sharedFormula(rows, rangeNames);
    const total = plan.totals ? totalOf(cellAt.get(keyOf({ row: bottom, column })), rangeNames) : undefined;
    columns.push({ name, ...(rowFormula ? { rowFormula } : {}), ...(total ? { total } : {}) });
  }
  return { plan, columns };
}

function sharedFormula(rows: readonly (CellPlan | undefined)[], names: ReadonlySet<string>): StoredFormula | undefined {
  const formulas = new Set(rows.map(formulaText));
  const [only] = formulas;
  return formulas.size === 1 && only !== undefined && !hasMovingCell(only) ? storedOf(only, names) : undefined;
}

function totalOf(cell: CellPlan | undefined, names: ReadonlySet<string>): StoredFormula | string | undefined {
  const formula = formulaText(cell);
  if (formula !== undefined) return storedOf(formula, names);
  return typeof cell?.content === "string" ? cell.content : undefined;
}

function formulaText(cell: CellPlan | undefined): string | undefined {
  return isFormula(cell?.content) ? cell.content.formula : undefined;
}

function storedOf(typed: string, names: ReadonlySet<string>): StoredFormula {
  return { stored: storedFormula(typed), maySpill: maySpill(typed, names) };
}

/** The same text with a reference such as B7 in it means something else on every row. */
function hasMovingCell(formula: string): boolean {
  const tokens = formulaTokens(withoutEquals(formula));
  return tokens.some(
    ({ kind, text }, index) =>
      kind === "name" && parseAddress(text) !== undefined && !fixedCell.test(text) && !isCall(tokens, index),
  );
}

function range(first: number, last: number): number[] {
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => first + index);
}
