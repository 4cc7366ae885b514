import { callsOurs } from "./names-called";
import type { ErrorCells } from "./finding";
import { filledCells, isErrorCode, isFormula } from "./sheet-cells";
import { cellKey, type SheetReading, type WorkbookReading } from "./workbook-reading";

/**
 * Cells with a function of ours that give no answer, those of a column with the same sentence together. #NAME? is a
 * finding of its own.
 */
export function errorCells(reading: WorkbookReading): ErrorCells[] {
  return reading.sheets.flatMap(inSheet);
}

function inSheet(sheet: SheetReading): ErrorCells[] {
  const found = new Map<string, ErrorCells>();
  for (const { content, value, ...place } of filledCells(sheet)) {
    if (!isErrorCode(value) || value === "#NAME?" || !isFormula(content) || !callsOurs(content)) continue;
    const message = sheet.messages.get(cellKey(place.row, place.column));
    const key = [place.column, value, message ?? ""].join("|");
    const known = found.get(key);
    const cells = [...(known?.cells ?? []), place];
    found.set(key, { kind: "errorCells", at: cells[0] ?? place, code: value, message, cells });
  }
  return [...found.values()];
}
