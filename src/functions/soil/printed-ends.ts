import { line, type WorkingLine } from "../frame";

/** The ends of a printed range, where it is one. */
export function printedEnds(range: { readonly lowLbPerAc: number; readonly highLbPerAc: number }): WorkingLine[] {
  if (range.highLbPerAc <= range.lowLbPerAc) return [];
  return [line("Lowest printed", range.lowLbPerAc, "lb/ac"), line("Highest printed", range.highLbPerAc, "lb/ac")];
}
