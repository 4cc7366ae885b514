import { refuse, refuseArgument, waitFor } from "../../core/fault";
import { limits } from "../../core/limits";
import type { NutrientKey } from "../../reference/nutrients";
import { quantity, refuseWord, type ManyArgument, type Matrix } from "../frame";
import { nutrientWords } from "../words";
import { isEmpty, isWord, labelledCells, type LabelledCell } from "./labelled-cells";

/** The order nutrients are taken in where nobody names them: the order of a fertilizer grade, then the rest. */
export const usualOrder = ["N", "P2O5", "K2O", "S", "Mg", "Ca", "Zn", "B", "Mn", "Cu", "Fe"] as const;

/** Needs as the sheet gives them. */
export interface MixNeeds {
  /** null: not named, so taken in the order of the analyses. */
  readonly names: readonly NutrientKey[] | null;
  /** A blank is 0: none needed. */
  readonly needsLbPerAc: readonly number[];
}

const shape = "give one row or column of pounds per acre, or two with the nutrient names above or beside them.";

/** A row or column of needs, with or without the names of the nutrients. */
export function mixNeeds(): ManyArgument<MixNeeds> {
  const cells = labelledCells(quantity(limits.ratePounds, { says: "need" }), {
    says: `pounds needed of each nutrient, with names above or beside them; unnamed: in the order ${usualOrder.slice(0, 4).join(", ")}, or as analyses is headed`,
  });
  return { ...cells, readMany: (raw, argument) => readNeeds(cells.readMany(raw, argument), argument) };
}

function readNeeds(cells: Matrix<LabelledCell>, argument: string): MixNeeds {
  const lines = linesOf(cells, argument);
  const amounts = lines.at(-1) ?? [];
  if (amounts.every(isEmpty)) waitFor(argument);
  if (lines.length === 1) return { names: null, needsLbPerAc: amounts.map((cell) => amountOf(cell, argument)) };
  const pairs = amounts.flatMap((cell, index) => {
    const name = lines[0]?.[index];
    return isEmpty(cell) && isEmpty(name) ? [] : [[nutrientOf(name, argument), amountOf(cell, argument)] as const];
  });
  return { names: pairs.map(([name]) => name), needsLbPerAc: pairs.map(([, amount]) => amount) };
}

/** The needs as one line of amounts, or a line of names and a line of amounts. */
function linesOf(cells: Matrix<LabelledCell>, argument: string): Matrix<LabelledCell> {
  const columns = cells[0]?.length ?? 0;
  if (cells.length === 1 || columns === 1) return [cells.flat()];
  if (cells.length === 2 && cells[0]?.some(isWord)) {
    const sideways =
      columns === 2 && cells.every(([first]) => isWord(first)) && !cells.some(([, last]) => isWord(last));
    if (!sideways) return cells;
  }
  if (columns === 2 && cells.some(([first]) => isWord(first))) {
    return [cells.map(([first]) => first ?? null), cells.map(([, last]) => last ?? null)];
  }
  return refuseArgument(argument, shape);
}

function amountOf(cell: LabelledCell, argument: string): number {
  if (isWord(cell)) refuse({ kind: "notANumber", argument, received: cell, unit: limits.ratePounds.unit });
  return typeof cell === "number" ? cell : 0;
}

/** The nutrient a heading names. */
export function nutrientOf(cell: LabelledCell | undefined, argument: string): NutrientKey {
  if (isEmpty(cell)) refuseArgument(argument, "an amount stands there without the name of its nutrient.");
  const received = String(cell);
  return nutrientWords.find(received) ?? refuseWord(nutrientWords, received, argument);
}
