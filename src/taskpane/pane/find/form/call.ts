import type { Argument } from "../../../../functions/frame/arguments";
import type { CellOut, Matrix, RawArgument } from "../../../../functions/frame/cell";
import type { WorksheetFunction } from "../../../../functions/frame/declaration";
import { namespace } from "../../../../functions/frame/formula-text";
import { runFunction } from "../../../../functions/frame/run";
import { isNeeded, readEntry, type Entries, type GivenArgument } from "./entry";

/** A call as the boxes have it now: its formula, and its answer as soon as nothing needed is missing. */
export interface Call {
  readonly given: ReadonlyMap<string, GivenArgument>;
  readonly raw: readonly RawArgument[];
  readonly formula: string;
  /** Needed arguments that nothing was given for. */
  readonly missing: readonly string[];
  readonly answer?: Matrix<CellOut> | undefined;
}

export function callOf(fn: WorksheetFunction, entries: Entries): Call {
  const args = Object.entries<Argument>(fn.args);
  const given = new Map(args.map(([name, argument]) => [name, readEntry(name, argument, entries[name])]));
  const missing = args
    .filter(([name, argument]) => isNeeded(argument) && !given.get(name)?.given)
    .map(([name]) => name);
  const raw = [...given.values()].map((one) => one.raw);
  return {
    given,
    raw,
    missing,
    formula: formulaText(
      fn,
      [...given.values()].map(({ formula }) => formula),
    ),
    answer: missing.length === 0 ? runFunction(fn, raw) : undefined,
  };
}

/** Arguments left out at the end are not written; those in between leave their commas. */
function formulaText(fn: WorksheetFunction, parts: readonly string[]): string {
  const last = parts.reduce((found, part, index) => (part === "" ? found : index), -1);
  return `=${namespace}.${fn.name}(${parts.slice(0, last + 1).join(", ")})`;
}

export interface Size {
  readonly rows: number;
  readonly columns: number;
}

export function sizeOfAnswer(answer: Matrix<CellOut>): Size {
  return { rows: answer.length, columns: answer[0]?.length ?? 0 };
}

export function fillsSeveral({ rows, columns }: Size): boolean {
  return rows * columns > 1;
}
