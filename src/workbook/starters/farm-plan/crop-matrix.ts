import { formula, type Expression } from "../../formula/expression";
import type { MatrixBlock, MatrixRow } from "../../model/block";
import type { CropChoice } from "../choices";
import { cropTable } from "./headers";

type MatrixColumn = MatrixBlock["columns"][number];
type RowFacts = Omit<MatrixRow, "cells">;

/** One column a crop; its head follows the table of crops, so that a changed name changes everywhere. */
export function cropHeads(crops: readonly CropChoice[]): MatrixColumn[] {
  return crops.map((_, index) => ({
    key: `crop${index + 1}`,
    head: formula`INDEX(${cropTable.all("crop")},${index + 1})&""`,
  }));
}

/** A line that is worked out the same way in every column. */
export function computedRow(
  facts: RowFacts,
  columns: readonly MatrixColumn[],
  of: (column: string) => Expression,
): MatrixRow {
  return { ...facts, cells: columns.map(({ key }) => ({ kind: "computed", formula: of(key) })) };
}

/** A line in words. */
export function wordsRow(
  facts: RowFacts,
  columns: readonly MatrixColumn[],
  of: (column: string) => Expression,
): MatrixRow {
  return { ...facts, cells: columns.map(({ key }) => ({ kind: "computed", formula: of(key), words: true })) };
}

/** A line to fill in, one starting value a column. */
export function typedRow(facts: RowFacts, starts: readonly (number | null)[]): MatrixRow {
  return { ...facts, cells: starts.map((start) => ({ kind: "input", start })) };
}

/** A line that only heads the lines below it. */
export function headingRow(key: string, label: string): MatrixRow {
  return { key, label, unit: "", format: "General", cells: [] };
}
