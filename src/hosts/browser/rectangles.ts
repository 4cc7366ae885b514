import type { Area } from "../../workbook/plan";
import type { CellAt } from "../area";

/** The fewest easy rectangles that cover these cells and no others: runs along rows, joined downwards. */
export function rectanglesOf(cells: readonly CellAt[]): Area[] {
  const done: Area[] = [];
  let open: Area[] = [];
  for (const run of runsOf(cells)) {
    open = open.filter((area) => {
      const reachable = area.bottom >= run.top - 1;
      if (!reachable) done.push(area);
      return reachable;
    });
    const above = open.findIndex(
      ({ left, right, bottom }) => left === run.left && right === run.right && bottom === run.top - 1,
    );
    const grown = open[above];
    if (grown) open[above] = { ...grown, bottom: run.bottom };
    else open.push(run);
  }
  return [...done, ...open];
}

/** Neighbouring cells of one row, row by row. */
function runsOf(cells: readonly CellAt[]): Area[] {
  const sorted = [...cells].sort((a, b) => a.row - b.row || a.column - b.column);
  const runs: Area[] = [];
  for (const { row, column } of sorted) {
    const last = runs[runs.length - 1];
    if (last && last.top === row && last.right === column - 1) runs[runs.length - 1] = { ...last, right: column };
    else runs.push({ top: row, bottom: row, left: column, right: column });
  }
  return runs;
}
