import { callsOurs } from "./reading/names-called";
import type { ErrorCells } from "./finding";
import { cellsWhere, isErrorCode, isFormula } from "./reading/sheet-cells";
import {
  cellKey,
  type CellContent,
  type SheetReading,
  type ShownValue,
  type WorkbookReading,
} from "./reading/workbook-reading";

/**
 * Cells with a function of ours that give no answer, those of a column with the same sentence together. #NAME? is a
 * finding of its own.
 */
export function errorCells(reading: WorkbookReading): ErrorCells[] {
  return reading.sheets.flatMap(inSheet);
}

function isError(content: CellContent, value: ShownValue): boolean {
  return isErrorCode(value) && value !== "#NAME?" && isFormula(content);
}

function inSheet(sheet: SheetReading): ErrorCells[] {
  const found = new Map<string, ErrorCells>();
  for (const { content, value, ...place } of cellsWhere(sheet, isError)) {
    if (!isErrorCode(value) || !isFormula(content) || !callsOurs(content)) continue;
    const message = sheet.messages.get(cellKey(place.row, place.column));
    const key = [place.column, value, message ?? ""].join("|");
    const known = found.get(key);
    const cells = [...(known?.cells ?? []), place];
    found.set(key, { kind: "errorCells", at: cells[0] ?? place, code: value, message, cells });
  }
  return [...found.values()];
}
