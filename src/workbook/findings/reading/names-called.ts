import { isFunction, tokenize } from "@borgar/fx";
import { allFunctions } from "../../../functions";
import { namespace } from "../../../functions/frame/formula-text";

const known = new Set(allFunctions.map(({ name }) => name));

/** How our names stand in formulas: as typed, or as files keep names that were unknown when they were written. */
const ours = new RegExp(`^(?:_xldudf_${namespace}_|(?:_xlfn\\.|_xll\\.)?${namespace}\\.)`, "i");

/** The name behind our namespace that a formula calls a function by; nothing where it is none of ours. */
export function ownNameIn(called: string): string | undefined {
  return ours.test(called) ? called.replace(ours, "").toUpperCase() : undefined;
}

/** The functions of ours that a formula calls, and the names that are like ours but are none of them. */
export function namesCalled(formula: string): {
  readonly known: readonly string[];
  readonly misspelled: readonly string[];
} {
  const names = tokenize(formula).flatMap((token) => (isFunction(token) ? (ownNameIn(token.value) ?? []) : []));
  return { known: names.filter((name) => known.has(name)), misspelled: names.filter((name) => !known.has(name)) };
}

/** Whether a formula calls one of our functions. */
export function callsOurs(formula: string): boolean {
  return new RegExp(`${namespace}[._]`, "i").test(formula) && namesCalled(formula).known.length > 0;
}

/**
 * A formula with our names as they are typed: without what files put before a name that was unknown to them, or the
 * workbook of another add-in that it was taken to belong to.
 */
export function asTyped(formula: string): string {
  if (!new RegExp(`_${namespace}_|_xl[a-z]+\\.${namespace}\\.|!${namespace}\\.`, "i").test(formula)) return formula;
  const written: string[] = [];
  for (const token of tokenize(formula)) {
    const name = isFunction(token) ? ownNameIn(token.value) : undefined;
    if (name === undefined) written.push(token.value);
    else {
      dropWorkbook(written);
      written.push(`${namespace}.${name}`);
    }
  }
  return written.join("");
}

/** Takes away "[2]!" or "'C:\\other.xlam'!" at the end of what is written. */
function dropWorkbook(written: string[]): void {
  if (written.at(-1) !== "!") return;
  written.pop();
  const last = written.pop();
  if (last === "]") written.splice(written.lastIndexOf("["));
}
