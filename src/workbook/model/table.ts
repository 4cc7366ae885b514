import { formula, type Expression, type Term } from "../formula/expression";
import { place, type Reference } from "../formula/reference";
import type { Allow } from "./cell";
import type { ModelRule } from "./rule";

/** The headers of a table by column key, declared before its columns so that these can refer to each other. */
export interface Headers<Column extends string> {
  readonly table: string;
  readonly headers: Readonly<Record<Column, string>>;
  /** The cell of this column in the row the formula stands in. */
  own(column: Column): Reference;
  /** All rows of a column. */
  all(column: Column): Reference;
  /** Neighbouring cells of the same row. */
  span(first: Column, last: Column): Reference;
  /** All rows of neighbouring columns. */
  block(first: Column, last: Column): Reference;
  /** The figure over all rows above the header, of a column that has one. */
  whole(column: Column): Reference;
  /** Which row of the table a formula stands in, from 1. By position and not by address: sorting never breaks it. */
  readonly rowNumber: Expression;
}

/**
 * @param table key and wished name of the table, such as "Fields"
 * @param headers header text by column, in order, with the unit: "Yield goal bu/ac". Letters, digits, spaces and
 *   - / $ % only: other signs mean something inside a table reference, and not every engine reads them there.
 */
export function headersOf<const Column extends string>(
  table: string,
  headers: Readonly<Record<Column, string>>,
): Headers<Column> {
  return {
    table,
    headers,
    own: (column) => ({ to: "column", table, column, rows: "this" }),
    all: (column) => ({ to: "column", table, column, rows: "all" }),
    span: (first, last) => ({ to: "span", table, first, last, rows: "this" }),
    block: (first, last) => ({ to: "span", table, first, last, rows: "all" }),
    whole: (column) => place(table, column, "whole"),
    rowNumber: formula`ROW()-ROW(${place(table, "header")})`,
  };
}

interface ColumnLook {
  /** In characters. */
  readonly width: number;
  readonly format?: string;
  /** Shown when the pointer rests on the header: what belongs here and where it comes from. */
  readonly note?: string;
  readonly rules?: readonly ModelRule[];
  /** Worked out over all rows and shown above the header, where it stays in sight. */
  readonly whole?: Term;
}

/** A column the person fills in. */
export interface InputColumn extends ColumnLook {
  readonly kind: "input";
  readonly words: boolean;
  readonly allow?: Allow;
  /** Starting values from the first row down; rows beyond them stay blank. */
  readonly values: readonly (string | number | null)[];
}

/** A column worked out in every row. */
export interface ComputedColumn extends ColumnLook {
  readonly kind: "computed";
  readonly words: boolean;
  readonly formula: Expression;
}

export type Column = InputColumn | ComputedColumn;

/** A spreadsheet table: one row a thing, one column a fact. */
export interface TableBlock {
  readonly kind: "table";
  readonly table: string;
  readonly title?: string;
  /** Words beside the figures above the header, such as "Whole farm". */
  readonly wholeLabel?: string;
  readonly rows: number;
  readonly columns: readonly { readonly key: string; readonly header: string; readonly column: Column }[];
}

/** Puts headers and columns together; a header without its column does not compile. */
export function tableBlock<Key extends string>(
  headers: Headers<Key>,
  facts: { readonly title?: string; readonly wholeLabel?: string; readonly rows: number },
  columns: Readonly<Record<NoInfer<Key>, Column>>,
): TableBlock {
  return {
    kind: "table",
    table: headers.table,
    ...facts,
    columns: entriesOf(headers.headers).map(([key, header]) => ({ key, header, column: columns[key] })),
  };
}

/** Object.entries with the keys it was declared with. */
export function entriesOf<Key extends string, Value>(record: Readonly<Record<Key, Value>>): [Key, Value][] {
  // Object.entries forgets the key type; the records here are closed literals.
  return Object.entries(record) as [Key, Value][];
}
