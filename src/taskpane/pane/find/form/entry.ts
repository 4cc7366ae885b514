import { calendarOf } from "../../../../core/units/sheet-date";
import type { Argument, ArgumentFacts } from "../../../../functions/frame/arguments";
import type { CellIn, Matrix, RawArgument } from "../../../../functions/frame/cell";
import { arrayLiteral, literal } from "../../../../functions/frame/formula-text";
import { parseNumber } from "../../../../functions/frame/parse-number";
import { Problem, readerFor } from "../../../../functions/frame/reading";
import { listedTexts } from "./listed";

/** Cells taken from the sheet, with what they showed then. */
export interface Picked {
  /** As formulas write it, such as Fields!C2. */
  readonly reference: string;
  readonly values: Matrix<CellIn>;
}

/** What a person gave for one argument: typed text, or cells of the sheet. */
export interface Entry {
  readonly text: string;
  readonly picked?: Picked | undefined;
  /** Left once: what does not fit is said from then on. */
  readonly visited?: boolean | undefined;
  /** Why the selected cells could not be taken. */
  readonly refused?: string | undefined;
}

export type Entries = Readonly<Record<string, Entry>>;

/** An argument as the function gets it and as the formula writes it. */
export interface GivenArgument {
  readonly given: boolean;
  readonly raw: RawArgument;
  readonly formula: string;
  /** The sentence that says what does not fit. */
  readonly refusal?: string | undefined;
}

const leftOut: GivenArgument = { given: false, raw: null, formula: "" };

/** Reads what was given for an argument, tolerant of $, commas, % and spaces as a sheet is. */
export function readEntry(name: string, argument: Argument, entry: Entry | undefined): GivenArgument {
  if (entry?.picked) return fromSheet(name, argument, entry.picked);
  const text = entry?.text.trim() ?? "";
  if (text === "") return leftOut;
  const raw = takesList(argument) ? listFrom(text, argument) : cellFrom(text, argument);
  const refusal = refusalOf(name, argument, raw);
  return { given: true, raw, formula: formulaOf(raw, argument), ...(refusal !== undefined && { refusal }) };
}

export function takesList(argument: Argument): boolean {
  return argument.shape === "many" || (argument.shape === "optional" && argument.inner.shape === "many");
}

export function isNeeded(argument: Argument): boolean {
  return argument.shape !== "optional";
}

function fromSheet(name: string, argument: Argument, { reference, values }: Picked): GivenArgument {
  const [first] = values[0] ?? [];
  const isOne = values.length === 1 && values[0]?.length === 1;
  const raw: RawArgument = isOne ? (first ?? null) : values;
  const refusal = isOne || takesList(argument) ? refusalOf(name, argument, raw) : undefined;
  return { given: true, raw, formula: reference, ...(refusal !== undefined && { refusal }) };
}

/** What is said of a value that does not fit; a blank is waited for in silence. */
function refusalOf(name: string, argument: Argument, raw: RawArgument): string | undefined {
  const read = readerFor(name, argument).readRange(raw);
  if (!(read instanceof Problem) || read.isWaiting) return undefined;
  return read.cell.message ?? read.cell.code;
}

/** A number where the argument takes one; words and dates stay text, as the function reads them. */
function cellFrom(text: string, facts: ArgumentFacts): CellIn {
  const parsed = facts.limit && !isDate(facts) ? parseNumber(text) : undefined;
  if (!parsed) return text;
  if (!parsed.percent) return parsed.value;
  // A small percentage keeps its sign, which tells it from a share; so does a rate, where 8% and 8 differ.
  return facts.percent && Math.abs(parsed.value) >= 1 ? parsed.value : text;
}

/** One value alone needs no braces. */
function listFrom(text: string, facts: ArgumentFacts): RawArgument {
  const rows = listedTexts(text, facts.vocabulary).map((row) => row.map((part) => listedCell(part, facts)));
  const [first] = rows[0] ?? [];
  return rows.length === 1 && rows[0]?.length === 1 ? (first ?? null) : rows;
}

/** Where names and numbers stand in one list, no range is stated; its numbers are numbers all the same. */
function listedCell(text: string, facts: ArgumentFacts): CellIn {
  if (facts.limit) return cellFrom(text, facts);
  if (facts.vocabulary?.find(text) !== undefined) return text;
  const parsed = parseNumber(text);
  return parsed && !parsed.percent ? parsed.value : text;
}

function formulaOf(raw: RawArgument, argument: Argument): string {
  if (Array.isArray(raw)) return arrayLiteral(raw as Matrix<CellIn>); // arrays among raw arguments are ranges
  const cell = raw as CellIn; // no range any more
  const serial = isDate(argument) ? serialOf(cell, argument) : undefined;
  return serial === undefined ? literal(cell) : dateFormula(serial);
}

function isDate({ limit }: ArgumentFacts): boolean {
  return limit?.unit === "date";
}

/** The date that the function understands a text as; nothing where it refuses it. */
function serialOf(cell: CellIn, argument: Argument): number | undefined {
  const value = readerFor("date", argument).readRange(cell);
  return typeof value === "number" ? value : undefined;
}

function dateFormula(serial: number): string {
  const { year, month, day } = calendarOf(serial);
  return `DATE(${year},${month},${day})`;
}
