import { isCellError, type CellError } from "../../functions/frame/cell";
import type { CalculatedWorkbook } from "../../hosts/calculated-workbook";
import { cellAddress } from "../../hosts/address";
import { areaFrom, cellsOf } from "../../workbook/area";
import { isFormula } from "../../hosts/xlsx/cells";
import type { CellPlan, FormulaPlan, SheetPlan, WorkbookPlan } from "../../workbook/plan";

/** A cell of ours that waits for an input shows #N/A and says so; the workbook means it to. */
const waiting = /^waiting for /;

/** A cell whose #N/A, not seen, tells a chart to leave its point out. */
export function isMeantForChart({ content }: CellPlan): boolean {
  return isFormula(content) && content.formula.endsWith(",NA())");
}

/** A sentence for every formula of a workbook that shows nothing, or an error it was not meant to show. */
export function problemsOf(plan: WorkbookPlan, values: CalculatedWorkbook): string[] {
  return plan.sheets.flatMap((sheet) =>
    sheet.cells.flatMap((cell) => (isFormula(cell.content) ? formulaProblems(sheet, cell, cell.content, values) : [])),
  );
}

/** Cells that show #N/A because an input is still blank, such as "Soil tests!H5 waiting for soilTest". */
export function waitingCells(plan: WorkbookPlan, values: CalculatedWorkbook): string[] {
  return plan.sheets.flatMap(({ name, cells }) =>
    cells.flatMap((cell) => {
      const value = values.valueAt(name, cell.row, cell.column);
      return isCellError(value) && isWaiting(value) ? [`${name}!${cellAddress(cell)} ${value.message}`] : [];
    }),
  );
}

function formulaProblems(
  sheet: SheetPlan,
  cell: CellPlan,
  { formula, spill }: FormulaPlan,
  values: CalculatedWorkbook,
): string[] {
  return cellsOf(areaFrom(cell, spill)).flatMap((filled, index) => {
    const value = values.valueAt(sheet.name, filled.row, filled.column);
    const fault = faultOf(value, index === 0);
    return fault && !isLeftOut(cell, value) ? [`${sheet.name}!${cellAddress(filled)} ${fault}: ${formula}`] : [];
  });
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
