import type { Area } from "../../../../src/workbook/plan";
import { Refusal } from "./request-processor";

/** What a cell of the sheet in memory holds. */
export interface MemoryCell {
  content: number | string | boolean;
  numberFormat?: string;
  looks?: Record<string, unknown>;
}

/** What is known about names that formulas may use. */
export interface KnownNames {
  hasSheet(name: string): boolean;
  hasTable(name: string): boolean;
}

/** Cells by "row,column". */
export class MemoryCells {
  readonly byPlace = new Map<string, MemoryCell>();

  at(row: number, column: number): MemoryCell | undefined {
    return this.byPlace.get(`${row},${column}`);
  }

  /** Writes what a person might have typed: text is read as Excel reads it. Empty text empties the cell. */
  type(row: number, column: number, typed: unknown, known: KnownNames): void {
    const content = contentOf(typed, known);
    if (content === "") {
      const cell = this.at(row, column);
      if (cell) this.byPlace.set(`${row},${column}`, { ...cell, content: "" });
    } else this.touch(row, column).content = content;
  }

  touch(row: number, column: number): MemoryCell {
    const cell = this.at(row, column) ?? { content: "" };
    this.byPlace.set(`${row},${column}`, cell);
    return cell;
  }

  /** Pushes down by one row what stands below a table that gets a totals row. */
  pushDown({ left, right, bottom }: Area): void {
    const moving = [...this.byPlace].filter(([place, { content }]) => {
      const [row = 0, column = 0] = place.split(",").map(Number);
      return row > bottom && column >= left && column <= right && content !== "";
    });
    for (const [place] of moving) this.byPlace.delete(place);
    for (const [place, cell] of moving) {
      const [row = 0, column = 0] = place.split(",").map(Number);
      this.byPlace.set(`${row + 1},${column}`, cell);
    }
  }
}

function contentOf(typed: unknown, known: KnownNames): number | string | boolean {
  if (typeof typed === "number" || typeof typed === "boolean") return typed;
  if (typeof typed !== "string") throw new Refusal("InvalidArgument", `cannot write ${String(typed)}`);
  if (typed.startsWith("'")) return typed.slice(1);
  if (typed.startsWith("=")) return checkedFormula(typed, known);
  if (/^\s*[-+$(]?\s*\d[\d\s.,/:%-]*\)?\s*$/.test(typed)) return `<read as a number or a date: ${typed}>`;
  return typed;
}

/** Excel refuses formulas that lead to a sheet or a table that is not there. */
function checkedFormula(formula: string, known: KnownNames): string {
  for (const [, quoted, plain] of formula.matchAll(/(?:'((?:[^']|'')+)'|\b([A-Za-z_]\w*))!/g)) {
    const name = quoted?.replace(/''/g, "'") ?? plain ?? "";
    if (!known.hasSheet(name)) throw new Refusal("InvalidArgument", `no sheet ${name} for ${formula}`);
  }
  for (const [, name = ""] of formula.matchAll(/\b([A-Za-z_]\w*)\[/g)) {
    if (!known.hasTable(name)) throw new Refusal("InvalidArgument", `no table ${name} for ${formula}`);
  }
  return formula;
}
