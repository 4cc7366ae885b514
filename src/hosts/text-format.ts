import type { CellPlan } from "../workbook/plan";

/** The number format of a cell whose content is text whatever it looks like. */
export const textFormat = "@";

/** Text that would turn into a formula when a person opens the cell and presses Enter, unless the cell is text. */
const looksLikeFormula = /^\s*[=+\-@]/;

/** The number format of a cell; typed text that looks like a formula is held fast as text. */
export function formatOf({ content, format }: Pick<CellPlan, "content" | "format">): string | undefined {
  const isHeld = typeof content === "string" && looksLikeFormula.test(content);
  return format ?? (isHeld ? textFormat : undefined);
}
