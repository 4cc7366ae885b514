import { isCellError, type CellIn, type Matrix } from "./cell";
import type { WorksheetFunction } from "./declaration";

/** The namespace our functions carry in every host. */
export const namespace = "LOAM";

/** A value as it stands inside a formula. */
export function literal(cell: CellIn): string {
  if (cell === null || cell === undefined) return "";
  if (isCellError(cell)) return cell.code;
  if (typeof cell === "string") return `"${cell.replace(/"/g, '""')}"`;
  return typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell);
}

/** A range of values as an array constant, such as {1,2;3,4}. */
export function arrayLiteral(cells: Matrix<CellIn>): string {
  return `{${cells.map((row) => row.map(literal).join(",")).join(";")}}`;
}

/** The example of a function as a person would type it. */
export function exampleFormula(fn: WorksheetFunction): string {
  const args = fn.example.call.map((cell) =>
    Array.isArray(cell) ? arrayLiteral(cell as Matrix<CellIn>) : literal(cell as CellIn),
  );
  return `=${namespace}.${fn.name}(${args.join(", ")})`;
}

/** The call with its argument names, optional ones in brackets: REMOVAL(crop, yield, nutrient, [part]). */
export function signature(fn: WorksheetFunction): string {
  const names = Object.entries<{ shape: string }>(fn.args).map(([name, { shape }]) =>
    shape === "optional" ? `[${name}]` : name,
  );
  return `${fn.name}(${names.join(", ")})`;
}
