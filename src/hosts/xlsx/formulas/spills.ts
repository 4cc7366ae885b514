import { formulaTokens, isCall, isMark, type Token } from "./formula-tokens";
import { ownCall, withoutEquals } from "./stored-formula";

/** Argument positions, from 0, in which a native function takes a whole range and still gives one value. */
const rangeTakers: ReadonlyMap<string, (position: number) => boolean> = new Map([
  ...takers(
    () => true,
    `SUM SUMSQ PRODUCT AVERAGE AVERAGEA MIN MINA MAX MAXA COUNT COUNTA COUNTBLANK MEDIAN GEOMEAN HARMEAN AND OR XOR NPV
    IRR STDEV STDEV.S STDEV.P STDEVP STDEVA VAR VAR.S VAR.P VARP DEVSQ AVEDEV SKEW KURT SUBTOTAL AGGREGATE SUMPRODUCT
    CONCAT TEXTJOIN ROWS COLUMNS AREAS CORREL PEARSON RSQ SLOPE INTERCEPT STEYX COVAR COVARIANCE.S COVARIANCE.P
    SUMXMY2 SUMX2MY2 SUMX2PY2 T.TEST TTEST F.TEST FTEST CHISQ.TEST MODE MODE.SNGL`,
  ),
  ...takers((position) => position === 0, "COUNTIF LARGE SMALL PERCENTILE PERCENTILE.INC PERCENTILE.EXC QUARTILE"),
  ...takers((position) => position === 0, "QUARTILE.INC QUARTILE.EXC TRIMMEAN PERCENTRANK PERCENTRANK.INC"),
  ...takers((position) => position === 0 || position === 2, "SUMIF AVERAGEIF"),
  ...takers((position) => position === 0 || position % 2 === 1, "SUMIFS AVERAGEIFS MAXIFS MINIFS"),
  ...takers((position) => position % 2 === 0, "COUNTIFS"),
  ...takers((position) => position === 1, "MATCH XMATCH VLOOKUP HLOOKUP RANK RANK.EQ RANK.AVG"),
  ...takers((position) => position === 1 || position === 2, "XLOOKUP LOOKUP FORECAST FORECAST.LINEAR"),
]);

/** Natives whose result may be a range or a table of values, whatever they are given. */
const tableMakers = new Set(
  `FILTER SORT SORTBY UNIQUE SEQUENCE RANDARRAY TRANSPOSE LINEST LOGEST TREND GROWTH FREQUENCY MMULT MINVERSE MUNIT
  VSTACK HSTACK TAKE DROP CHOOSECOLS CHOOSEROWS TOCOL TOROW WRAPCOLS WRAPROWS EXPAND MAP BYROW BYCOL SCAN MAKEARRAY
  REDUCE LAMBDA TEXTSPLIT MODE.MULT`.split(/\s+/),
);

/** Natives that point at a range, most often of one cell. */
const rangePointers = new Set(["INDEX", "OFFSET", "INDIRECT"]);

const oneCellOfATable = /\[#(?:This Row|Headers|Totals)\]|^\[@/i;

/**
 * Has a formula whose answer is one cell to be stored as one that may spill all the same? Stored plainly, a
 * spreadsheet would cut every range in it down to one cell. True for table-making natives, and wherever a range of
 * several cells stands outside a function that takes it whole.
 *
 * Add-in calls take ranges whole and are stored plainly: spreadsheets without the add-in then show the kept value,
 * where they would show #NAME? for the same call stored as one that may spill. The price is an @ before it in Excel,
 * which changes nothing in its answer.
 */
export function maySpill(typed: string, rangeNames: ReadonlySet<string>): boolean {
  const tokens = formulaTokens(withoutEquals(typed)).filter(({ kind }) => kind !== "space");
  const isOurs = tokens.some(({ text }, index) => isCall(tokens, index) && ownCall.test(text));
  const open: { name: string; position: number }[] = [];
  for (let index = 0; index < tokens.length; index++) {
    const token = tokens[index];
    if (token === undefined) break;
    if (isMark(token, "{")) return true;
    if (isCall(tokens, index) && makesTable(token.text, isOurs)) return true;
    if (isMark(token, "(")) open.push({ name: callBefore(tokens, index) ?? open.at(-1)?.name ?? "", position: 0 });
    else if (isMark(token, ")")) open.pop();
    else if (isMark(token, ",")) nextArgument(open);
    else if (isOperand(token) && !isCall(tokens, index)) {
      const end = operandEnd(tokens, index);
      if (isRange(tokens.slice(index, end), rangeNames) && !isTaken(tokens, index, end, open.at(-1))) return true;
      index = end - 1;
    }
  }
  return false;
}

function takers(takes: (position: number) => boolean, names: string): [string, (position: number) => boolean][] {
  return names.split(/\s+/).map((name) => [name, takes]);
}

function makesTable(name: string, isOurs: boolean): boolean {
  return tableMakers.has(name.toUpperCase()) || (!isOurs && rangePointers.has(name.toUpperCase()));
}

function callBefore(tokens: readonly Token[], parenthesis: number): string | undefined {
  return isCall(tokens, parenthesis - 1) ? tokens[parenthesis - 1]?.text.toUpperCase() : undefined;
}

function nextArgument(open: { position: number }[]): void {
  const call = open.at(-1);
  if (call) call.position += 1;
}

function isOperand(token: Token): boolean {
  return ["name", "quoted", "bracket", "number"].includes(token.kind);
}

/** A reference is a run of names, quoted names, brackets, "!" and ":". */
function operandEnd(tokens: readonly Token[], start: number): number {
  let end = start;
  for (let token = tokens[end]; token && (isOperand(token) || /^[!:]$/.test(token.text)); token = tokens[end]) end += 1;
  return end;
}

function isRange(operand: readonly Token[], rangeNames: ReadonlySet<string>): boolean {
  const [first] = operand;
  if (operand.some((token) => isMark(token, ":"))) return true;
  const bracket = operand.find(({ kind }) => kind === "bracket");
  if (bracket) return bracket.text.includes("]:[") || !oneCellOfATable.test(bracket.text);
  return operand.length === 1 && first?.kind === "name" && rangeNames.has(first.text.toUpperCase());
}

/** Stands the range alone as an argument that its function takes whole? SUMPRODUCT also works ranges against ranges. */
function isTaken(
  tokens: readonly Token[],
  start: number,
  end: number,
  call: { name: string; position: number } | undefined,
): boolean {
  if (call === undefined) return false;
  if (call.name === "SUMPRODUCT") return true;
  const before = tokens[start - 1];
  const after = tokens[end];
  const alone = (isMark(before, "(") || isMark(before, ",")) && (isMark(after, ")") || isMark(after, ","));
  if (!alone) return false;
  return (
    ownCall.test(call.name) || rangePointers.has(call.name) || (rangeTakers.get(call.name)?.(call.position) ?? false)
  );
}
