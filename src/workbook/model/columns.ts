import type { Limit } from "../../core/limit";
import type { Expression, Term } from "../formula/expression";
import type { Allow } from "./cell";
import type { ModelRule } from "./rule";
import type { ComputedColumn, InputColumn } from "./table";

interface Facts {
  readonly width: number;
  readonly format?: string;
  readonly note?: string;
  readonly rules?: readonly ModelRule[];
  readonly whole?: Term;
}

/** A column of numbers to fill in. */
export function typedNumber(
  values: readonly (number | null)[],
  facts: Facts & { readonly allow?: Allow },
): InputColumn {
  return { kind: "input", words: false, values, ...facts };
}

/** A column of words to fill in. */
export function typedWords(values: readonly (string | null)[], facts: Facts & { readonly allow?: Allow }): InputColumn {
  return { kind: "input", words: true, values, ...facts };
}

export function computed(formula: Expression, facts: Facts): ComputedColumn {
  return { kind: "computed", words: false, formula, ...facts };
}

export function computedWords(formula: Expression, facts: Facts): ComputedColumn {
  return { kind: "computed", words: true, formula, ...facts };
}

/** Numbers inside the range that our functions accept for the same quantity. */
export function within({ min, max, unit }: Limit, what: string): Allow {
  return { kind: "between", min, max, prompt: unit === "" ? `${what}.` : `${what}, ${unit}.` };
}

export function oneOf(words: Extract<Allow, { kind: "list" }>["words"], prompt: string): Allow {
  return { kind: "list", words, prompt };
}

/** One property of every row, as the values of a column. */
export function pick<Row, Key extends keyof Row>(rows: readonly Row[], key: Key): Row[Key][] {
  return rows.map((row) => row[key]);
}
