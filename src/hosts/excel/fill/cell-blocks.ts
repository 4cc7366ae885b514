import type { Area, CellPlan, SheetPlan } from "../../../workbook/plan";
import { cellsOf, sizeOf } from "../../../workbook/area";
import { writtenOf, type Written } from "../written-content";

/** A rectangle of cells written at once. */
export interface CellBlock {
  readonly area: Area;
  /** null leaves a cell as it is. */
  readonly formulas: (Written | null)[][];
  /** Missing when no cell of the block has a number format. */
  readonly formats?: (string | null)[][];
}

/** Rows a block has at most: a request is split between blocks. */
const mostRowsPerBlock = 500;

/** The contents of a sheet as rectangles: bands of rows that follow each other without an empty one between. */
export function cellBlocks(sheet: SheetPlan): CellBlock[] {
  const cells = [...sheet.cells.filter(holdsSomething), ...blankTotals(sheet)];
  const rows = [...new Set(cells.map(({ row }) => row))].sort((a, b) => a - b);
  return bandsOf(rows).map(({ first, last }) => blockOf(cells.filter(({ row }) => row >= first && row <= last)));
}

function holdsSomething({ content, format }: CellPlan): boolean {
  return content !== undefined || format !== undefined;
}

/** Excel fills a new totals row with a word and a sum of its own: cells that the plan leaves empty are emptied. */
function blankTotals({ tables, cells }: SheetPlan): CellPlan[] {
  return tables
    .filter(({ totals }) => totals)
    .flatMap(({ area: { left, right, bottom } }) =>
      cellsOf({ top: bottom, left, bottom, right })
        .filter(
          ({ column }) => !cells.some((cell) => cell.row === bottom && cell.column === column && holdsSomething(cell)),
        )
        .map((cell) => ({ ...cell, content: "", style: "body" as const })),
    );
}

function bandsOf(rows: readonly number[]): { first: number; last: number }[] {
  const bands: { first: number; last: number }[] = [];
  for (const row of rows) {
    const band = bands.at(-1);
    if (band && row === band.last + 1 && row - band.first < mostRowsPerBlock) band.last = row;
    else bands.push({ first: row, last: row });
  }
  return bands;
}

function blockOf(cells: readonly CellPlan[]): CellBlock {
  const area = aroundCells(cells);
  const { rows, columns } = sizeOf(area);
  const grid = <T>(): (T | null)[][] => Array.from({ length: rows }, () => new Array<T | null>(columns).fill(null));
  const formulas = grid<Written>();
  const formats = grid<string>();
  for (const { row, column, content, format } of cells) {
    const [formulaRow, formatRow] = [formulas[row - area.top], formats[row - area.top]];
    if (formulaRow && content !== undefined) formulaRow[column - area.left] = writtenOf(content);
    if (formatRow && format !== undefined) formatRow[column - area.left] = format;
  }
  return { area, formulas, ...(cells.some(({ format }) => format !== undefined) && { formats }) };
}

function aroundCells(cells: readonly CellPlan[]): Area {
  const rows = cells.map(({ row }) => row);
  const columns = cells.map(({ column }) => column);
  return {
    top: Math.min(...rows),
    left: Math.min(...columns),
    bottom: Math.max(...rows),
    right: Math.max(...columns),
  };
}
