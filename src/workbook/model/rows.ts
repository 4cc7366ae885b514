import type { Text, Expression } from "../formula/expression";
import type { PlacedCell, RowsBlock } from "./block";

/** A row of column heads. */
export function headRow(...texts: readonly string[]): PlacedCell[] {
  return texts.map((content) => ({ content, style: "head" }));
}

/** Sentences that formulas make, one a row; each runs over the free cells beside it. */
export function sentencesBlock(title: string, sentences: readonly (Text | Expression)[]): RowsBlock {
  return { kind: "rows", title, rows: sentences.map((content) => [{ content, style: "body" }]) };
}
