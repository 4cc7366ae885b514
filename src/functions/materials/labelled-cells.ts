import { listWithGaps, type Matrix, type ManyArgument, type OneArgument } from "../frame";
import { parseNumber } from "../frame/parse-number";

/** A cell of a range with headings: a number, a word, or null where it is blank. */
export type LabelledCell = number | string | null;

/** A range whose numbers are read as one kind of amount, and whose words, row and column headings, are kept. */
export function labelledCells(
  of: OneArgument<number>,
  says: { readonly says: string },
): ManyArgument<Matrix<LabelledCell>> {
  const mixed: OneArgument<number | string> = {
    ...of,
    read: (cell, argument) => (typeof cell === "string" && !parseNumber(cell) ? cell.trim() : of.read(cell, argument)),
  };
  const flat = listWithGaps(mixed, says);
  return {
    ...flat,
    readMany(cells, argument) {
      const values = flat.readMany(cells, argument);
      const columns = cells[0]?.length ?? 0;
      return cells.map((_, row) => values.slice(row * columns, (row + 1) * columns));
    },
  };
}

export function isWord(cell: LabelledCell | undefined): cell is string {
  return typeof cell === "string" && cell !== "";
}

export function isEmpty(cell: LabelledCell | undefined): boolean {
  return cell === null || cell === undefined || cell === "";
}
