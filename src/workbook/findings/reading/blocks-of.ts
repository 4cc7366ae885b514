import { columnsIn, contentAt, isEmptyAt, isFormula, valueAt, wordsAt } from "./sheet-cells";
import type { SheetReading, TableReading } from "./workbook-reading";

/** Rows under a line of heads: a table of the spreadsheet, or a list that looks like one. */
export interface Block {
  readonly sheet: SheetReading;
  readonly heads: readonly Head[];
  /** First and last row under the heads; a totals row is not among them. */
  readonly firstRow: number;
  readonly lastRow: number;
}

export interface Head {
  readonly text: string;
  readonly column: number;
}

/** The tables and lists of a sheet. */
export function blocksOf(sheet: SheetReading): readonly Block[] {
  return [...sheet.tables.map((table) => tableBlock(sheet, table)), ...listsOf(sheet)];
}

export function rowsOf({ firstRow, lastRow }: Block): number[] {
  return Array.from({ length: Math.max(0, lastRow - firstRow + 1) }, (_, index) => firstRow + index);
}

/** The first head that reads like this. */
export function headLike(block: Block, pattern: RegExp): Head | undefined {
  return block.heads.find(({ text }) => pattern.test(text));
}

/** How a row of a block is called: its first words. */
export function rowName({ sheet, heads }: Block, row: number): string | undefined {
  for (const { column } of heads) {
    const words = wordsAt(sheet, row, column);
    if (words !== undefined) return words;
  }
  return undefined;
}

function tableBlock(sheet: SheetReading, { area, totals }: TableReading): Block {
  const columns = Array.from({ length: area.right - area.left + 1 }, (_, index) => area.left + index);
  return {
    sheet,
    heads: columns.map((column) => ({ text: wordsAt(sheet, area.top, column) ?? "", column })),
    firstRow: area.top + 1,
    lastRow: totals ? area.bottom - 1 : area.bottom,
  };
}

/** Two or more words side by side with something other than words somewhere in the row below them. */
function listsOf(sheet: SheetReading): Block[] {
  const blocks: Block[] = [];
  const isTaken = (row: number, column: number) =>
    sheet.tables.some(({ area }) => within(area, row, column)) ||
    blocks.some(({ heads, firstRow, lastRow }) => {
      const [first, last] = [heads[0]?.column ?? 0, heads.at(-1)?.column ?? 0];
      return row >= firstRow - 1 && row <= lastRow && column >= first && column <= last;
    });
  for (const row of sheet.formulas.keys()) {
    for (const heads of runsOfWords(sheet, sheet.top + row, isTaken)) {
      const block = listUnder(sheet, heads, sheet.top + row + 1);
      if (block) blocks.push(block);
    }
  }
  return blocks;
}

function within(area: TableReading["area"], row: number, column: number): boolean {
  return row >= area.top && row <= area.bottom && column >= area.left && column <= area.right;
}

function runsOfWords(sheet: SheetReading, row: number, isTaken: (row: number, column: number) => boolean): Head[][] {
  const runs: Head[][] = [[]];
  for (const column of columnsIn(sheet, row)) {
    const text = typedWords(sheet, row, column);
    if (text === undefined || isTaken(row, column)) runs.push([]);
    else runs.at(-1)?.push({ text, column });
  }
  return runs.filter((run) => run.length >= 2);
}

function typedWords(sheet: SheetReading, row: number, column: number): string | undefined {
  return isFormula(contentAt(sheet, row, column)) ? undefined : wordsAt(sheet, row, column);
}

/** Rows go on until one is empty under all heads. */
function listUnder(sheet: SheetReading, heads: readonly Head[], firstRow: number): Block | undefined {
  if (!heads.some(({ column }) => isFigure(sheet, firstRow, column))) return undefined;
  let lastRow = firstRow;
  while (heads.some(({ column }) => !isEmptyAt(sheet, lastRow + 1, column))) lastRow++;
  return { sheet, heads, firstRow, lastRow };
}

function isFigure(sheet: SheetReading, row: number, column: number): boolean {
  return typeof valueAt(sheet, row, column) === "number" || isFormula(contentAt(sheet, row, column));
}
