import { formula, joined, type Expression, type Term } from "./expression";

/** Nothing where a row has no name yet; the value otherwise. Keeps ready-to-fill rows calm. */
export function whenNamed(name: Term, value: Term): Expression {
  return formula`IF(${name}="","",${value})`;
}

/** The value, or nothing where it cannot be worked out yet. */
export function quiet(value: Term): Expression {
  return formula`IFERROR(${value},"")`;
}

/** The value once all that it is made of are numbers; nothing while one of them is blank or waits itself. */
export function whenNumbers(parts: readonly Term[], value: Term): Expression {
  return formula`IF(COUNT(${joined(parts, ",")})=${parts.length},${value},"")`;
}

/** One number times another; nothing while one of them waits. */
export function times(one: Term, other: Term): Expression {
  return whenNumbers([one, other], formula`${one}*${other}`);
}

/** One number less another; nothing while one of them waits. */
export function less(one: Term, other: Term): Expression {
  return whenNumbers([one, other], formula`${one}-${other}`);
}

/**
 * An input that may be blank, for one of our functions: some spreadsheets hand over a blank cell as 0, which is a
 * number like any other. Compared as text: not every engine finds a bare 0 different from nothing.
 */
export function orBlank(cell: Term): Expression {
  return formula`IF(${cell}&""="","",${cell})`;
}

/** The value of a column in the row where another column holds what is looked for. */
export function lookUp(wanted: Term, among: Term, take: Term): Expression {
  return formula`INDEX(${take},MATCH(${wanted},${among},0))`;
}

/** The same for a number: what is blank there or not found at all stays blank, where a bare look-up would read 0. */
export function lookUpNumber(wanted: Term, among: Term, take: Term): Expression {
  return quiet(orBlank(lookUp(wanted, among, take)));
}

/** The same for words. */
export function lookUpWords(wanted: Term, among: Term, take: Term): Expression {
  return quiet(formula`${lookUp(wanted, among, take)}&""`);
}

/** The words of a column in the row of this number; nothing where that row is empty. */
export function wordsInRow(among: Term, row: Term): Expression {
  return quiet(formula`INDEX(${among},${row})&""`);
}

/** Sum of the values above zero; cells that wait for input or show text are passed over. */
export function sumOfAmounts(values: Term): Expression {
  return formula`SUMIF(${values},">0")`;
}

/** "Soybean" for a cell that holds "soybean", to begin a sentence. */
export function capitalOf(words: Term): Expression {
  return formula`UPPER(LEFT(${words},1))&MID(${words},2,60)`;
}

/** A number as words show it. */
export function shown(value: Term, format: string): Expression {
  return formula`TEXT(${value},${format})`;
}
