import type { Cited } from "../../reference/table";
import { FormulaError } from "../../core/fault";
import { ArrivedError } from "./arguments";
import type { RawArgument } from "./cell";
import type { WorkingLine, WorksheetFunction } from "./declaration";
import { describeFault } from "./describe-fault";
import { readValues } from "./run";

/** The steps and citations behind one answer, or the sentence that says why there is none. */
export type Explanation =
  | { readonly working: readonly WorkingLine[]; readonly cites: readonly Cited[]; readonly cautions: readonly string[] }
  | { readonly because: string };

/** Shows the working of a call whose arguments are single cells (lists excepted). */
export function explain(fn: WorksheetFunction, raw: readonly RawArgument[]): Explanation {
  try {
    const values = readValues(fn, raw);
    const result: unknown = fn.compute(values);
    return {
      working: fn.working(result, values),
      cites: fn.cites?.(result) ?? [],
      cautions: fn.cautions ?? [],
    };
  } catch (thrown) {
    if (thrown instanceof FormulaError) return { because: describeFault(thrown.fault) };
    if (thrown instanceof ArrivedError)
      return { because: thrown.cell.message ?? `One of its cells shows ${thrown.cell.code}: mend that cell first.` };
    throw thrown;
  }
}
