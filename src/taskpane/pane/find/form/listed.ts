import type { CellIn, Matrix } from "../../../../functions/frame/cell";
import type { Vocabulary } from "../../../../functions/frame/vocabulary";

/**
 * The values of a list as typed: commas part them, semicolons or new lines part rows. A comma inside a number stands
 * for thousands where the others have a space behind them. What holds a comma of its own stands in quotation marks,
 * unless it is a word of the list of words. Nothing between two commas is a gap.
 */
export function listedTexts(text: string, words: Vocabulary<string> | undefined): Matrix<string> {
  const rows = text.split(rowEnd).map((row) => joined(partsOf(row), words));
  const width = Math.max(...rows.map((row) => row.length));
  return rows.map((row) => [...row, ...Array.from({ length: width - row.length }, () => "")]);
}

const notInQuotes = '(?=(?:[^"]*"[^"]*")*[^"]*$)';
const rowEnd = new RegExp(`[;\\n]${notInQuotes}`);
const spacedComma = new RegExp(`,\\s+${notInQuotes}|,$`);
const anyComma = new RegExp(`,${notInQuotes}`);

function partsOf(row: string): string[] {
  const parts = row.split(new RegExp(`,\\s${notInQuotes}`).test(row) ? spacedComma : anyComma);
  return parts.map((part) => part.trim().replace(/^"(.*)"$/, "$1"));
}

/** Puts together again what the commas of a known word have parted: "chisel plow, sweeps". */
function joined(parts: readonly string[], words: Vocabulary<string> | undefined): string[] {
  const whole: string[] = [];
  for (let at = 0; at < parts.length;) {
    const length = words ? longestWord(parts.slice(at), words) : 1;
    whole.push(parts.slice(at, at + length).join(", "));
    at += length;
  }
  return whole;
}

function longestWord(parts: readonly string[], words: Vocabulary<string>): number {
  for (let length = Math.min(parts.length, 4); length > 1; length--) {
    const isGap = parts.slice(0, length).some((part) => part === "");
    if (!isGap && words.find(parts.slice(0, length).join(", ")) !== undefined) return length;
  }
  return 1;
}

/** The text that stands for a value of an example in a box. */
export function textFor(value: CellIn | Matrix<CellIn>): string {
  if (!Array.isArray(value)) return plainText(value as CellIn); // no range among single cells
  const rows = value as Matrix<CellIn>; // the ranges of examples are arrays of rows
  return rows.map((row) => row.map(listedText).join(", ")).join("; ");
}

function listedText(cell: CellIn): string {
  const text = plainText(cell);
  return /[,;]/.test(text) ? `"${text}"` : text;
}

function plainText(cell: CellIn): string {
  return cell === null || typeof cell === "object" ? "" : String(cell);
}
