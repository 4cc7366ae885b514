/** Error codes that a worksheet function may return or receive. */
export type ErrorCode =
  "#VALUE!" | "#N/A" | "#NUM!" | "#DIV/0!" | "#REF!" | "#NAME?" | "#NULL!" | "#BUSY!" | "#SPILL!" | "#CALC!";

/** A spreadsheet error in a cell, with our sentence behind it when it is ours. */
export interface CellError {
  readonly code: string;
  readonly message?: string;
}

/** What a host hands over for one cell. null: blank, or an argument left out. */
export type CellIn = number | string | boolean | null | CellError;

/** What may leave a function for one cell. Never null, NaN or an infinity: spreadsheets show those as 0. */
export type CellOut = number | string | boolean | CellError;

export type Matrix<T> = readonly (readonly T[])[];

/** An argument as hosts deliver it: one cell, a range, or nothing. */
export type RawArgument = CellIn | Matrix<CellIn> | undefined;

export function isCellError(cell: unknown): cell is CellError {
  return typeof cell === "object" && cell !== null && "code" in cell;
}

export function isBlank(cell: CellIn): boolean {
  return cell === null || cell === undefined || cell === "";
}

/** Every argument becomes a rectangle; one cell is 1 × 1. */
export function toMatrix(raw: RawArgument): Matrix<CellIn> {
  return isMatrix(raw) ? raw : [[raw ?? null]];
}

export function isMatrix(raw: RawArgument): raw is Matrix<CellIn> {
  return Array.isArray(raw);
}

/** "3 × 2" for messages: rows first. */
export function sizeOf(matrix: Matrix<unknown>): string {
  return `${matrix.length} × ${matrix[0]?.length ?? 0}`;
}
