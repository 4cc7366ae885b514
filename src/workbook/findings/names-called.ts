import { isFunction, tokenize } from "@borgar/fx";
import { allFunctions } from "../../functions";
import { namespace } from "../../functions/frame/formula-text";

const known = new Set(allFunctions.map(({ name }) => name));

/** How our names stand in formulas: as typed, or as some files keep them. */
const ours = new RegExp(`^(?:_xldudf_${namespace}_|(?:_xlfn\\.)?${namespace}\\.)`, "i");

/** The functions of ours that a formula calls, and the names that are like ours but are none of them. */
export function namesCalled(formula: string): {
  readonly known: readonly string[];
  readonly misspelled: readonly string[];
} {
  const names = tokenize(formula)
    .filter((token) => isFunction(token) && ours.test(token.value))
    .map(({ value }) => value.replace(ours, "").toUpperCase());
  return { known: names.filter((name) => known.has(name)), misspelled: names.filter((name) => !known.has(name)) };
}

/** Whether a formula calls one of our functions. */
export function callsOurs(formula: string): boolean {
  return new RegExp(`${namespace}[._]`, "i").test(formula) && namesCalled(formula).known.length > 0;
}
