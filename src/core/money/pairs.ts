import { needed, waitFor } from "../fault";
import { sameLength } from "../same-length";

/** A list of a sheet with its name there; null keeps the place of a blank cell. */
export interface Listed {
  readonly argument: string;
  readonly values: readonly (number | null)[];
}

export interface Pair {
  /** Place in the lists, from 0. */
  readonly place: number;
  readonly first: number;
  readonly second: number;
}

/**
 * Two lists of a sheet, taken row by row. A row blank in both is passed over, a row blank in one is waited for.
 */
export function pairsOf(first: Listed, second: Listed): Pair[] {
  sameLength(first.argument, first.values, second.argument, second.values);
  const pairs = first.values.flatMap((value, place) => {
    const other = second.values[place] ?? null;
    if (value === null && other === null) return [];
    return [{ place, first: needed(first.argument, value), second: needed(second.argument, other) }];
  });
  if (pairs.length === 0) waitFor(first.argument);
  return pairs;
}
