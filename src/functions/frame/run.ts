import { FormulaError, type Fault } from "../../core/fault";
import { ArrivedError, type Argument, type OneArgument, type Present } from "./arguments";
import {
  isBlank,
  isCellError,
  sizeOf,
  toMatrix,
  type CellError,
  type CellIn,
  type CellOut,
  type Matrix,
  type RawArgument,
} from "./cell";
import type { OneValueFunction, TableFunction, WorksheetFunction } from "./declaration";
import { errorFor } from "./describe-fault";

/** Rows of a sheet less one: a range this tall is a whole column, which the web version cannot hand over. */
export const mostRows = 1_048_575;

interface Slot {
  readonly name: string;
  readonly argument: Argument;
  readonly cells: Matrix<CellIn>;
  readonly rows: number;
  readonly columns: number;
}

/** What reading one argument gave: a value, a cell error to show, or a blank that is waited for. */
type Reading = { readonly value: unknown } | { readonly error: CellError } | { readonly waiting: string };

/**
 * Calls a worksheet function the way a sheet does. Never throws: whatever goes wrong comes back as an error cell.
 *
 * @param raw one entry per argument: a cell, a range, or nothing where it is left out
 * @returns a rectangle of cells, 1 × 1 for a single answer
 */
export function runFunction(fn: WorksheetFunction, raw: readonly RawArgument[]): CellOut[][] {
  try {
    const slots = slotsOf(fn, raw);
    return fn.returns.shape === "one"
      ? runEachCell(fn as OneValueFunction<Record<string, Argument>, unknown>, slots)
      : runOnce(fn as TableFunction<Record<string, Argument>, unknown>, slots);
  } catch (thrown) {
    return [[errorFrom(thrown)]];
  }
}

/** The values compute would receive for a call of single cells, for showing the working. Throws faults. */
export function readValues(fn: WorksheetFunction, raw: readonly RawArgument[]): Record<string, unknown> {
  const values: Record<string, unknown> = {};
  for (const slot of slotsOf(fn, raw)) {
    const reading = readSlot(slot, 0, 0);
    if ("error" in reading) throw new ArrivedError(reading.error);
    if ("waiting" in reading) throw new FormulaError({ kind: "waiting", argument: reading.waiting });
    values[slot.name] = reading.value;
  }
  return values;
}

function slotsOf(fn: WorksheetFunction, raw: readonly RawArgument[]): Slot[] {
  return Object.entries<Argument>(fn.args).map(([name, argument], index) => {
    const cells = toMatrix(raw[index]);
    const rows = cells.length;
    if (rows > mostRows) throw new FormulaError({ kind: "tooLarge", argument: name, received: rows, max: mostRows });
    return { name, argument, cells, rows, columns: cells[0]?.length ?? 0 };
  });
}

function runOnce(fn: TableFunction<Record<string, Argument>, unknown>, slots: readonly Slot[]): CellOut[][] {
  const values: Record<string, unknown> = {};
  for (const slot of slots) {
    if (takesOneCell(slot.argument) && slot.rows * slot.columns > 1) {
      throw new FormulaError({ kind: "oneCellOnly", argument: slot.name, received: sizeOf(slot.cells) });
    }
  }
  const problem = readRow(slots, 0, 0, values);
  if (problem) return [[problem]];
  return fn.value(fn.compute(values), values).map((row) => row.map(leaving));
}

function runEachCell(fn: OneValueFunction<Record<string, Argument>, unknown>, slots: readonly Slot[]): CellOut[][] {
  const { rows, columns } = broadcastSize(slots);
  const values: Record<string, unknown> = {};
  const still = slots.filter((slot) => !variesOver(slot));
  const moving = slots.filter(variesOver);
  for (const slot of slots) values[slot.name] = undefined;

  const stuck = readRow(still, 0, 0, values);
  const out: CellOut[][] = new Array(rows);
  for (let row = 0; row < rows; row++) {
    const cells: CellOut[] = new Array(columns);
    for (let column = 0; column < columns; column++) {
      // compute gets the same object for every cell, with other values in it: results must not hold on to it.
      cells[column] = stuck ?? oneCell(fn, moving, row, column, values);
    }
    out[row] = cells;
  }
  return out;
}

function oneCell(
  fn: OneValueFunction<Record<string, Argument>, unknown>,
  moving: readonly Slot[],
  row: number,
  column: number,
  values: Record<string, unknown>,
): CellOut {
  const problem = readRow(moving, row, column, values);
  if (problem) return problem;
  try {
    return leaving(fn.value(fn.compute(values), values));
  } catch (thrown) {
    return errorFrom(thrown);
  }
}

