import { refuse, waitFor } from "../../core/fault";
import { within, type Limit } from "../../core/limit";
import { isBlank, isCellError, type CellError, type CellIn, type Matrix } from "./cell";
import { parseNumber } from "./parse-number";
import type { Vocabulary } from "./vocabulary";

/** A cell that holds something and is not an error. */
export type Present = number | string | boolean;

/** Facts about an argument that documentation, forms and tests are made from. */
export interface ArgumentFacts {
  readonly says: string;
  readonly unit: string;
  readonly limit?: Limit;
  readonly vocabulary?: Vocabulary<string>;
  /** Words that are taken in place of a number. */
  readonly orWords?: Vocabulary<string>;
  readonly percent?: boolean;
  /** Fewest values a list takes. */
  readonly atLeast?: number;
}

/** An argument of one value; a range in its place is worked through cell by cell. */
export interface OneArgument<T> extends ArgumentFacts {
  readonly shape: "one";
  read(cell: Present, argument: string): T;
  /** A 0 in place of a word is a blank cell on older spreadsheets. */
  readonly zeroIsBlank: boolean;
}

/** An argument that takes a whole range at once. */
export interface ManyArgument<T> extends ArgumentFacts {
  readonly shape: "many";
  readMany(cells: Matrix<CellIn>, argument: string): T;
}

export interface OptionalArgument<T, Default> extends ArgumentFacts {
  readonly shape: "optional";
  readonly inner: OneArgument<T> | ManyArgument<T>;
  readonly whenBlank: Default;
  readonly whenBlankSays: string;
}

export type Argument = OneArgument<unknown> | ManyArgument<unknown> | OptionalArgument<unknown, unknown>;

/** The TypeScript type that compute receives for an argument. */
export type ValueOf<A> =
  A extends OptionalArgument<infer T, infer D>
    ? T | D
    : A extends OneArgument<infer T>
      ? T
      : A extends ManyArgument<infer T>
        ? T
        : never;

interface Says {
  /** What the argument is, in the words a grower would use. */
  readonly says: string;
}

/** A number in a stated unit. */
export function quantity(limit: Limit, { says }: Says): OneArgument<number> {
  return {
    shape: "one",
    says,
    unit: limit.unit,
    limit,
    zeroIsBlank: false,
    read(cell, argument) {
      const value = typeof cell === "number" ? cell : numberFrom(cell, argument, limit.unit);
      within(argument, value, limit);
      return value;
    },
  };
}

/** Percent points: 15.5 means 15.5 %. A value between 0 and 1 is asked about unless small percentages are usual. */
export function percent(
  limit: Limit,
  { says, smallIsUsual = false }: Says & { smallIsUsual?: boolean },
): OneArgument<number> {
  return {
    ...quantity(limit, { says }),
    percent: true,
    read(cell, argument) {
      const value = typeof cell === "number" ? cell : numberFrom(cell, argument, limit.unit);
      const typedWithSign = typeof cell === "string" && cell.includes("%");
      if (!smallIsUsual && !typedWithSign && value > 0 && value < 1) {
        refuse({ kind: "percentSlip", argument, received: value, meant: Number((value * 100).toPrecision(12)) });
      }
      within(argument, value, limit);
      return value;
    },
  };
}

/** A rate the way spreadsheets write it: 8 % is 0.08 or 8%. */
export function rate(limit: Limit, { says }: Says): OneArgument<number> {
  return {
    ...quantity(limit, { says }),
    read(cell, argument) {
      const value =
        typeof cell === "string" ? rateFrom(cell, argument, limit.unit) : numberFrom(cell, argument, limit.unit);
      if (value > limit.max && value / 100 <= limit.max) refuse({ kind: "rateSlip", argument, received: value });
      within(argument, value, limit);
      return value;
    },
  };
}

/** One word of a closed list. */
export function choice<Key extends string>(words: Vocabulary<Key>, { says }: Says): OneArgument<Key> {
  return {
    shape: "one",
    says,
    unit: "",
    vocabulary: words as Vocabulary<string>,
    zeroIsBlank: true,
    read(cell, argument) {
      const text = String(cell);
      return words.find(text) ?? refuseWord(words, text, argument);
    },
  };
}

