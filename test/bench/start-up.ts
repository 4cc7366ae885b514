import { execFileSync } from "node:child_process";
import path from "node:path";
import type { Figure } from "./figure";

const built = path.resolve(__dirname, "../../dist/functions.js");

/** What a runtime for functions alone does at its start, in a process of its own: nothing but the name to register with. */
const start = `
  let registered = 0;
  globalThis.CustomFunctions = { associate: () => { registered += 1; } };
  const begun = performance.now();
  require(${JSON.stringify(built)});
  console.log(JSON.stringify([performance.now() - begun, registered]));
`;

/** Median of nine starts of functions.js, from reading the file until every function is registered. */
export function startUp(): Figure[] {
  const starts = Array.from(
    { length: 9 },
    () => JSON.parse(execFileSync(process.execPath, ["-e", start], { encoding: "utf8" })) as [number, number],
  ).sort(([one], [other]) => one - other);
  const [took, registered] = starts[4] ?? [Number.NaN, 0];
  return [{ what: `functions.js, start-up with ${registered} functions`, value: took, unit: "ms", limit: 60 }];
}
