import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx";
import { columnLetters } from "../write/address";
import { blocksOf, rowName, rowsOf, type Block, type Head } from "./reading/blocks-of";
import type { TypedOver } from "./finding";
import { contentAt, isEmptyAt, isFormula } from "./reading/sheet-cells";
import type { WorkbookReading } from "./reading/workbook-reading";

/** A column counts as computed when this share of its filled cells holds one and the same formula. */
const leastShare = 0.6;
const leastFormulas = 2;

/** Numbers typed into columns that are computed otherwise. */
export function typedOver(reading: WorkbookReading): TypedOver[] {
  return reading.sheets.flatMap(blocksOf).flatMap((block) => block.heads.flatMap((head) => inColumn(block, head)));
}

function inColumn(block: Block, { column, text }: Head): TypedOver[] {
  const { sheet } = block;
  const rows = rowsOf(block).filter((row) => !isEmptyAt(sheet, row, column));
  const formulas = rows.flatMap((row) => {
    const content = contentAt(sheet, row, column);
    return isFormula(content) ? [asSeenFrom(content, row, column)] : [];
  });
  const common = mostCommon(formulas);
  if (common === undefined || common.times < Math.max(leastFormulas, leastShare * rows.length)) return [];
  return rows.flatMap((row): TypedOver[] => {
    const value = contentAt(sheet, row, column);
    if (typeof value !== "number") return [];
    const at = { sheet: sheet.name, row, column };
    const formula = asWrittenAt(common.formula, row, column);
    return [{ kind: "typedOver", at, row: rowName(block, row), head: text, value, formula }];
  });
}

/** A formula by where it points from its cell, so that a filled-down column reads the same in every row. */
function asSeenFrom(formula: string, row: number, column: number): string {
  return translateFormulaToR1C1(formula, address(row, column));
}

function asWrittenAt(formula: string, row: number, column: number): string {
  return translateFormulaToA1(formula, address(row, column));
}

function address(row: number, column: number): string {
  return `${columnLetters(column)}${row + 1}`;
}

function mostCommon(formulas: readonly string[]): { formula: string; times: number } | undefined {
  const times = new Map<string, number>();
  for (const formula of formulas) times.set(formula, (times.get(formula) ?? 0) + 1);
  const [first] = [...times].sort(([, a], [, b]) => b - a);
  return first && { formula: first[0], times: first[1] };
}
