import type { Mendable, UnknownName } from "./finding";
import { asTyped, callsOurs, namesCalled } from "./reading/names-called";
import { cellsWhere, isFormula, type ReadCell } from "./reading/sheet-cells";
import type { CellContent, SheetReading, ShownValue, WorkbookReading } from "./reading/workbook-reading";

/**
 * Cells that show #NAME?, a sheet's together. Those that call only functions of ours can be mended by writing them
 * once more: they were written before the functions were there. So were those beside them that catch an error and
 * show something in its place.
 */
export function unknownNames(reading: WorkbookReading): UnknownName[] {
  const unknown = reading.sheets.flatMap((sheet) => cellsWhere(sheet, isUnknown));
  const isOurs = unknown.some(({ content }) => canBeMended(String(content)));
  return reading.sheets.flatMap((sheet) => inSheet(sheet, isOurs ? isHeldBack : isUnknown));
}

/** Shows #NAME?, or is kept as files keep a name that they did not know. */
function isUnknown(content: CellContent, value: ShownValue): boolean {
  return isFormula(content) && (value === "#NAME?" || asTyped(content) !== content);
}

const catching = /\bIFERROR\(|\bISERR(?:OR)?\(/i;

/** Whether all that a formula calls under our name is there. */
function canBeMended(formula: string): boolean {
  const { known, misspelled } = namesCalled(formula);
  return known.length > 0 && misspelled.length === 0;
}

function isHeldBack(content: CellContent, value: ShownValue): boolean {
  return isUnknown(content, value) || (isFormula(content) && catching.test(content) && callsOurs(content));
}

function inSheet(sheet: SheetReading, isWanted: typeof isUnknown): UnknownName[] {
  const found = cellsWhere(sheet, isWanted);
  const showing = found.filter(({ value }) => value === "#NAME?");
  const mendable = found.filter(({ content }) => canBeMended(String(content)));
  const first = showing[0] ?? mendable[0];
  if (first === undefined) return [];
  return [
    {
      kind: "unknownName",
      at: placeOf(first),
      misspelled: [...new Set(showing.flatMap(({ content }) => namesCalled(String(content)).misspelled))],
      mendable: mendable.map(toMend),
      cells: showing.map(placeOf),
      hidden: mendable.filter(({ value }) => value !== "#NAME?").length,
    },
  ];
}

function toMend(cell: ReadCell): Mendable {
  const was = String(cell.content);
  return { place: placeOf(cell), was, formula: asTyped(was) };
}

function placeOf({ sheet, row, column }: ReadCell): Mendable["place"] {
  return { sheet, row, column };
}
