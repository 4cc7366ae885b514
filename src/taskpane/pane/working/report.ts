import { ArrivedError } from "../../../functions/frame/arguments";
import type { Argument } from "../../../functions/frame/arguments";
import type { RawArgument } from "../../../functions/frame/cell";
import type { WorksheetFunction } from "../../../functions/frame/declaration";
import { explain, type Explanation } from "../../../functions/frame/explain";
import { runFunction } from "../../../functions/frame/run";
import { HostError, type HostValue } from "../../../hosts/port";
import { words } from "../../words";
import { argumentValue } from "./argument-value";
import { CannotShow } from "./cannot-show";
import { holdsOwnCall, isPlainValue, ownCalls, parseFormula, textOf, type OwnCall } from "./formula";
import { cellCount, firstCell } from "./rectangle";
import { isErrorCode, type Reader, type ReadingHost } from "./references";

const say = words.working;

/** What went into one argument. */
export interface ArgumentLine {
  readonly name: string;
  readonly unit: string;
  readonly value: string | number | boolean;
  /** The reference or calculation behind the value, as it stands in the formula. */
  readonly from?: string | undefined;
}

/** The working of one call, or the sentence that says why there is none. */
export interface CallReport {
  readonly fn: WorksheetFunction;
  readonly went: readonly ArgumentLine[];
  readonly outcome: Explanation;
  /** What the call gives by itself; nothing where it gives no answer. */
  readonly answer?: number | string | boolean | undefined;
  /** Whether that is also what the cell shows: the rest of the formula then changes nothing. */
  readonly isWhatShows: boolean;
  /** Said when the shown answer is the first of several, or other calls stand in the arguments. */
  readonly remarks: readonly string[];
}

/** What the selected cell shows and how it came about. */
export interface CellReport {
  readonly address: string;
  readonly shows: HostValue;
  readonly isAnError: boolean;
  /** The sentence behind an error, where the host knows it. */
  readonly message?: string | undefined;
  readonly calls: readonly CallReport[];
  /** Said in place of the working when the cell holds none of our calls. */
  readonly because?: string;
}

/** Reads the selected cell and works out again what stands in it. Fails only with what the host says. */
export async function reportSelection(host: ReadingHost): Promise<CellReport> {
  const selected = await host.readSelection();
  const shows = selected.values[0]?.[0] ?? null;
  const about = { address: selected.address, shows, isAnError: isErrorCode(shows), message: selected.message };
  const formula = selected.formulas[0]?.[0] ?? "";
  if (typeof formula !== "string" || !formula.startsWith("=")) {
    return { ...about, calls: [], because: shows === null || shows === "" ? say.emptyCell : say.typedIn };
  }
  const parsed = parseFormula(formula);
  const calls = ownCalls(parsed);
  if (calls.length === 0) return { ...about, calls: [], because: parsed ? say.notOurs : say.unreadable };
  return { ...about, calls: await Promise.all(calls.map((call) => reportCall(call, formula, { host, selected }))) };
}

async function reportCall({ fn, node }: OwnCall, formula: string, reader: Reader): Promise<CallReport> {
  const remarks = node.arguments.some(holdsOwnCall) ? [say.innerCalls] : [];
  try {
    const raw = await Promise.all(node.arguments.map((argument) => argumentValue(argument, reader)));
    if (spills(fn, raw)) remarks.push(say.firstOfMany);
    const went = Object.entries<Argument>(fn.args).map(([name, argument], index): ArgumentLine => {
      const written = node.arguments[index];
      const from = isPlainValue(written) ? undefined : textOf(written, formula);
      return { name, unit: argument.unit, value: shownValue(raw[index], argument), from };
    });
    const [first] = runFunction(fn, raw)[0] ?? [];
    const answer = typeof first === "object" ? undefined : first;
    const isWhatShows = answer !== undefined && isSame(answer, reader.selected.values[0]?.[0] ?? null);
    return { fn, went, outcome: explain(fn, raw), answer, isWhatShows, remarks };
  } catch (thrown) {
    return { fn, went: [], outcome: { because: sentenceFor(thrown) }, isWhatShows: false, remarks };
  }
}

/** Spreadsheets keep about 15 digits of what a function gives. */
function isSame(answer: number | string | boolean, shows: HostValue): boolean {
  if (typeof answer !== "number" || typeof shows !== "number") return answer === shows;
  return Math.abs(answer - shows) <= 1e-9 * Math.max(Math.abs(answer), Math.abs(shows));
}

function sentenceFor(thrown: unknown): string {
  if (thrown instanceof CannotShow || thrown instanceof HostError) return thrown.message;
  if (thrown instanceof ArrivedError) return say.arrived(thrown.cell.code);
  throw thrown;
}

/** A range in the place of a single value gives several answers. */
function spills(fn: WorksheetFunction, raw: readonly RawArgument[]): boolean {
  if (fn.returns.shape !== "one") return false;
  return Object.values<Argument>(fn.args).some((argument, index) => {
    const one = argument.shape === "one" || (argument.shape === "optional" && argument.inner.shape === "one");
    return one && cellCount(raw[index]) > 1;
  });
}

function shownValue(raw: RawArgument, argument: Argument): string | number | boolean {
  const size = cellCount(raw);
  const first = firstCell(raw);
  const many = argument.shape === "many" || (argument.shape === "optional" && argument.inner.shape === "many");
  if (size > 1) return many ? say.severalValues(size) : say.firstOf(size, String(first ?? ""));
  if (first === null || first === "") return argument.shape === "optional" ? argument.whenBlankSays : say.blank;
  return typeof first === "object" ? first.code : first;
}
