import type { Expression, Text } from "../formula/expression";
import type { Entry } from "./block";
import type { Allow } from "./cell";

interface Line {
  readonly key: string;
  readonly label: Text;
  readonly unit?: string;
  readonly format?: string;
  readonly says?: Text;
  readonly name?: string;
}

/** A line with a value to fill in or write over. */
export function typedEntry({ unit = "", ...line }: Line, start: string | number | null, allow?: Allow): Entry {
  return { ...line, unit, value: { kind: "input", start, ...(allow && { allow }) } };
}

/** A line that is worked out. */
export function computedEntry({ unit = "", ...line }: Line, formula: Expression): Entry {
  return { ...line, unit, value: { kind: "computed", formula } };
}

/** A line that is put into words. */
export function wordsEntry({ unit = "", ...line }: Line, formula: Expression): Entry {
  return { ...line, unit, value: { kind: "computed", formula, words: true } };
}