/** Free text, taken as it stands. */
export function text({ says }: Says): OneArgument<string> {
  return { shape: "one", says, unit: "", zeroIsBlank: true, read: (cell) => String(cell) };
}

/** A range of values of one kind. Blank cells are passed over; errors are passed on. */
export function list<T>(
  of: OneArgument<T>,
  { says, atLeast = 1 }: Says & { atLeast?: number },
): ManyArgument<readonly T[]> {
  return {
    ...factsOf(of),
    shape: "many",
    says,
    atLeast,
    readMany(cells, argument) {
      const values: T[] = [];
      for (const row of cells) {
        for (const cell of row) {
          passErrorOn(cell);
          if (!isBlank(cell)) values.push(of.read(cell as Present, argument));
        }
      }
      if (values.length === 0 && atLeast > 0) waitFor(argument);
      if (values.length < atLeast) refuse({ kind: "tooFew", argument, received: values.length, atLeast });
      return values;
    },
  };
}

/** A range whose blanks keep their place: null where a cell is blank. For lists that go in pairs. */
export function listWithGaps<T>(of: OneArgument<T>, { says }: Says): ManyArgument<readonly (T | null)[]> {
  return {
    ...factsOf(of),
    shape: "many",
    says,
    readMany: (cells, argument) => cells.flatMap((row) => row.map((cell) => readOrNull(of, cell, argument))),
  };
}

/** One cell of a range: null where it is blank; an error in it is passed on. */
export function readOrNull<T>(of: OneArgument<T>, cell: CellIn, argument: string): T | null {
  passErrorOn(cell);
  return isBlank(cell) || (of.zeroIsBlank && cell === 0) ? null : of.read(cell as Present, argument);
}

/**
 * An argument that may be left out.
 *
 * @param whenBlank the value compute receives then
 * @param whenBlankSays what that means, for the documentation ("no handling loss", "the guide's own set")
 */
export function optional<T, const Default>(
  inner: OneArgument<T> | ManyArgument<T>,
  whenBlank: Default,
  whenBlankSays: string,
): OptionalArgument<T, Default> {
  return { ...factsOf(inner), shape: "optional", inner, whenBlank, whenBlankSays };
}

/** An error value found inside a list: passed on unchanged by the runner. */
export class ArrivedError extends Error {
  constructor(readonly cell: CellError) {
    super(cell.code);
    this.name = "ArrivedError";
  }
}

/** No sheet holds NaN or an infinity; a host that hands one over means a number error. */
function passErrorOn(cell: CellIn): void {
  if (isCellError(cell)) throw new ArrivedError(cell);
  if (typeof cell === "number" && !Number.isFinite(cell)) throw new ArrivedError({ code: "#NUM!" });
}

function factsOf(of: ArgumentFacts): ArgumentFacts {
  return {
    says: of.says,
    unit: of.unit,
    ...(of.limit && { limit: of.limit }),
    ...(of.vocabulary && { vocabulary: of.vocabulary }),
    ...(of.orWords && { orWords: of.orWords }),
    ...(of.percent && { percent: of.percent }),
  };
}

function numberFrom(cell: Present, argument: string, unit: string): number {
  if (typeof cell === "number") return cell;
  const parsed = typeof cell === "string" ? parseNumber(cell) : undefined;
  if (parsed === undefined) refuse({ kind: "notANumber", argument, received: String(cell), unit });
  return parsed.value;
}

function rateFrom(cell: string, argument: string, unit: string): number {
  const parsed = parseNumber(cell);
  if (parsed === undefined) refuse({ kind: "notANumber", argument, received: cell, unit });
  return parsed.percent ? parsed.value / 100 : parsed.value;
}

/** Refuses a word that is not in a list, naming the nearest that are. */
export function refuseWord<Key extends string>(words: Vocabulary<Key>, received: string, argument: string): never {
  const accepted = Object.values<{ label: string }>(words.words).map(({ label }) => label);
  refuse({ kind: "unknownWord", argument, received, nearest: words.nearest(received), accepted });
}
