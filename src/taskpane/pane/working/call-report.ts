import { ArrivedError, type Argument } from "../../../functions/frame/arguments";
import { toMatrix, type CellIn, type CellOut, type Matrix, type RawArgument } from "../../../functions/frame/cell";
import type { WorksheetFunction } from "../../../functions/frame/declaration";
import { explain, type Explanation } from "../../../functions/frame/explain";
import { runFunction } from "../../../functions/frame/run";
import { HostError, type HostValue } from "../../../hosts/port";
import { words } from "../../words";
import { withUnit } from "../number-text";
import { argumentValue } from "../formula/argument-value";
import { CannotShow } from "../formula/cannot-show";
import type { OwnCall } from "../formula/parse-formula";
import type { Node } from "../formula/native-call";
import { numberOf } from "../formula/operators";
import { originOf } from "./origin";
import { cellCount, firstCell, type Offset } from "../formula/rectangle";
import type { Reader } from "../formula/references";

const say = words.working;

/** What went into one argument. */
export interface ArgumentLine {
  readonly name: string;
  readonly unit: string;
  readonly value: string | number | boolean;
  /** Where it comes from: typed, an address, a name, a calculation. */
  readonly from: string;
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
  /** Whether it is the whole formula, with nothing around it. */
  readonly isWhole: boolean;
  /** Where it stands in the formula, and what its answer is part of. */
  readonly remarks: readonly string[];
}

interface Place {
  readonly formula: string;
  readonly offset: Offset;
  /** Whether the call is the whole formula. */
  readonly isWhole: boolean;
}

interface Given {
  readonly raw: RawArgument;
  /** Why it could not be worked out here. */
  readonly why?: string;
}

export async function reportCall(call: OwnCall, place: Place, reader: Reader): Promise<CallReport> {
  const { fn, node, within } = call;
  const isWhole = place.isWhole && !within;
  const remarks = within ? [say.standsIn(within.fn.name, within.argument)] : [];
  const given = await Promise.all(node.arguments.map((argument) => giveArgument(argument, reader)));
  const went = await Promise.all(
    Object.entries<Argument>(fn.args).map(async ([name, argument], index): Promise<ArgumentLine> => {
      const from = await originFor(node.arguments[index], place.formula, reader);
      return { name, unit: argument.unit, value: shownValue(given[index], argument), from };
    }),
  );
  const stuck = given.find(({ why }) => why !== undefined)?.why;
  if (stuck !== undefined) return { fn, went, outcome: { because: stuck }, isWhatShows: false, isWhole, remarks };
  const raw = given.map((one) => one.raw);
  const answers = runFunction(fn, raw);
  const at = isWhole ? place.offset : { row: 0, column: 0 };
  const several = spills(fn, raw);
  if (several) remarks.push(severalRemark(answers, at, isWhole));
  const isTable = fn.returns.shape === "table" && cellCount(answers) > 1;
  const taken = isTable ? await takenFrom(call, place, answers, reader) : at;
  if (isTable) remarks.push(tableRemark(answers, taken));
  const cell = taken && answers[taken.row]?.[taken.column];
  const answer = typeof cell === "object" || (several && !isWhole) ? undefined : cell;
  const shows = reader.selected.values[0]?.[0] ?? null;
  const outcome = explain(fn, several ? raw.map((one, index) => cellFor(fn, index, one, at)) : raw);
  return { fn, went, outcome, answer, isWhatShows: isSame(answer, shows), isWhole, remarks };
}

/** An argument that cannot be worked out here does not hide the others. */
async function giveArgument(node: Node, reader: Reader): Promise<Given> {
  try {
    return { raw: await argumentValue(node, reader) };
  } catch (thrown) {
    return { raw: null, why: sentenceFor(thrown) };
  }
}

async function originFor(node: Node, formula: string, reader: Reader): Promise<string> {
  try {
    return await originOf(node, formula, reader);
  } catch (thrown) {
    return sentenceFor(thrown);
  }
}

function sentenceFor(thrown: unknown): string {
  if (thrown instanceof CannotShow || thrown instanceof HostError) return thrown.message;
  if (thrown instanceof ArrivedError) return say.arrived(thrown.cell.code);
  throw thrown;
}

