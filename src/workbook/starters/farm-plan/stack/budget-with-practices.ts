import { formula, type Expression } from "../../../formula/expression";
import type { MatrixBlock, MatrixRow } from "../../../model/block";
import { formats } from "../../../model/cell";
import { computedRow } from "../../../model/matrix-rows";
import { budgetCell } from "../budgets/budget-rows";
import { cropHeads, ofCrop } from "../crop-lookup";
import type { FarmContext } from "../farm-context";
import { term } from "../practices/practice-terms-block";
import { setLine } from "./stack-set-block";

const key = "budget-practices";

/** A figure of the chosen set for a crop; 0 for the crops it is not for. */
export function ofSet(line: "cost" | "gain", column: string): Expression {
  return formula`IF(${budgetCell("head", column)}=${term("crop")},SUM(${setLine(line)}),0)`;
}

/** Profit over all costs with the chosen set on top of the budget. */
export function profitWithSet(column: string): Expression {
  const head = budgetCell("head", column);
  const margin = formula`(${ofCrop(head, "price")}-${ofCrop(head, "costPerBushel")})`;
  return formula`${budgetCell("profit", column)}+${ofSet("gain", column)}*${margin}-${ofSet("cost", column)}`;
}

/** What the practices of the stack would change; the budget above holds none of it. */
export function budgetWithPractices({ crops }: FarmContext): MatrixBlock {
  const columns = cropHeads(crops);
  const row = (facts: Omit<MatrixRow, "cells" | "unit">, unit: string, of: (column: string) => Expression) =>
    computedRow({ ...facts, unit }, columns, of);
  return {
    kind: "matrix",
    key,
    title: "With the practices of the stack, not in the budget above",
    corner: "An acre of",
    columns,
    rows: [
      row({ key: "cost", label: "Practices cost", format: formats.cents }, "$/ac", (column) => ofSet("cost", column)),
      row({ key: "gain", label: "Gain expected", format: formats.signedOne }, "bu/ac", (column) =>
        ofSet("gain", column),
      ),
      row(
        { key: "profit", label: "Over all costs with them", format: formats.cents, total: true },
        "$/ac",
        profitWithSet,
      ),
    ],
  };
}
