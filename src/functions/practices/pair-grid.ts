import type { PairGain } from "../../core/practices/pick-request";
import { practiceLimits } from "../../core/practices/practice-limits";
import { refuseArgument } from "../../core/fault";
import { list, listWithGaps, quantity, type ManyArgument } from "../frame";

/** Bushels beyond the sum of two gains, as a square with a row and a column for each practice. */
export type PairGrid = readonly (readonly (number | null)[])[];

export function pairGrid(): ManyArgument<PairGrid> {
  const extra = quantity(practiceLimits.gain, { says: "bushels beyond the sum of two gains" });
  const row = listWithGaps(extra, { says: "extra gain" });
  return {
    ...list(extra, {
      says: "a square with a row and column for each practice: bushels that two together gain beyond their sum, below 0 where they overlap",
    }),
    readMany: (cells, argument) => cells.map((cellsOfRow) => row.readMany([cellsOfRow], argument)),
  };
}

/** Each pair once, whichever side of the square it stands on. */
export function pairGains(grid: PairGrid, rows: number): PairGain[] {
  const columns = grid[0]?.length ?? 0;
  if (grid.length !== rows || columns !== rows) {
    const because = `it is ${grid.length} × ${columns} for ${rows} rows of practices: give a square of that size.`;
    refuseArgument("pairGains", because);
  }
  const found: PairGain[] = [];
  for (let first = 0; first < rows; first++) {
    for (let second = first + 1; second < rows; second++) {
      const above = grid[first]?.[second] ?? null;
      const below = grid[second]?.[first] ?? null;
      if (above !== null && below !== null && above !== below) {
        const because = `rows ${first + 1} and ${second + 1} meet twice, with ${above} and ${below}: fill one of the two.`;
        refuseArgument("pairGains", because);
      }
      const extraBuPerAc = above ?? below;
      if (extraBuPerAc !== null && extraBuPerAc !== 0) found.push({ first, second, extraBuPerAc });
    }
  }
  return found;
}
