import type { Cell, Sheet } from "hucre/xlsx";
import type { CellPlan, FormulaPlan, NotePlan } from "../../../workbook/plan";
import { parseAddress } from "../../address";
import { cellsOf, sizeOf, type CellAt } from "../../../workbook/area";
import { textFormat } from "../../text-format";
import { keyOf } from "../cells";
import { lookOf } from "./look-of";
import { typedFormula } from "../formulas/typed-formula";

const firstDaySerial = 25_569;
const dayMilliseconds = 86_400_000;

/** The cells of a sheet. What a formula had spilled into others comes back when it is calculated. */
export function readCells({ cells = new Map() }: Sheet): CellPlan[] {
  const spilled = spilledCells(cells);
  return [...cells]
    .map(([key, cell]) => ({ ...placeOf(key), key, cell }))
    .sort((a, b) => a.row - b.row || a.column - b.column)
    .flatMap(({ key, row, column, cell }) => {
      const content = spilled.has(key) ? undefined : contentOf(cell);
      const style = lookOf(cell.style);
      if (content === undefined && style === "body") return [];
      const format = cell.style?.numFmt;
      const link = linkOf(cell);
      return [
        {
          row,
          column,
          style,
          ...(content !== undefined && { content }),
          ...(format !== undefined && format !== "General" && format !== textFormat && { format }),
          ...(link !== undefined && { link }),
        },
      ];
    });
}

export function readNotes({ cells = new Map() }: Sheet): NotePlan[] {
  return [...cells].flatMap(([key, { comment }]) => (comment ? [{ ...placeOf(key), text: comment.text }] : []));
}

function placeOf(key: string): CellAt {
  const [row = 0, column = 0] = key.split(",").map(Number);
  return { row, column };
}

function contentOf(cell: Cell): CellPlan["content"] {
  if (cell.formula !== undefined) return formulaOf(cell, cell.formula);
  const { value } = cell;
  if (value instanceof Date) return value.getTime() / dayMilliseconds + firstDaySerial;
  return value === null || value === "" ? undefined : value;
}

function formulaOf({ formulaRef }: Cell, stored: string): FormulaPlan {
  const area = formulaRef === undefined ? undefined : parseAddress(formulaRef)?.area;
  const spill = area && sizeOf(area);
  return { formula: typedFormula(stored), ...(spill && spill.rows * spill.columns > 1 && { spill }) };
}

function spilledCells(cells: ReadonlyMap<string, Cell>): ReadonlySet<string> {
  const covered = new Set<string>();
  for (const [key, { formulaRef, formulaType }] of cells) {
    const area = formulaRef !== undefined && formulaType === "array" ? parseAddress(formulaRef)?.area : undefined;
    if (!area) continue;
    for (const cell of cellsOf(area)) covered.add(keyOf(cell));
    covered.delete(key);
  }
  return covered;
}

/** A link inside the workbook, as the name of the sheet it leads to. */
function linkOf({ hyperlink }: Cell): string | undefined {
  return hyperlink?.location === undefined ? undefined : parseAddress(hyperlink.location)?.sheet;
}
