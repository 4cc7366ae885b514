import type { UnknownName } from "./finding";
import { namesCalled } from "./names-called";
import { cellsWhere, isFormula } from "./sheet-cells";
import type { SheetReading, WorkbookReading } from "./workbook-reading";

/**
 * Cells that show #NAME?, a sheet's together. Those that call only functions of ours can be mended by writing them
 * once more: they were written before the functions were there.
 */
export function unknownNames(reading: WorkbookReading): UnknownName[] {
  return reading.sheets.flatMap(inSheet);
}

function inSheet(sheet: SheetReading): UnknownName[] {
  const cells = cellsWhere(sheet, (content, value) => value === "#NAME?" && isFormula(content));
  const [first] = cells;
  if (first === undefined) return [];
  const place = ({ row, column }: { row: number; column: number }) => ({ sheet: sheet.name, row, column });
  const called = cells.map((cell) => ({ cell, names: namesCalled(String(cell.content)) }));
  const mendable = called
    .filter(({ names }) => names.known.length > 0 && names.misspelled.length === 0)
    .map(({ cell }) => ({ place: place(cell), formula: cell.content }));
  const misspelled = [...new Set(called.flatMap(({ names }) => names.misspelled))];
  return [{ kind: "unknownName", at: place(first), misspelled, mendable, cells: cells.map(place) }];
}
