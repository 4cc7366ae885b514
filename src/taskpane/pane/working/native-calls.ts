import type { AstExpression } from "@borgar/fx";
import { ArrivedError } from "../../../functions/frame/arguments";
import { isCellError, type RawArgument } from "../../../functions/frame/cell";
import { words } from "../../words";
import { CannotShow } from "./cannot-show";
import { compare, numberOf, singleCell } from "./operators";
import { firstCell, rectangle } from "./rectangle";

export type Node = AstExpression | null | undefined;
export type Evaluate = (node: Node) => Promise<RawArgument>;

/** Works out a call of a spreadsheet's own function; arguments are evaluated only where they are needed. */
type NativeCall = (nodes: readonly Node[], evaluate: Evaluate) => Promise<RawArgument>;

/**
 * The few functions that workbooks look values up with on the way to one of ours. Whatever else stands in an argument
 * is for the spreadsheet alone to compute.
 */
export const nativeCalls: Readonly<Record<string, NativeCall>> = {
  IF: async ([test, yes, no], evaluate) => (isTrue(await evaluate(test)) ? evaluate(yes) : no ? evaluate(no) : false),
  IFERROR: iferror,
  INDEX: index,
  MATCH: match,
  COUNT: async (nodes, evaluate) => (await numbersOf(nodes, evaluate)).length,
  SUM: async (nodes, evaluate) => (await numbersOf(nodes, evaluate)).reduce((sum, value) => sum + value, 0),
  MAX: async (nodes, evaluate) => Math.max(...orZero(await numbersOf(nodes, evaluate))),
  MIN: async (nodes, evaluate) => Math.min(...orZero(await numbersOf(nodes, evaluate))),
  ABS: async ([value], evaluate) => Math.abs(numberOf(await evaluate(value))),
  N: async ([value], evaluate) => {
    const cell = singleCell(await evaluate(value));
    return typeof cell === "number" ? cell : cell === true ? 1 : 0;
  },
};

function orZero(values: readonly number[]): readonly number[] {
  return values.length === 0 ? [0] : values;
}

function isTrue(raw: RawArgument): boolean {
  const cell = singleCell(raw);
  return typeof cell === "string" ? cell.toLowerCase() === "true" : Boolean(cell);
}

async function iferror([value, instead]: readonly Node[], evaluate: Evaluate): Promise<RawArgument> {
  try {
    const answer = await evaluate(value);
    return isCellError(firstCell(answer)) ? evaluate(instead) : answer;
  } catch (thrown) {
    if (thrown instanceof ArrivedError) return evaluate(instead);
    throw thrown;
  }
}

async function index([range, row, column]: readonly Node[], evaluate: Evaluate): Promise<RawArgument> {
  const cells = rectangle(await evaluate(range));
  const first = numberOf(await evaluate(row));
  const second = column ? numberOf(await evaluate(column)) : 1;
  // A single row is counted along, a single column down.
  const [down, across] = cells.length === 1 && !column ? [1, first] : [first, second];
  const cell = cells[down - 1]?.[across - 1];
  return cell === undefined ? { code: "#REF!" } : cell;
}

/** Only the exact match; a search in sorted values is left to the spreadsheet. */
async function match([wanted, range, kind]: readonly Node[], evaluate: Evaluate): Promise<RawArgument> {
  if (!kind || numberOf(await evaluate(kind)) !== 0) throw new CannotShow(words.working.foreignFunction("MATCH"));
  const cell = singleCell(await evaluate(wanted));
  const cells = rectangle(await evaluate(range)).flat();
  const at = cells.findIndex((here) => here !== null && !isCellError(here) && compare(here, cell) === 0);
  return at < 0 ? { code: "#N/A" } : at + 1;
}

/** The numbers among cells; text, blanks and truths are passed over, an error travels on. */
async function numbersOf(nodes: readonly Node[], evaluate: Evaluate): Promise<readonly number[]> {
  const cells = (await Promise.all(nodes.map(evaluate))).flatMap((raw) => rectangle(raw).flat());
  const broken = cells.find(isCellError);
  if (broken) throw new ArrivedError(broken);
  return cells.filter((cell) => typeof cell === "number");
}
