import { FormulaError } from "../../core/fault";
import { ArrivedError, type Argument } from "./arguments";
import { isMatrix, sizeOf, type CellIn, type CellOut, type Matrix, type RawArgument } from "./cell";
import type { OneValueFunction, TableFunction, WorksheetFunction } from "./declaration";
import { errorFor } from "./describe-fault";
import { errorFrom, Problem, readerFor, type Reader } from "./reading";

/** Rows of a sheet less one: a range this tall is a whole column, which the web version cannot hand over. */
export const mostRows = 1_048_575;

type Values = Record<string, unknown>;
type EachCell = OneValueFunction<Record<string, Argument>, unknown>;
type WholeTable = TableFunction<Record<string, Argument>, unknown>;

/** An argument given as a range where one cell is taken: it is worked through cell by cell. */
interface Moving {
  readonly reader: Reader;
  readonly cells: Matrix<CellIn>;
  readonly rows: number;
  readonly columns: number;
}

/** What is worked out once per function. */
interface Prepared {
  readonly readers: readonly Reader[];
  /** What compute receives of arguments that are left out; a copy of it takes the others. */
  readonly leftOut: Values;
}

const preparedOf = new WeakMap<WorksheetFunction, Prepared>();

/**
 * Calls a worksheet function the way a sheet does. Never throws: whatever goes wrong comes back as an error cell.
 *
 * @param raw one entry per argument: a cell, a range, or nothing where it is left out
 * @returns a rectangle of cells, 1 × 1 for a single answer
 */
export function runFunction(fn: WorksheetFunction, raw: readonly RawArgument[]): CellOut[][] {
  try {
    const { readers, leftOut } = prepared(fn);
    const values = { ...leftOut };
    if (fn.returns.shape === "one" && !hasRange(raw)) {
      const stuck = readCells(readers, raw, values);
      return [[stuck ? stuck.cell : answer(fn as EachCell, values)]];
    }
    const { moving, problem } = readStill(fn, readers, raw, values);
    if (fn.returns.shape === "table") return problem ? [[problem.cell]] : tableOf(fn as WholeTable, values);
    if (moving.length === 0) return [[problem ? problem.cell : answer(fn as EachCell, values)]];
    return runEachCell(fn as EachCell, moving, problem, values);
  } catch (thrown) {
    return [[errorFrom(thrown)]];
  }
}

/** The values compute would receive for a call of single cells, for showing the working. Throws faults. */
export function readValues(fn: WorksheetFunction, raw: readonly RawArgument[]): Values {
  const values: Values = {};
  prepared(fn).readers.forEach((reader, index) => {
    const value = reader.readRange(raw[index]);
    if (value instanceof Problem) throw new ArrivedError(value.cell);
    values[reader.name] = value;
  });
  return values;
}

function prepared(fn: WorksheetFunction): Prepared {
  let known = preparedOf.get(fn);
  if (!known) {
    const readers = Object.entries<Argument>(fn.args).map(([name, argument]) => readerFor(name, argument));
    known = { readers, leftOut: Object.fromEntries(readers.map(({ name, whenBlank }) => [name, whenBlank])) };
    preparedOf.set(fn, known);
  }
  return known;
}

function hasRange(raw: readonly RawArgument[]): boolean {
  for (const given of raw) if (typeof given === "object" && isMatrix(given)) return true;
  return false;
}

/** Reads a call of single cells: most calls of a sheet are. */
function readCells(readers: readonly Reader[], raw: readonly RawArgument[], values: Values): Problem | undefined {
  let problem: Problem | undefined;
  for (let index = 0; index < readers.length; index++) {
    const reader = readers[index] as Reader; // within bounds
    const given = (raw[index] ?? null) as CellIn; // no matrix among them
    if (given === null && reader.mayBeLeftOut) continue;
    const value = readGiven(reader, given);
    if (value instanceof Problem) problem = Problem.worse(problem, value);
    else if (value !== reader.whenBlank) values[reader.name] = value;
  }
  return problem;
}

