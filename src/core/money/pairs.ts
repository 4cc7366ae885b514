import { countInWords } from "../count-in-words";
import { refuse } from "../fault";

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
  sameLength(first, second);
  const pairs = first.values.flatMap((value, place) => {
    const other = second.values[place] ?? null;
    if (value === null && other === null) return [];
    return [{ place, first: present(first, value), second: present(second, other) }];
  });
  if (pairs.length === 0) refuse({ kind: "waiting", argument: first.argument });
  return pairs;
}

function present({ argument }: Listed, value: number | null): number {
  return value ?? refuse({ kind: "waiting", argument });
}

function sameLength(first: Listed, second: Listed): void {
  if (first.values.length === second.values.length) return;
  refuse({ kind: "sizesDiffer", first: sized(first), second: sized(second) });
}

function sized({ argument, values }: Listed) {
  return { argument, size: countInWords(values.length, "cell") };
}
