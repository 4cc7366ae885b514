import type { Cited } from "../../reference/table";

/** A number with what it rests on: nothing where the person gave it. */
export interface CitedValue {
  readonly value: number;
  readonly cited: readonly Cited[];
}

/** The number that a table prints under a key. */
export function printedValue<Key extends string>(
  { rows }: { readonly rows: readonly (Cited & { readonly key: Key; readonly value: number })[] },
  key: Key,
): CitedValue {
  const cited = rows.filter((row) => row.key === key);
  return { value: cited[0]?.value ?? Number.NaN, cited };
}
