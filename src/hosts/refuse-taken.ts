import type { WorkbookPlan } from "../workbook/plan";
import type { TakenNames } from "../workbook/taken-names";
import { HostError } from "./port";

/** Sentences about a name that is used already, by what it would have named. */
export interface TakenWords {
  readonly sheet: (name: string) => string;
  readonly table: (name: string) => string;
  readonly name: (name: string) => string;
}

/** Stops before anything is written when the workbook uses a name of the plan already. Tables count as names. */
export function refuseTaken(plan: WorkbookPlan, taken: TakenNames, say: TakenWords): void {
  const tables = plan.sheets.flatMap((sheet) => sheet.tables);
  const tablesAndNames = [...taken.tables, ...taken.names];
  refuse(plan.sheets, taken.sheets, say.sheet);
  refuse(tables, tablesAndNames, say.table);
  refuse(plan.names, tablesAndNames, say.name);
}

function refuse(
  wanted: readonly { readonly name: string }[],
  taken: readonly string[],
  sentence: (name: string) => string,
): void {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  const double = wanted.find(({ name }) => used.has(name.toLowerCase()));
  if (double) throw new HostError(sentence(double.name), "NameTaken");
}
