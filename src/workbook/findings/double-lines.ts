import type { DoubleLine } from "./finding";
import { columnsIn, valueAt, wordsAt } from "./reading/sheet-cells";
import type { SheetReading, WorkbookReading } from "./reading/workbook-reading";

const budgetWords = /\b(?:budgets?|costs?|expenses?|enterprise)\b/i;
const dollarsPerAcre = /^\$\s*(?:\/|per|an)\s*ac(?:re)?$/i;

/** Lines of a budget that stand there twice: the same words, and the same amount in the same column. */
export function doubleLines(reading: WorkbookReading): DoubleLine[] {
  return reading.sheets.filter(isBudget).flatMap(inSheet);
}

/** Sheets that say so, by their name or with "$/ac" beside their lines. */
function isBudget(sheet: SheetReading): boolean {
  if (budgetWords.test(sheet.name)) return true;
  const words = sheet.values.flat().filter((value) => typeof value === "string");
  return words.filter((text) => dollarsPerAcre.test(text.trim())).length >= 3;
}

function inSheet(sheet: SheetReading): DoubleLine[] {
  const seen = new Map<string, { row: number; amount: number }>();
  const found: DoubleLine[] = [];
  for (const down of sheet.formulas.keys()) {
    const row = sheet.top + down;
    const label = firstWords(sheet, row);
    if (label === undefined) continue;
    for (const { column, amount } of amountsIn(sheet, row, label.column)) {
      const key = `${folded(label.text)}|${column}`;
      const before = seen.get(key);
      if (before === undefined) seen.set(key, { row, amount });
      else if (before.amount === amount) found.push(doubleLine(sheet, label.text, { row, column, amount }, before.row));
    }
  }
  return onePerRow(found);
}

function doubleLine(
  sheet: SheetReading,
  label: string,
  { row, column, amount }: { row: number; column: number; amount: number },
  before: number,
): DoubleLine {
  const place = (at: number) => ({ sheet: sheet.name, row: at, column });
  return {
    kind: "doubleLine",
    at: place(row),
    first: place(before),
    label,
    amount,
    column: headOf(sheet, row, column),
  };
}

/** Two columns with the same slip are one slip. */
function onePerRow(found: readonly DoubleLine[]): DoubleLine[] {
  return found.filter(({ at }, index) => found.findIndex((other) => other.at.row === at.row) === index);
}

function firstWords(sheet: SheetReading, row: number): { text: string; column: number } | undefined {
  for (const column of columnsIn(sheet, row)) {
    const text = wordsAt(sheet, row, column);
    if (text !== undefined && !dollarsPerAcre.test(text)) return { text, column };
  }
  return undefined;
}

function amountsIn(sheet: SheetReading, row: number, labelColumn: number): { column: number; amount: number }[] {
  return columnsIn(sheet, row).flatMap((column) => {
    const amount = valueAt(sheet, row, column);
    return column > labelColumn && typeof amount === "number" && amount !== 0 ? [{ column, amount }] : [];
  });
}

/** The words at the head of a column: the nearest words above. */
function headOf(sheet: SheetReading, row: number, column: number): string | undefined {
  for (let above = row - 1; above >= sheet.top; above--) {
    const words = wordsAt(sheet, above, column);
    if (words !== undefined) return words;
  }
  return undefined;
}

function folded(label: string): string {
  return label
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, " ")
    .trim();
}
