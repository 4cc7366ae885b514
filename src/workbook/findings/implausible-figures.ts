import type { Limit } from "../../core/limit";
import { limits } from "../../core/limits";
import { cropWords } from "../../functions/words";
import { crops, type Crop } from "../../reference/crops";
import type { ImplausibleFigure } from "./finding";
import { blocksOf } from "./reading/blocks-of";
import { cellsWhere, wordsAt } from "./reading/sheet-cells";
import type { SheetReading, WorkbookReading } from "./reading/workbook-reading";

/** Rows above a figure in which the head of its column is looked for. */
const headWithin = 60;

/** Longer than these, words are a sentence rather than a label or a unit. */
const longestLabel = 60;
const longestUnit = 12;

/** Typed prices of a bushel and yields of an acre that no market and no field has seen. */
export function implausibleFigures(reading: WorkbookReading): ImplausibleFigure[] {
  return reading.sheets.flatMap(inSheet);
}

function inSheet(sheet: SheetReading): ImplausibleFigure[] {
  const heads = headsByCell(sheet);
  const found: ImplausibleFigure[] = [];
  for (const { row, column, content } of cellsWhere(sheet, (content) => typeof content === "number")) {
    if (typeof content !== "number") continue;
    const head = heads(row, column) ?? labelBeside(sheet, row, column);
    const what = head === undefined ? undefined : measures(head);
    if (head === undefined || what === undefined) continue;
    const crop = cropFor(sheet, row, column);
    const limit = limitFor(what, crop);
    if (limit === undefined || fits(content, limit)) continue;
    const at = { sheet: sheet.name, row, column };
    found.push({ kind: "implausibleFigure", at, what, head, crop: crop?.label, value: content, ...limit });
  }
  return found;
}

function fits(value: number, limit: Limit): boolean {
  return value === 0 || (value >= limit.min && value <= limit.max);
}

/** Figures that are differences of prices or yields may be as small as they like. */
const differences =
  /\b(?:step|steps|change|changes|premium|basis|discount|dockage|cost|gain|loss|response|increase)\b/i;

/** Prices and yields in bushels; of others the unit says too little. */
function measures(head: string): "price" | "yield" | undefined {
  if (differences.test(head)) return undefined;
  if (/\$\s*(?:\/|per|a)\s*bu\b/i.test(head)) return /\bprice\b/i.test(head) ? "price" : undefined;
  return /\byields?\b/i.test(head) && /\bbu(?:shels?)?\s*(?:\/|per|an)\s*ac(?:re)?\b/i.test(head) ? "yield" : undefined;
}

function limitFor(what: "price" | "yield", crop: Crop | undefined): Limit | undefined {
  if (crop && crop.yieldUnit !== "bu") return undefined;
  if (what === "price") return limits.grainPrice;
  return { ...limits.grainYield, ...(crop && { max: crop.yieldCeiling }) };
}

/** The head over a cell of a table or list, where it says price or yield. */
function headsByCell(sheet: SheetReading): (row: number, column: number) => string | undefined {
  const blocks = blocksOf(sheet);
  return (row, column) => {
    const heads = blocks.flatMap((block) => (row >= block.firstRow && row <= block.lastRow ? block.heads : []));
    return heads.find((head) => head.column === column && measures(head.text) !== undefined)?.text;
  };
}

/** The words to the left of a figure, with its unit beside it: "Price" and "$/bu". */
function labelBeside(sheet: SheetReading, row: number, column: number): string | undefined {
  const words: string[] = [];
  for (let left = column - 1; left >= sheet.left && words.length < 2; left--) {
    const text = wordsAt(sheet, row, left);
    if (text !== undefined) words.unshift(text);
  }
  const unit = wordsAt(sheet, row, column + 1);
  if (unit !== undefined && unit.length <= longestUnit) words.push(unit);
  const label = words.join(" ");
  return label === "" || label.length > longestLabel ? undefined : label;
}

/** The crop a figure is about: named in its row to the left, or at the head of its column. */
function cropFor(sheet: SheetReading, row: number, column: number): Crop | undefined {
  for (let left = column - 1; left >= sheet.left; left--) {
    const crop = cropAt(sheet, row, left);
    if (crop) return crop;
  }
  for (let above = row - 1; above >= Math.max(sheet.top, row - headWithin); above--) {
    const crop = cropAt(sheet, above, column);
    if (crop) return crop;
  }
  return undefined;
}

function cropAt(sheet: SheetReading, row: number, column: number): Crop | undefined {
  const words = wordsAt(sheet, row, column);
  const key = words === undefined || words.length > longestLabel ? undefined : cropWords.find(words);
  return key === undefined ? undefined : crops[key];
}
