import { ArrivedError } from "../../../functions/frame/arguments";
import { isBlank, isCellError, type CellIn, type RawArgument } from "../../../functions/frame/cell";
import { words } from "../../words";
import { CannotShow } from "./cannot-show";
import { cellsIn, type Evaluate, type NativeCall, type NativeCalls, type Node } from "./native-call";
import { nativeNumbers } from "./native-numbers";
import { nativeText } from "./native-text";
import { compare, numberOf, singleCell } from "./operators";
import { firstCell, rectangle } from "./rectangle";

/**
 * The functions that workbooks choose, look up and round values with on the way to one of ours. Whatever else stands
 * in an argument is for the spreadsheet alone to compute.
 */
export const nativeCalls: NativeCalls = {
  ...nativeNumbers,
  ...nativeText,
  IF: async ([test, yes, no], evaluate) => (isTrue(await evaluate(test)) ? evaluate(yes) : no ? evaluate(no) : false),
  IFERROR: insteadOf(() => true),
  IFNA: insteadOf((code) => code === "#N/A"),
  AND: async (nodes, evaluate) => (await cellsIn(nodes, evaluate)).every((cell) => isBlank(cell) || isTrue(cell)),
  OR: async (nodes, evaluate) => (await cellsIn(nodes, evaluate)).some((cell) => isTrue(cell)),
  NOT: async ([test], evaluate) => !isTrue(await evaluate(test)),
  TRUE: async () => true,
  FALSE: async () => false,
  ISBLANK: is((cell) => cell === null),
  ISNUMBER: is((cell) => typeof cell === "number"),
  ISTEXT: is((cell) => typeof cell === "string"),
  ISERROR: is(isCellError),
  ISNA: is((cell) => isCellError(cell) && cell.code === "#N/A"),
  CHOOSE: async ([which, ...choices], evaluate) => {
    const chosen = choices[Math.trunc(numberOf(await evaluate(which))) - 1];
    return chosen ? evaluate(chosen) : { code: "#VALUE!" };
  },
  INDEX: index,
  MATCH: match,
  VLOOKUP: vlookup,
  XLOOKUP: xlookup,
};

/** Whether a test holds, as IF sees it. */
export function isTrue(raw: RawArgument): boolean {
  const cell = singleCell(raw);
  return typeof cell === "string" ? cell.toLowerCase() === "true" : Boolean(cell);
}

/** IFERROR and IFNA: the second value where the first is an error of that kind. */
function insteadOf(matters: (code: string) => boolean): NativeCall {
  return async ([value, instead], evaluate) => {
    try {
      const answer = await evaluate(value);
      const first = firstCell(answer);
      return isCellError(first) && matters(first.code) ? evaluate(instead) : answer;
    } catch (thrown) {
      if (thrown instanceof ArrivedError && matters(thrown.cell.code)) return evaluate(instead);
      throw thrown;
    }
  };
}

/** What a cell is, errors included. */
function is(kind: (cell: CellIn) => boolean): NativeCall {
  return async ([value], evaluate) => {
    try {
      return kind(firstCell(await evaluate(value)));
    } catch (thrown) {
      if (thrown instanceof ArrivedError) return kind(thrown.cell);
      throw thrown;
    }
  };
}

async function index([range, row, column]: readonly Node[], evaluate: Evaluate): Promise<RawArgument> {
  const cells = rectangle(await evaluate(range));
  const first = row ? numberOf(await evaluate(row)) : 0;
  // A single row is counted along, a single column down; of several columns the row is taken whole.
  const second = column ? numberOf(await evaluate(column)) : (cells[0]?.length ?? 0) > 1 ? 0 : 1;
  const [down, across] = cells.length === 1 && !column ? [1, first] : [first, second];
  if (down === 0 && across === 0) return cells;
  if (down === 0 && across > 0) return orError(cells.map((line) => line.slice(across - 1, across)));
  if (across === 0 && down > 0) return orError(cells.slice(down - 1, down));
  return cells[down - 1]?.[across - 1] ?? blankOr(cells, down, across);
}

/** Row 0 or column 0 stands for all of them. */
function orError(cells: readonly (readonly CellIn[])[]): RawArgument {
  return cells.length > 0 && cells.every((row) => row.length > 0) ? cells : { code: "#REF!" };
}

function blankOr(cells: readonly (readonly CellIn[])[], down: number, across: number): CellIn {
  const isInside = down >= 1 && down <= cells.length && across >= 1 && across <= (cells[0]?.length ?? 0);
  return isInside ? null : { code: "#REF!" };
}

/** Only the exact match; a search in sorted values is left to the spreadsheet. */
async function match([wanted, range, kind]: readonly Node[], evaluate: Evaluate): Promise<RawArgument> {
  if (!kind || numberOf(await evaluate(kind)) !== 0) throw new CannotShow(words.working.foreignFunction("MATCH"));
  const at = positionOf(singleCell(await evaluate(wanted)), rectangle(await evaluate(range)).flat());
  return at < 0 ? { code: "#N/A" } : at + 1;
}

async function vlookup([wanted, range, column, sorted]: readonly Node[], evaluate: Evaluate): Promise<RawArgument> {
  if (!sorted || isTrue(await evaluate(sorted))) throw new CannotShow(words.working.foreignFunction("VLOOKUP"));
  const rows = rectangle(await evaluate(range));
  const at = positionOf(
    singleCell(await evaluate(wanted)),
    rows.map((row) => row[0] ?? null),
  );
  const cell = rows[at]?.[numberOf(await evaluate(column)) - 1];
  return at < 0 ? { code: "#N/A" } : cell === undefined ? { code: "#REF!" } : cell;
}

async function xlookup(nodes: readonly Node[], evaluate: Evaluate): Promise<RawArgument> {
  const [wanted, range, answers, instead, kind] = nodes;
  if (kind && numberOf(await evaluate(kind)) !== 0) throw new CannotShow(words.working.foreignFunction("XLOOKUP"));
  const at = positionOf(singleCell(await evaluate(wanted)), rectangle(await evaluate(range)).flat());
  if (at < 0) return instead ? evaluate(instead) : { code: "#N/A" };
  return rectangle(await evaluate(answers)).flat()[at] ?? null;
}

/** Signs that stand for any letters are left to the spreadsheet. */
function positionOf(wanted: CellIn, cells: readonly CellIn[]): number {
  if (typeof wanted === "string" && /[*?~]/.test(wanted)) throw new CannotShow(words.working.wildcard(wanted));
  return cells.findIndex((here) => here !== null && !isCellError(here) && compare(here, wanted) === 0);
}