/**
 * Reads the arguments of one cell into values. An error that arrived wins over a value we refuse, and that over a
 * blank we wait for: half-filled rows stay quiet, spreadsheet errors pass through unchanged.
 */
function readRow(
  slots: readonly Slot[],
  row: number,
  column: number,
  values: Record<string, unknown>,
): CellError | undefined {
  let refused: CellError | undefined;
  let waiting: string | undefined;
  for (const slot of slots) {
    const reading = readSlot(slot, slot.rows === 1 ? 0 : row, slot.columns === 1 ? 0 : column);
    if ("value" in reading) values[slot.name] = reading.value;
    else if ("waiting" in reading) waiting ??= reading.waiting;
    else if (reading.error.message === undefined) return reading.error;
    else refused ??= reading.error;
  }
  if (refused) return refused;
  return waiting === undefined ? undefined : errorFor({ kind: "waiting", argument: waiting });
}

function readSlot(slot: Slot, row: number, column: number): Reading {
  const { argument, name } = slot;
  try {
    if (argument.shape === "optional") {
      const { inner } = argument;
      if (inner.shape === "one") return readOne(inner, slot.cells[row]?.[column] ?? null, name, argument.whenBlank);
      return allBlank(slot.cells) ? { value: argument.whenBlank } : { value: inner.readMany(slot.cells, name) };
    }
    if (argument.shape === "one") return readOne(argument, slot.cells[row]?.[column] ?? null, name);
    return { value: argument.readMany(slot.cells, name) };
  } catch (thrown) {
    if (thrown instanceof FormulaError && thrown.fault.kind === "waiting") return { waiting: thrown.fault.argument };
    return { error: errorFrom(thrown) };
  }
}

function readOne(argument: OneArgument<unknown>, cell: CellIn, name: string, whenBlank?: unknown): Reading {
  if (isCellError(cell)) return { error: { code: cell.code } };
  if (isBlank(cell) || (argument.zeroIsBlank && cell === 0)) {
    return whenBlank === undefined ? { waiting: name } : { value: whenBlank };
  }
  return { value: argument.read(cell as Present, name) };
}

function allBlank(cells: Matrix<CellIn>): boolean {
  return cells.every((row) => row.every(isBlank));
}

function takesOneCell(argument: Argument): boolean {
  return argument.shape === "one" || (argument.shape === "optional" && argument.inner.shape === "one");
}

function variesOver(slot: Slot): boolean {
  return takesOneCell(slot.argument) && (slot.rows > 1 || slot.columns > 1);
}

/** The size of the answer: every range of one-cell arguments has this height and width, or 1. */
function broadcastSize(slots: readonly Slot[]): { rows: number; columns: number } {
  const moving = slots.filter(variesOver);
  const tallest = moving.reduce<Slot | undefined>(
    (most, slot) => (slot.rows > (most?.rows ?? 1) ? slot : most),
    undefined,
  );
  const widest = moving.reduce<Slot | undefined>(
    (most, slot) => (slot.columns > (most?.columns ?? 1) ? slot : most),
    undefined,
  );
  const size = { rows: tallest?.rows ?? 1, columns: widest?.columns ?? 1 };
  for (const slot of moving) {
    if (slot.rows !== 1 && slot.rows !== size.rows) refuseSizes(tallest ?? slot, slot);
    if (slot.columns !== 1 && slot.columns !== size.columns) refuseSizes(widest ?? slot, slot);
  }
  return size;
}

function refuseSizes(first: Slot, second: Slot): never {
  const fault: Fault = {
    kind: "sizesDiffer",
    first: { argument: first.name, size: sizeOf(first.cells) },
    second: { argument: second.name, size: sizeOf(second.cells) },
  };
  throw new FormulaError(fault);
}

/** Nothing but finite numbers, text, booleans and errors leaves a function. */
function leaving(cell: CellOut): CellOut {
  if (typeof cell !== "number") return cell;
  if (Number.isFinite(cell)) return cell === 0 ? 0 : cell;
  return errorFor({ kind: "noSolution", because: "These inputs have no finite answer: check them for zeros." });
}

function errorFrom(thrown: unknown): CellError {
  if (thrown instanceof FormulaError) return errorFor(thrown.fault);
  if (thrown instanceof ArrivedError) return { code: thrown.cell.code };
  const detail = thrown instanceof Error ? thrown.message : String(thrown);
  return {
    code: "#VALUE!",
    message: `Something in Loamsheet itself went wrong (${detail}). Please report it with this formula.`,
  };
}
