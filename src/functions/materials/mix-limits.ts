import { refuse, refuseArgument } from "../../core/fault";
import { limits } from "../../core/limits";
import { quantity, type ManyArgument } from "../frame";
import { isEmpty, isWord, labelledCells, type LabelledCell } from "./labelled-cells";

/** Least and most of one material, lb/ac; null where there is no bound. */
export interface MaterialLimit {
  readonly leastLbPerAc: number | null;
  readonly mostLbPerAc: number | null;
}

/** A row per material: its most, or its least and its most. A row of headings is passed over. */
export function mixLimits(): ManyArgument<readonly MaterialLimit[]> {
  const cells = labelledCells(quantity(limits.ratePounds, { says: "limit" }), {
    says: "least and most pounds of each material, a row per material in two columns; one column is the most. Blank: no limit",
  });
  return {
    ...cells,
    readMany(raw, argument) {
      const all = cells.readMany(raw, argument);
      const rows = all[0]?.every((cell) => isEmpty(cell) || isWord(cell)) && all[0].some(isWord) ? all.slice(1) : all;
      return rows.map((row) => limitOf(row, argument));
    },
  };
}

function limitOf(row: readonly LabelledCell[], argument: string): MaterialLimit {
  if (row.length > 2) {
    const because = `takes one column (most) or two (least, most); got ${row.length}.`;
    refuseArgument(argument, because);
  }
  const [most = null, least = null] = [...row].reverse().map((cell) => poundsOf(cell, argument));
  return { leastLbPerAc: least, mostLbPerAc: most };
}

function poundsOf(cell: LabelledCell, argument: string): number | null {
  if (isWord(cell)) refuse({ kind: "notANumber", argument, received: cell, unit: limits.ratePounds.unit });
  return typeof cell === "number" ? cell : null;
}
