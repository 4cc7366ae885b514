import type { CellPlace } from "../../area";
import type { CellContent, SheetReading, ShownValue } from "./workbook-reading";

export interface ReadCell extends CellPlace {
  readonly content: CellContent;
  readonly value: ShownValue;
}

export function contentAt({ formulas, top, left }: SheetReading, row: number, column: number): CellContent {
  return formulas[row - top]?.[column - left] ?? "";
}

export function valueAt({ values, top, left }: SheetReading, row: number, column: number): ShownValue {
  return values[row - top]?.[column - left] ?? null;
}

/** The columns that a row was read in. */
export function columnsIn({ formulas, top, left }: SheetReading, row: number): number[] {
  return Array.from(formulas[row - top] ?? [], (_, across) => left + across);
}

/** The cells that hold what is wanted, row by row. */
export function cellsWhere(
  { name, top, left, formulas, values }: SheetReading,
  isWanted: (content: CellContent, value: ShownValue) => boolean,
): ReadCell[] {
  const found: ReadCell[] = [];
  // Plain loops: a workbook may have hundreds of thousands of cells, of which few are wanted.
  for (let down = 0; down < formulas.length; down++) {
    const [contents = [], shown = []] = [formulas[down], values[down]];
    for (let across = 0; across < contents.length; across++) {
      const [content = "", value = null] = [contents[across], shown[across]];
      if (isWanted(content, value)) found.push({ sheet: name, row: top + down, column: left + across, content, value });
    }
  }
  return found;
}

export function isFormula(content: CellContent): content is string {
  return typeof content === "string" && content.startsWith("=");
}

/** A number that a person typed. */
export function typedNumberAt(sheet: SheetReading, row: number, column: number): number | undefined {
  const content = contentAt(sheet, row, column);
  return typeof content === "number" ? content : undefined;
}

/** What a cell shows as words, without blanks around; nothing for numbers, blanks and error codes. */
export function wordsAt(sheet: SheetReading, row: number, column: number): string | undefined {
  const value = valueAt(sheet, row, column);
  const words = typeof value === "string" ? value.trim() : "";
  return words === "" || isErrorCode(words) ? undefined : words;
}

/** Whether a cell shows a spreadsheet error rather than an answer. */
export function isErrorCode(value: ShownValue): value is string {
  return typeof value === "string" && /^#[A-Z/0]+[!?]?$/.test(value);
}

/** Whether nothing at all stands in a cell. */
export function isEmptyAt(sheet: SheetReading, row: number, column: number): boolean {
  return contentAt(sheet, row, column) === "" && valueAt(sheet, row, column) === null;
}
