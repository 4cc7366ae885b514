import { isMatrix, type CellIn, type RawArgument } from "../../../functions/frame/cell";
import type { CellPlace } from "../../area";

/** A call of one of our functions in a cell, with what its arguments were worth when the workbook was read. */
export interface CallReading {
  readonly name: string;
  readonly at: CellPlace;
  /** By argument name, left-out ones missing. */
  readonly given: Readonly<Record<string, RawArgument>>;
}

/** All cells of an argument, row by row. */
export function cellsGiven(call: CallReading, argument: string): readonly CellIn[] {
  const raw = call.given[argument];
  if (raw === undefined || raw === null) return [];
  return isMatrix(raw) ? raw.flat() : [raw];
}

/** The words of an argument's first cell. */
export function wordGiven(call: CallReading, argument: string): string | undefined {
  const [first] = cellsGiven(call, argument);
  return typeof first === "string" && first.trim() !== "" ? first : undefined;
}

/** Calls that differ in what goes in: an answer taken apart cell by cell is asked about once. */
export function differentCalls(calls: readonly CallReading[], ...names: readonly string[]): CallReading[] {
  const first = new Map<string, CallReading>();
  for (const call of calls) {
    const key = JSON.stringify([call.name, call.at.sheet, call.given]);
    if (names.includes(call.name) && !first.has(key)) first.set(key, call);
  }
  return [...first.values()];
}
