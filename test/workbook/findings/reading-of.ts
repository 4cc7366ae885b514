import type { CallReading, SheetReading, TableReading, WorkbookReading } from "../../../src/workbook/findings";

/** A typed value, or a formula with what it shows. */
export type GivenCell = number | string | boolean | null | { readonly f: string; readonly v: number | string | null };

interface Extras {
  readonly tables?: readonly TableReading[];
  readonly messages?: ReadonlyMap<string, string>;
}

/** A sheet whose first cell is A1. */
export function sheetOf(name: string, rows: readonly (readonly GivenCell[])[], extras: Extras = {}): SheetReading {
  const width = Math.max(...rows.map((row) => row.length));
  const full = rows.map((row) => Array.from({ length: width }, (_, column) => row[column] ?? null));
  return {
    name,
    top: 0,
    left: 0,
    formulas: full.map((row) => row.map((cell) => (typeof cell === "object" ? (cell?.f ?? "") : cell))),
    values: full.map((row) => row.map((cell) => (typeof cell === "object" ? (cell?.v ?? null) : cell))),
    tables: extras.tables ?? [],
    messages: extras.messages ?? new Map(),
  };
}

/** A workbook with names by "Sheet!row,column". */
export function workbookOf(
  sheets: readonly SheetReading[],
  names: Readonly<Record<string, [string, number, number]>> = {},
) {
  const reading: WorkbookReading = {
    sheets,
    names: Object.entries(names).map(([name, [sheet, row, column]]) => ({
      name,
      sheet,
      area: { top: row, bottom: row, left: column, right: column },
    })),
    cutShort: [],
  };
  return reading;
}

export function callOf(name: string, given: CallReading["given"], row = 0): CallReading {
  return { name, given, at: { sheet: "Sheet1", row, column: 0 } };
}

export const column = (...cells: readonly (number | string | null)[]) => cells.map((cell) => [cell]);
