import type { Area } from "../plan";

/**
 * What a formula may point to, by key. Addresses and final names are filled in after layout, so that nothing in a
 * model depends on where a cell stands or on what a workbook already calls its sheets.
 */
export type Reference =
  /** A named input. */
  | { readonly to: "name"; readonly key: string }
  /** A table column: the cell of the same row, or all of its rows. */
  | { readonly to: "column"; readonly table: string; readonly column: string; readonly rows: "this" | "all" }
  /** Neighbouring columns, first to last: the cells of the same row, or all rows. */
  | {
      readonly to: "span";
      readonly table: string;
      readonly first: string;
      readonly last: string;
      readonly rows: "this" | "all";
    }
  /** A cell or range that a block registered under this key, always with both dollar signs. */
  | { readonly to: "place"; readonly key: string }
  /** Cells on a sheet that was in the workbook before. */
  | { readonly to: "outside"; readonly sheet: string; readonly area: Area }
  /** The name of a sheet, for prose. */
  | { readonly to: "sheetName"; readonly sheet: string };

/** The place of a block's cell by the steps to it: place("money", "interest"), or the whole key at once. */
export function place(...steps: readonly string[]): Reference {
  return { to: "place", key: placeKey(...steps) };
}

/** The key that a place is registered under: "money.interest". */
export function placeKey(...steps: readonly string[]): string {
  return steps.join(".");
}

/** The cell of a defined name. */
export function nameOf(key: string): Reference {
  return { to: "name", key };
}

export function sheetName(sheet: string): Reference {
  return { to: "sheetName", sheet };
}

export function isReference(term: unknown): term is Reference {
  return typeof term === "object" && term !== null && "to" in term;
}