/** Reads every argument that is the same for all answers and sets the ranges aside. */
function readStill(fn: WorksheetFunction, readers: readonly Reader[], raw: readonly RawArgument[], values: Values) {
  const moving: Moving[] = [];
  let problem: Problem | undefined;
  let index = 0;
  for (const reader of readers) {
    const given = raw[index++];
    const range = isMatrix(given) ? rangeOf(reader, given) : undefined;
    if (range && reader.takesOneCell && range.rows * range.columns > 1) {
      if (fn.returns.shape === "table") refuseRange(range);
      values[reader.name] = undefined;
      moving.push(range);
      continue;
    }
    const value = isMatrix(given) ? reader.readRange(given) : readGiven(reader, given ?? null);
    if (value instanceof Problem) problem = Problem.worse(problem, value);
    values[reader.name] = value;
  }
  return { moving, problem };
}

function readGiven(reader: Reader, cell: CellIn): unknown {
  return reader.takesOneCell ? reader.readCell(cell) : reader.readRange(cell);
}

function rangeOf(reader: Reader, cells: Matrix<CellIn>): Moving {
  if (cells.length > mostRows) {
    throw new FormulaError({ kind: "tooLarge", argument: reader.name, received: cells.length, max: mostRows });
  }
  return { reader, cells, rows: cells.length, columns: cells[0]?.length ?? 0 };
}

function tableOf(fn: WholeTable, values: Values): CellOut[][] {
  return fn.value(fn.compute(values), values).map((row) => row.map(leaving));
}

function runEachCell(fn: EachCell, moving: readonly Moving[], stuck: Problem | undefined, values: Values): CellOut[][] {
  const { rows, columns } = broadcastSize(moving);
  // Sized beforehand: an array that grows by push keeps room for 16 more, which a million rows pay for.
  const out = new Array<CellOut[]>(rows);
  for (let row = 0; row < rows; row++) {
    const cells = new Array<CellOut>(columns);
    // compute gets the same object for every cell, with other values in it: results must not hold on to it.
    for (let column = 0; column < columns; column++) {
      const problem = readMoving(moving, row, column, stuck, values);
      cells[column] = problem ? problem.cell : answer(fn, values);
    }
    out[row] = cells;
  }
  return out;
}

function readMoving(
  moving: readonly Moving[],
  row: number,
  column: number,
  stuck: Problem | undefined,
  values: Values,
): Problem | undefined {
  let problem = stuck;
  for (const { reader, cells, rows, columns } of moving) {
    const cell = cells[rows === 1 ? 0 : row]?.[columns === 1 ? 0 : column] ?? null;
    const value = reader.readCell(cell);
    if (value instanceof Problem) problem = Problem.worse(problem, value);
    else values[reader.name] = value;
  }
  return problem;
}

function answer(fn: EachCell, values: Values): CellOut {
  try {
    return leaving(fn.value(fn.compute(values), values));
  } catch (thrown) {
    return errorFrom(thrown);
  }
}

/** The size of the answer: every range of one-cell arguments has this height and width, or 1. */
function broadcastSize(moving: readonly Moving[]): { rows: number; columns: number } {
  const tallest = moving.reduce((most, range) => (range.rows > most.rows ? range : most));
  const widest = moving.reduce((most, range) => (range.columns > most.columns ? range : most));
  for (const range of moving) {
    if (range.rows !== 1 && range.rows !== tallest.rows) refuseSizes(tallest, range);
    if (range.columns !== 1 && range.columns !== widest.columns) refuseSizes(widest, range);
  }
  return { rows: tallest.rows, columns: widest.columns };
}

function refuseRange({ reader, cells }: Moving): never {
  throw new FormulaError({ kind: "oneCellOnly", argument: reader.name, received: sizeOf(cells) });
}

function refuseSizes(first: Moving, second: Moving): never {
  throw new FormulaError({
    kind: "sizesDiffer",
    first: { argument: first.reader.name, size: sizeOf(first.cells) },
    second: { argument: second.reader.name, size: sizeOf(second.cells) },
  });
}

/** Nothing but finite numbers, text, booleans and errors leaves a function. */
function leaving(cell: CellOut): CellOut {
  if (typeof cell !== "number") return cell;
  if (Number.isFinite(cell)) return cell === 0 ? 0 : cell;
  return errorFor({ kind: "noSolution", because: "These inputs have no finite answer: check them for zeros." });
}
