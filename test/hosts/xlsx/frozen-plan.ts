import { isCellError } from "../../../src/functions/frame/cell";
import type { CalculatedWorkbook } from "../../../src/hosts/calculated-workbook";
import { isFormula } from "../../../src/hosts/xlsx/cells";
import type { CellPlan, FormulaPlan, SheetPlan, WorkbookPlan } from "../../../src/workbook/plan";

/** The same workbook with the formulas that another spreadsheet program cannot work out replaced by what they showed. */
export function frozenPlan(
  plan: WorkbookPlan,
  values: CalculatedWorkbook,
  freezes: (formula: string) => boolean,
): WorkbookPlan {
  return { ...plan, sheets: plan.sheets.map((sheet) => frozenSheet(sheet, values, freezes)) };
}

function frozenSheet(sheet: SheetPlan, values: CalculatedWorkbook, freezes: (formula: string) => boolean): SheetPlan {
  const spilled = new Set<string>();
  for (const { row, column, content } of sheet.cells) {
    if (isFormula(content) && freezes(content.formula)) addArea(spilled, row, column, content);
  }
  return { ...sheet, cells: sheet.cells.map((cell) => (spilled.has(keyOf(cell)) ? shown(sheet, cell, values) : cell)) };
}

function addArea(area: Set<string>, top: number, left: number, { spill }: FormulaPlan): void {
  for (let row = top; row < top + (spill?.rows ?? 1); row++) {
    for (let column = left; column < left + (spill?.columns ?? 1); column++) area.add(keyOf({ row, column }));
  }
}

function shown(sheet: SheetPlan, cell: CellPlan, values: CalculatedWorkbook): CellPlan {
  const value = values.valueAt(sheet.name, cell.row, cell.column);
  const { row, column, style, format } = cell;
  return {
    row,
    column,
    style,
    ...(format === undefined ? {} : { format }),
    ...(value === undefined ? {} : { content: isCellError(value) ? value.code : value }),
  };
}

function keyOf({ row, column }: { row: number; column: number }): string {
  return `${row},${column}`;
}
