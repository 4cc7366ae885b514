import type { Cell } from "hucre/xlsx";
import { isCellError } from "../../functions/frame/cell";
import type { CellPlan, FormulaPlan, SheetPlan } from "../../workbook/plan";
import { columnLetters } from "../../workbook/write/address";
import type { CalculatedValue, CalculatedWorkbook } from "../calculated-workbook";
import { cellStyle } from "./cell-styles";
import { areaAddress, quotedSheet } from "../address";
import { cellText } from "./package-parts";
import { maySpill } from "./spills";
import { storedFormula } from "./stored-formula";

export type CellMap = Map<string, Partial<Cell>>;

/** The cells of a sheet with what each of them showed when it was last calculated. */
export function sheetCells(sheet: SheetPlan, values: CalculatedWorkbook, rangeNames: ReadonlySet<string>): CellMap {
  const cells: CellMap = new Map();
  for (const cell of sheet.cells) cells.set(keyOf(cell.row, cell.column), oneCell(sheet, cell, values, rangeNames));
  for (const cell of sheet.cells) {
    if (isFormula(cell.content)) addSpilled(cells, sheet.name, cell, cell.content, values);
  }
  return cells;
}

export function isFormula(content: CellPlan["content"]): content is FormulaPlan {
  return typeof content === "object";
}

/** "B7", rows and columns counted from 0. */
export function cellAddress(row: number, column: number): string {
  return `${columnLetters(column)}${row + 1}`;
}

export function keyOf(row: number, column: number): string {
  return `${row},${column}`;
}

function oneCell(
  sheet: SheetPlan,
  cell: CellPlan,
  values: CalculatedWorkbook,
  rangeNames: ReadonlySet<string>,
): Partial<Cell> {
  const { content } = cell;
  const look = { style: cellStyle(cell), ...linkTo(cell.link) };
  if (!isFormula(content)) return content === undefined ? look : { ...look, value: stored(content) };
  const cached = cachedValue(values.valueAt(sheet.name, cell.row, cell.column));
  const formula = {
    ...look,
    formula: storedFormula(content.formula),
    ...(cached === undefined ? {} : { formulaResult: cached }),
  };
  if (!content.spill && !maySpill(content.formula, rangeNames)) return formula;
  return {
    ...formula,
    formulaType: "array",
    formulaDynamic: true,
    formulaRef: areaAddress(spillArea(cell, content)),
  };
}

function linkTo(sheet: string | undefined): Partial<Cell> {
  return sheet === undefined ? {} : { hyperlink: { target: "", location: `${quotedSheet(sheet)}!A1` } };
}

/** Cells that a spilling formula fills hold plain values in the file; the formula stands in the first only. */
function addSpilled(
  cells: CellMap,
  sheet: string,
  origin: CellPlan,
  content: FormulaPlan,
  values: CalculatedWorkbook,
): void {
  const { top, left, bottom, right } = spillArea(origin, content);
  for (let row = top; row <= bottom; row++) {
    for (let column = left; column <= right; column++) {
      const value = cachedValue(values.valueAt(sheet, row, column));
      if ((row === top && column === left) || value === undefined) continue;
      cells.set(keyOf(row, column), { style: cellStyle(origin), ...cells.get(keyOf(row, column)), value });
    }
  }
}

function spillArea({ row, column }: CellPlan, { spill }: FormulaPlan) {
  return { top: row, left: column, bottom: row + (spill?.rows ?? 1) - 1, right: column + (spill?.columns ?? 1) - 1 };
}

function cachedValue(value: CalculatedValue | undefined): number | string | boolean | undefined {
  return isCellError(value) ? value.code : stored(value);
}

function stored<Value>(value: Value): Value | string {
  return typeof value === "string" ? cellText(value) : value;
}
