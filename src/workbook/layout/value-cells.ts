import type { Expression } from "../formula/expression";
import type { ModelCell } from "../model/cell";

/** A cell to fill in, with what it starts with; null leaves it blank. */
export function inputCell(start: string | number | null, words = typeof start === "string"): ModelCell {
  return { ...(start !== null && { content: start }), style: words ? "inputText" : "input" };
}

/** A cell that is worked out. */
export function computedCell(formula: Expression, words = false, total = false): ModelCell {
  const kind = total ? "total" : "computed";
  return { content: formula, style: words ? `${kind}Text` : kind };
}
