import type { WrittenBlock, WrittenCell } from "../../../hosts/port";
import type { CellPlace } from "../../../workbook/area";
import type { CellContent } from "../../../workbook/findings";
import { isFormula } from "../../../workbook/findings/reading/sheet-cells";
import { addressOf } from "./snapshot";

export interface CellToWrite {
  readonly place: CellPlace;
  readonly content: CellContent;
}

/** Cells as few blocks: those below each other in a column go together. */
export function blocksOfCells(cells: readonly CellToWrite[]): WrittenBlock[] {
  return runsOfCells(cells).flatMap((run) => {
    const [first] = run;
    return first ? [{ address: addressOf(first.place), rows: run.map(({ content }) => [written(content)]) }] : [];
  });
}

/** Cells below each other in a column, from the first to the last. */
export function runsOfCells(cells: readonly CellToWrite[]): CellToWrite[][] {
  const sorted = [...cells].sort(({ place: a }, { place: b }) =>
    a.sheet === b.sheet ? a.column - b.column || a.row - b.row : a.sheet < b.sheet ? -1 : 1,
  );
  const runs: CellToWrite[][] = [];
  for (const cell of sorted) {
    const above = runs.at(-1)?.at(-1);
    if (above && isBelow(cell.place, above.place)) runs.at(-1)?.push(cell);
    else runs.push([cell]);
  }
  return runs;
}

function isBelow(place: CellPlace, above: CellPlace): boolean {
  return place.sheet === above.sheet && place.column === above.column && place.row === above.row + 1;
}

function written(content: CellContent): WrittenCell {
  if (content === "") return null;
  return isFormula(content) ? { formula: content } : content;
}
