import { ArrivedError } from "../../../functions/frame/arguments";
import { isBlank, isCellError, type CellIn, type RawArgument } from "../../../functions/frame/cell";
import { words } from "../../words";
import { CannotShow } from "./cannot-show";
import { cellCount, firstCell } from "./rectangle";

const say = words.working;

/** The answer of an operator before or behind one value. */
export function unary(operator: string, raw: RawArgument): RawArgument {
  if (operator === "@" || operator === "+") return raw;
  return operator === "%" ? numberOf(raw) / 100 : -numberOf(raw);
}

/** The answer of an operator between two single values, as in the sheet: a blank counts as 0 or as no text. */
export function binary(operator: string, left: RawArgument, right: RawArgument): RawArgument {
  if (operator === "&") return `${textOf(left)}${textOf(right)}`;
  const order = comparisons[operator];
  if (order) return order(compare(singleCell(left), singleCell(right)));
  const [a, b] = [numberOf(left), numberOf(right)];
  if (operator === "+") return a + b;
  if (operator === "-") return a - b;
  if (operator === "*") return a * b;
  if (operator === "^") return a ** b;
  if (operator === "/") return b === 0 ? { code: "#DIV/0!" } : a / b;
  throw new CannotShow(say.operator(operator));
}

const comparisons: Readonly<Record<string, (order: number) => boolean>> = {
  "=": (order) => order === 0,
  "<>": (order) => order !== 0,
  "<": (order) => order < 0,
  ">": (order) => order > 0,
  "<=": (order) => order <= 0,
  ">=": (order) => order >= 0,
};

/** Order of two cells as spreadsheets see it: numbers before text, text without regard to case. */
export function compare(left: CellIn, right: CellIn): number {
  const [a, b] = [filled(left, right), filled(right, left)];
  if (typeof a === "number" && typeof b === "number") return a - b;
  if (typeof a !== typeof b) return rankOf(a) - rankOf(b);
  const [x, y] = [String(a).toLowerCase(), String(b).toLowerCase()];
  return x === y ? 0 : x < y ? -1 : 1;
}

/** A blank takes the kind of what it is compared with. */
function filled(cell: CellIn, other: CellIn): CellIn {
  if (cell !== null) return cell;
  return typeof other === "string" ? "" : typeof other === "boolean" ? false : 0;
}

function rankOf(cell: CellIn): number {
  return ["number", "string", "boolean"].indexOf(typeof cell);
}

export function numberOf(raw: RawArgument): number {
  const cell = singleCell(raw);
  const value = isBlank(cell) ? 0 : Number(cell);
  if (Number.isNaN(value)) throw new CannotShow(say.textInArithmetic(String(cell)));
  return value;
}

function textOf(raw: RawArgument): string {
  const cell = singleCell(raw);
  return isBlank(cell) ? "" : String(cell);
}

/** The one cell of a value; an error in it travels on. */
export function singleCell(raw: RawArgument): CellIn {
  if (cellCount(raw) > 1) throw new CannotShow(say.rangeArithmetic);
  const cell = firstCell(raw);
  if (isCellError(cell)) throw new ArrivedError(cell);
  return cell;
}
