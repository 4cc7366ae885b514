import type { Area } from "../../plan";

/** What a cell shows; a spreadsheet error comes as its code, such as "#N/A". null: blank. */
export type ShownValue = number | string | boolean | null;

/** What stands in a cell: a formula with its "=", a typed value, or "" for nothing. */
export type CellContent = number | string | boolean;

/** An open workbook as it was read at one moment: its sheets in sight, in order, and its names. */
export interface WorkbookReading {
  readonly sheets: readonly SheetReading[];
  readonly names: readonly NameReading[];
  /** Sheets of which only the first rows were read, because there are too many cells. */
  readonly cutShort: readonly string[];
}

/** The used cells of one sheet as a rectangle. */
export interface SheetReading {
  readonly name: string;
  /** Row and column of the first cell read, from 0. */
  readonly top: number;
  readonly left: number;
  readonly formulas: readonly (readonly CellContent[])[];
  readonly values: readonly (readonly ShownValue[])[];
  readonly tables: readonly TableReading[];
  /** Sentences behind errors of ours, by cellKey, where the host can tell them. */
  readonly messages: ReadonlyMap<string, string>;
}

export interface TableReading {
  readonly name: string;
  /** Header row included, totals row as well. */
  readonly area: Area;
  readonly totals: boolean;
}

export interface NameReading {
  readonly name: string;
  readonly sheet: string;
  readonly area: Area;
}

/** Key of a cell on its sheet. */
export function cellKey(row: number, column: number): string {
  return `${row},${column}`;
}
