import type { CellIn, Matrix, RawArgument } from "../../../functions/frame/cell";

/** How far a cell lies from the one that holds its formula. */
export interface Offset {
  readonly row: number;
  readonly column: number;
}

/** The cells of an argument; a single value is a rectangle of one. */
export function rectangle(raw: RawArgument): Matrix<CellIn> {
  return isRange(raw) ? raw : [[raw ?? null]];
}

/** The first cell, which stands for all where only one can be shown. */
export function firstCell(raw: RawArgument): CellIn {
  return rectangle(raw)[0]?.[0] ?? null;
}

export function cellCount(raw: RawArgument): number {
  return rectangle(raw).reduce((count, row) => count + row.length, 0);
}

function isRange(raw: RawArgument): raw is Matrix<CellIn> {
  return Array.isArray(raw);
}
