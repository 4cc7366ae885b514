import type { Area } from "../workbook/plan";
import type { CellAt } from "../workbook/area";

type GrowingArea = { -readonly [side in keyof Area]: Area[side] };

/** Few rectangles that cover these cells and no others: runs along rows, joined downwards where they are equally wide. */
export function rectanglesOf(cells: readonly CellAt[]): Area[] {
  const rectangles: Area[] = [];
  const lowest = new Map<string, GrowingArea>();
  for (const run of runsOf(cells)) {
    const columns = `${run.left} ${run.right}`;
    const above = lowest.get(columns);
    if (above?.bottom === run.top - 1) {
      above.bottom = run.bottom;
    } else {
      lowest.set(columns, run);
      rectangles.push(run);
    }
  }
  return rectangles;
}

/** Neighbouring cells of one row, row by row. */
function runsOf(cells: readonly CellAt[]): GrowingArea[] {
  const runs: GrowingArea[] = [];
  for (const { row, column } of [...cells].sort((a, b) => a.row - b.row || a.column - b.column)) {
    const last = runs.at(-1);
    if (last?.top === row && last.right === column - 1) last.right = column;
    else runs.push({ top: row, bottom: row, left: column, right: column });
  }
  return runs;
}
