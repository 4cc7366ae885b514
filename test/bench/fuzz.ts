import fc from "fast-check";
import { allFunctions } from "../../src/functions";
import type { WorksheetFunction } from "../../src/functions/frame";
import type { CellOut, RawArgument } from "../../src/functions/frame/cell";
import { runFunction } from "../../src/functions/frame/run";
import { answerTroubles } from "../property/answer-troubles";
import { anyCall } from "../property/any-call";

/**
 * Calls every worksheet function with anything a sheet may hand over, many more times than the tests do, and prints
 * what came of it. Run by hand: npx tsx test/bench/fuzz.ts [calls of each] [function …]
 *
 * Times are those of the processor, so that a busy machine does not tell; by cell where a range made one call answer many.
 */
const slowestMs = 50;
/** One call in this many is made twice, to see whether it answers the same. */
const againEvery = 10;
/** So many calls are held at a time: large ranges of words fill the memory. */
const atATime = 250;

interface Outcome {
  readonly name: string;
  readonly calls: number;
  readonly cells: number;
  /** Calls whose first cell is no error. */
  readonly answered: string;
  readonly "slowest ms a cell": number;
  readonly troubles: number;
}

function fuzz(fn: WorksheetFunction, calls: number, seed: number, tell: (line: string) => void): Outcome {
  let [cells, answered, slowest, troubles] = [0, 0, 0, 0];
  const report = (call: unknown, what: string) => {
    troubles += 1;
    if (troubles <= 3) tell(`${fn.name}: ${what} of ${JSON.stringify(call)}`);
  };
  callsOf(fn, calls, seed, (call, index) => {
    const [answer, took] = timed(fn, call);
    const size = answer.length * (answer[0]?.length ?? 1);
    const each = fn.returns.shape === "table" ? took : took / size;
    slowest = Math.max(slowest, each);
    cells += size;
    if (typeof answer[0]?.[0] !== "object") answered += 1;
    const wrong = answerTroubles(answer)[0];
    if (wrong !== undefined) report(call, wrong);
    if (each > slowestMs) report(call, `${each.toFixed(0)} ms`);
    if (index % againEvery === 0 && JSON.stringify(runFunction(fn, call)) !== JSON.stringify(answer)) {
      report(call, "another answer the second time");
    }
  });
  const share = `${Math.round((100 * answered) / calls)} %`;
  return { name: fn.name, calls, cells, answered: share, "slowest ms a cell": Number(slowest.toFixed(1)), troubles };
}

/** Time of the processor; clearing up after earlier calls counts in it, so a slow call gets two more tries. */
function timed(fn: WorksheetFunction, call: readonly RawArgument[], tries = 3): [CellOut[][], number] {
  const begun = process.cpuUsage();
  const answer = runFunction(fn, call);
  const took = process.cpuUsage(begun).user / 1000;
  return [answer, took > slowestMs && tries > 1 ? Math.min(took, timed(fn, call, tries - 1)[1]) : took];
}

function callsOf(
  fn: WorksheetFunction,
  calls: number,
  seed: number,
  make: (call: readonly RawArgument[], index: number) => void,
): void {
  const kind = anyCall(fn, { largeRanges: true });
  for (let done = 0; done < calls; done += atATime) {
    const some = fc.sample(kind, { numRuns: Math.min(atATime, calls - done), seed: seed + done * 1000 });
    some.forEach((call, index) => make(call, done + index));
  }
}

function run(calls: number, names: readonly string[]): number {
  const chosen = allFunctions.filter(({ name }) => names.length === 0 || names.includes(name));
  const outcomes = chosen.map((fn, index) => fuzz(fn, calls, 4000 + index, (line) => console.log(line.slice(0, 400))));
  console.table(outcomes);
  const troubles = outcomes.reduce((sum, outcome) => sum + outcome.troubles, 0);
  const all = outcomes.reduce((sum, outcome) => sum + outcome.calls, 0);
  console.log(`${chosen.length} functions, ${all.toLocaleString("en-US")} calls, ${troubles} troubles`);
  return troubles;
}

const [calls = "10000", ...names] = process.argv.slice(2);
process.exit(run(Number(calls), names) === 0 ? 0 : 1);
