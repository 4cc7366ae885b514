import { isCellError, type CellError } from "../../functions/frame/cell";
import type { CalculatedWorkbook } from "../../hosts/calculated-workbook";
import { cellAddress, isFormula } from "../../hosts/xlsx/cells";
import type { CellPlan, SheetPlan, WorkbookPlan } from "../../workbook/plan";

/** A cell of ours that waits for an input shows #N/A and says so; the workbook means it to. */
const waiting = /^waiting for /;

/** A cell whose #N/A, not seen, tells a chart to leave its point out. */
export function isMeantForChart({ content }: CellPlan): boolean {
  return isFormula(content) && content.formula.endsWith(",NA())");
}

/** A sentence for every formula of a workbook that shows nothing, or an error it was not meant to show. */
export function problemsOf(plan: WorkbookPlan, values: CalculatedWorkbook): string[] {
  return plan.sheets.flatMap((sheet) =>
    sheet.cells.flatMap((cell) =>
      isFormula(cell.content) ? formulaProblems(sheet, cell, cell.content.formula, values) : [],
    ),
  );
}

/** Cells that show #N/A because an input is still blank, such as "Soil tests!H5 waiting for soilTest". */
export function waitingCells(plan: WorkbookPlan, values: CalculatedWorkbook): string[] {
  return plan.sheets.flatMap(({ name, cells }) =>
    cells.flatMap(({ row, column }) => {
      const value = values.valueAt(name, row, column);
      return isCellError(value) && isWaiting(value) ? [`${name}!${cellAddress(row, column)} ${value.message}`] : [];
    }),
  );
}

function formulaProblems(sheet: SheetPlan, cell: CellPlan, formula: string, values: CalculatedWorkbook): string[] {
  const { spill } = isFormula(cell.content) ? cell.content : {};
  const problems: string[] = [];
  for (let row = cell.row; row < cell.row + (spill?.rows ?? 1); row++) {
    for (let column = cell.column; column < cell.column + (spill?.columns ?? 1); column++) {
      const value = values.valueAt(sheet.name, row, column);
      const fault = faultOf(value, row === cell.row && column === cell.column);
      if (fault && !isLeftOut(cell, value))
        problems.push(`${sheet.name}!${cellAddress(row, column)} ${fault}: ${formula}`);
    }
  }
  return problems;
}

/** A spilling formula may fill less than the room left for it, so only its first cell must hold something. */
function faultOf(value: unknown, isFirst: boolean): string | undefined {
  if (value === undefined) return isFirst ? "shows nothing" : undefined;
  if (!isCellError(value) || isWaiting(value)) return undefined;
  return `shows ${value.code}${value.message ? ` (${value.message})` : ""}`;
}

function isLeftOut(cell: CellPlan, value: unknown): boolean {
  return isMeantForChart(cell) && isCellError(value) && value.code === "#N/A";
}

function isWaiting({ code, message = "" }: CellError): boolean {
  return code === "#N/A" && waiting.test(message);
}
