import type { CellOut } from "./cell";
import type { WorksheetFunction } from "./declaration";
import { runFunction } from "./run";

/** Whether a function gives what its example says, cell by cell. */
export function answersExample(fn: WorksheetFunction): boolean {
  const { call, gives, tolerance = 0.005 } = fn.example;
  const wanted = typeof gives === "object" ? gives : [[gives]];
  const cells = runFunction(fn, call);
  return (
    cells.length === wanted.length &&
    cells.every((row, down) => {
      const expected = wanted[down] ?? [];
      return row.length === expected.length && row.every((cell, across) => agrees(cell, expected[across], tolerance));
    })
  );
}

function agrees(cell: CellOut, wanted: number | string | undefined, tolerance: number): boolean {
  if (typeof cell !== "number" || typeof wanted !== "number") return cell === wanted;
  return Math.abs(cell - wanted) <= tolerance;
}
