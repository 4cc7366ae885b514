import { allFunctions } from "../../../functions";
import { answersExample } from "../../../functions/frame/answers-example";
import { families, type Family } from "../../../functions/frame/declaration";
import type { HostFacts, WorkbookHost } from "../../../hosts/port";

/** Whether Loamsheet itself is in order. */
export interface SelfCheck {
  readonly facts: HostFacts;
  readonly declared: number;
  /** Functions of ours that the spreadsheet was not given. */
  readonly absent: readonly string[];
  /** A function of each family was worked out; those that did not give what is printed. */
  readonly families: number;
  readonly wrong: readonly string[];
}

/** Asks the spreadsheet what it knows and works out one example a family. Fails only with what the host says. */
export async function checkOurselves(host: WorkbookHost): Promise<SelfCheck> {
  const facts = await host.facts();
  const known = new Set(facts.functions);
  const names = Object.keys(families) as Family[]; // its own keys
  const examples = names.flatMap((family) => allFunctions.find((fn) => fn.family === family) ?? []);
  return {
    facts,
    declared: allFunctions.length,
    absent: allFunctions.filter(({ name }) => !known.has(name)).map(({ name }) => name),
    families: examples.length,
    wrong: examples.filter((fn) => !answersExample(fn)).map(({ name }) => name),
  };
}
