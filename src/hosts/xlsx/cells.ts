import type { Cell } from "hucre/xlsx";
import { isCellError } from "../../functions/frame/cell";
import type { CellPlan, FormulaPlan, SheetPlan } from "../../workbook/plan";
import type { CalculatedValue, CalculatedWorkbook } from "../calculated-workbook";
import { cellStyle } from "./cell-styles";
import { areaAddress, quotedSheet } from "../address";
import { areaFrom, cellsOf, type CellAt } from "../../workbook/area";
import { cellText } from "./parts/package-parts";
import { maySpill } from "./formulas/spills";
import { storedFormula } from "./formulas/stored-formula";

export type CellMap = Map<string, Partial<Cell>>;

/** The cells of a sheet with what each of them showed when it was last calculated. */
export function sheetCells(sheet: SheetPlan, values: CalculatedWorkbook, rangeNames: ReadonlySet<string>): CellMap {
  const cells: CellMap = new Map();
  for (const cell of sheet.cells) cells.set(keyOf(cell), oneCell(sheet, cell, values, rangeNames));
  for (const cell of sheet.cells) {
    if (isFormula(cell.content)) addSpilled(cells, sheet.name, cell, cell.content, values);
  }
  return cells;
}

export function isFormula(content: CellPlan["content"]): content is FormulaPlan {
  return typeof content === "object";
}

/** The key of a cell in a CellMap. */
export function keyOf({ row, column }: CellAt): string {
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
    formulaRef: areaAddress(areaFrom(cell, content.spill)),
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
  { spill }: FormulaPlan,
  values: CalculatedWorkbook,
): void {
  const [, ...others] = cellsOf(areaFrom(origin, spill));
  for (const cell of others) {
    const value = cachedValue(values.valueAt(sheet, cell.row, cell.column));
    if (value === undefined) continue;
    cells.set(keyOf(cell), { style: cellStyle(origin), ...cells.get(keyOf(cell)), value });
  }
}

function cachedValue(value: CalculatedValue | undefined): number | string | boolean | undefined {
  return isCellError(value) ? value.code : stored(value);
}

function stored<Value>(value: Value): Value | string {
  return typeof value === "string" ? cellText(value) : value;
}
