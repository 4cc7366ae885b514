import type { ChartModel } from "../model/block";
import type { Allow, ModelCell } from "../model/cell";
import type { ModelRule } from "../model/rule";
import type { FinalNames } from "../names/choose-names";
import type { Area } from "../plan";

/** A cell that has its place; its content still points by key. */
export interface DraftCell extends ModelCell {
  readonly row: number;
  readonly column: number;
}

export interface DraftTable {
  readonly table: string;
  /** Header row included. */
  readonly area: Area;
  readonly columns: readonly { readonly key: string; readonly header: string }[];
}

export interface DraftName {
  readonly name: string;
  readonly area: Area;
  readonly says: string;
}

/** What one block puts on a sheet, or a whole sheet when all its blocks are put together. */
export interface Fragment {
  readonly cells: readonly DraftCell[];
  readonly tables: readonly DraftTable[];
  readonly names: readonly DraftName[];
  /** Cells and ranges that references may point to, by key. */
  readonly places: readonly (readonly [string, Area])[];
  readonly validations: readonly { readonly area: Area; readonly allow: Allow }[];
  readonly rules: readonly { readonly area: Area; readonly rule: ModelRule }[];
  readonly notes: readonly { readonly row: number; readonly column: number; readonly text: string }[];
  readonly charts: readonly { readonly chart: ChartModel; readonly at: Area }[];
  /** Heights in points, by row. */
  readonly heights: readonly (readonly [number, number])[];
  /** Widths a block asks for, by column from A on, in characters. */
  readonly widths: readonly number[];
  /** First row below. */
  readonly end: number;
}

/** What a block needs to know about the sheet it lands on. */
export interface Ground {
  /** First free row. */
  readonly top: number;
  /** Width of the sheet in characters, for breaking lines. */
  readonly width: number;
  readonly names: FinalNames;
}

export function fragment(parts: Partial<Fragment> & Pick<Fragment, "end">): Fragment {
  return {
    cells: [],
    tables: [],
    names: [],
    places: [],
    validations: [],
    rules: [],
    notes: [],
    charts: [],
    heights: [],
    widths: [],
    ...parts,
  };
}

/** The heading above a block, when it has one, and the row where the block proper starts. */
export function heading(title: string | undefined, top: number): { cells: DraftCell[]; start: number } {
  if (title === undefined) return { cells: [], start: top };
  return { cells: [{ row: top, column: 0, content: title, style: "section" }], start: top + 1 };
}
