import type { Expression, Text } from "../formula/expression";
import type { Reference } from "../formula/reference";
import type { SeriesLook } from "../plan";
import type { Allow, ModelCell } from "./cell";
import type { ModelRule } from "./rule";
import type { TableBlock } from "./table";

/** One labelled line: what it is, its value, its unit, and a word about it. */
export interface Entry {
  readonly key: string;
  readonly label: Text;
  readonly unit: string;
  readonly format?: string;
  /** Beside the line: where the number comes from or what it is for. */
  readonly says?: Text;
  /** A defined name for the value, in lower case with underscores. */
  readonly name?: string;
  readonly rules?: readonly ModelRule[];
  readonly value:
    | { readonly kind: "input"; readonly start: string | number | null; readonly allow?: Allow }
    | { readonly kind: "computed"; readonly formula: Expression; readonly words?: boolean };
}

export interface EntriesBlock {
  readonly kind: "entries";
  readonly key: string;
  readonly title?: string;
  readonly entries: readonly Entry[];
}

/** A line of figures with one cell per column, such as a budget line for every crop. */
export interface MatrixRow {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  readonly format: string;
  readonly note?: string;
  readonly allow?: Allow;
  readonly rules?: readonly ModelRule[];
  /** A heading line within the matrix has no cells. */
  readonly cells: readonly MatrixCell[];
  readonly total?: boolean;
}

export type MatrixCell =
  | { readonly kind: "input"; readonly start: string | number | null }
  | { readonly kind: "computed"; readonly formula: Expression; readonly words?: boolean };

export interface MatrixBlock {
  readonly kind: "matrix";
  readonly key: string;
  readonly title?: string;
  readonly corner: string;
  readonly columns: readonly { readonly key: string; readonly head: Expression | string }[];
  readonly rows: readonly MatrixRow[];
}

/** Cells as they stand, row by row; null leaves a gap. Places are registered for cells with a key. */
export interface RowsBlock {
  readonly kind: "rows";
  readonly title?: string;
  readonly rows: readonly (readonly (PlacedCell | null)[])[];
  /** Heights in points, by row of the block. */
  readonly heights?: Readonly<Record<number, number>>;
  /** Rectangles between two cells that have a key, for charts and for functions that take lists. */
  readonly ranges?: readonly { readonly key: string; readonly from: string; readonly to: string }[];
  /** Each for the cells between two that have a key. */
  readonly rules?: readonly { readonly from: string; readonly to: string; readonly rule: ModelRule }[];
}

export interface PlacedCell extends ModelCell {
  readonly key?: string;
  /** For an input: what may be typed. */
  readonly allow?: Allow;
  /** A defined name for the cell, in lower case with underscores, and what it is. */
  readonly named?: { readonly name: string; readonly says: string };
}

/** Paragraphs, broken into lines of the sheet's width, one a row: nothing is merged and nothing is cut. */
export interface ParagraphsBlock {
  readonly kind: "paragraphs";
  readonly title?: string;
  readonly style: "body" | "says" | "caution";
  readonly paragraphs: readonly Text[];
}

export interface ChartModel {
  readonly kind: "column" | "bar" | "line" | "scatter";
  readonly title: string;
  readonly alt: string;
  readonly categories: Reference;
  readonly series: readonly {
    readonly name: string;
    readonly values: Reference;
    readonly color: string;
    readonly look?: SeriesLook;
  }[];
  readonly xTitle?: string;
  readonly yTitle?: string;
  readonly yFormat?: string;
  readonly onOneLine?: boolean;
  /** Columns of the sheet it covers, first and last. */
  readonly columns: { readonly first: number; readonly last: number };
}

/** Charts side by side. */
export interface ChartsBlock {
  readonly kind: "charts";
  readonly title?: string;
  readonly charts: readonly ChartModel[];
  /** Rows of the sheet they cover. */
  readonly rows: number;
}

export type Block = EntriesBlock | TableBlock | MatrixBlock | RowsBlock | ParagraphsBlock | ChartsBlock;
