import { formula, type Expression, type Term } from "../formula/expression";
import type { MatrixCell, MatrixRow } from "./block";

type RowFacts = Omit<MatrixRow, "cells">;
type Columns<Key extends string> = readonly { readonly key: Key }[];

/** A line that is worked out the same way in every column. */
export function computedRow<Key extends string>(
  facts: RowFacts,
  columns: Columns<Key>,
  of: (column: Key) => Expression,
): MatrixRow {
  return { ...facts, cells: computedCells(...columns.map(({ key }) => of(key))) };
}

/** A line in words. */
export function wordsRow<Key extends string>(
  facts: Omit<RowFacts, "unit" | "format">,
  columns: Columns<Key>,
  of: (column: Key) => Expression,
): MatrixRow {
  const cells = columns.map(({ key }): MatrixCell => ({ kind: "computed", formula: of(key), words: true }));
  return { ...facts, unit: "", format: "General", cells };
}

/** A line to fill in, one starting value a column. */
export function typedRow(facts: RowFacts, starts: readonly (number | null)[]): MatrixRow {
  return { ...facts, cells: starts.map((start) => ({ kind: "input", start })) };
}

/** A line that only heads the lines below it. */
export function headingRow(key: string, label: string): MatrixRow {
  return { key, label, unit: "", format: "General", cells: [] };
}

/** Cells of a line whose columns differ, from the first column on. */
export function computedCells(...values: readonly Term[]): MatrixCell[] {
  return values.map((value) => ({ kind: "computed", formula: formula`${value}` }));
}