function severalRemark(answers: Matrix<CellOut>, at: Offset, isWhole: boolean): string {
  const count = cellCount(answers);
  return isWhole ? say.oneOfMany(at.row * (answers[0]?.length ?? 1) + at.column + 1, count) : say.firstOfMany(count);
}

/**
 * The cell of a table that the selected cell shows: its own place in it, or the one that INDEX names. Nothing where the
 * formula takes more of it than one cell.
 */
async function takenFrom(
  { takenBy }: OwnCall,
  place: Place,
  answers: Matrix<CellOut>,
  reader: Reader,
): Promise<Offset | undefined> {
  if (!takenBy) return place.isWhole ? place.offset : undefined;
  const [, first, second] = takenBy.arguments;
  try {
    const counted = first ? numberOf(await argumentValue(first, reader)) : 0;
    // A single row is counted along, a single column down.
    if (!second && answers.length === 1) return cellAt(1, counted);
    if (!second) return answers[0]?.length === 1 ? cellAt(counted, 1) : undefined;
    return cellAt(counted, numberOf(await argumentValue(second, reader)));
  } catch (thrown) {
    if (thrown instanceof CannotShow || thrown instanceof ArrivedError) return undefined;
    throw thrown;
  }
}

/** Row 0 or column 0 stands for all of them. */
function cellAt(row: number, column: number): Offset | undefined {
  return row < 1 || column < 1 ? undefined : { row: Math.trunc(row) - 1, column: Math.trunc(column) - 1 };
}

/** Which cell of the table it is, by number and by the heads of its row and column. */
function tableRemark(answers: Matrix<CellOut>, taken: Offset | undefined): string {
  if (!taken) return say.partOfTable(answers.length, answers[0]?.length ?? 0);
  const { row, column } = taken;
  const heads = [answers[row]?.[0], answers[0]?.[column]].filter((head) => typeof head === "string" && head !== "");
  return say.cellOfTable(row + 1, column + 1, row > 0 && column > 0 ? heads.map(String) : []);
}

/** Spreadsheets keep about 15 digits of what a function gives. */
export function isSame(answer: CellOut | undefined, shows: HostValue): boolean {
  if (typeof answer !== "number" || typeof shows !== "number") return answer !== undefined && answer === shows;
  return Math.abs(answer - shows) <= 1e-9 * Math.max(Math.abs(answer), Math.abs(shows));
}

/** A range in the place of a single value gives several answers. */
function spills(fn: WorksheetFunction, raw: readonly RawArgument[]): boolean {
  return fn.returns.shape === "one" && raw.some((one, index) => takesOne(fn, index) && cellCount(one) > 1);
}

function takesOne(fn: WorksheetFunction, index: number): boolean {
  const argument = Object.values<Argument>(fn.args)[index];
  const inner = argument?.shape === "optional" ? argument.inner : argument;
  return inner?.shape === "one";
}

/** The cell of a range that one of several answers is worked out with. */
function cellFor(fn: WorksheetFunction, index: number, raw: RawArgument, { row, column }: Offset): RawArgument {
  if (!takesOne(fn, index) || cellCount(raw) <= 1) return raw;
  const cells = toMatrix(raw);
  const line = cells[cells.length === 1 ? 0 : row] ?? [];
  return line[line.length === 1 ? 0 : column] ?? null;
}

function shownValue(given: Given | undefined, argument: Argument): string | number | boolean {
  if (given?.why !== undefined) return say.notHere;
  const size = cellCount(given?.raw);
  const first = firstCell(given?.raw);
  const many = argument.shape === "many" || (argument.shape === "optional" && argument.inner.shape === "many");
  if (size > 1)
    return many ? say.severalValues(size, argument.unit) : say.firstOf(size, cellText(first, argument.unit));
  if (first === null || first === "") return argument.shape === "optional" ? argument.whenBlankSays : say.blank;
  return typeof first === "object" ? first.code : first;
}

function cellText(cell: CellIn, unit: string): string {
  if (cell === null || cell === "") return say.blank;
  return typeof cell === "object" ? cell.code : withUnit(cell, unit);
}
