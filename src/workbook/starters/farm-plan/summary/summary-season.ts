import { formula, type Expression } from "../../../formula/expression";
import { place } from "../../../formula/reference";
import type { MatrixBlock, MatrixRow } from "../../../model/block";
import { formats } from "../../../model/cell";
import { computedCells } from "../../../model/matrix-rows";
import { budgetCell } from "../budgets/budget-rows";
import { cropHeads } from "../crop-lookup";
import type { FarmContext } from "../farm-context";

const at = (row: string, column: string) => place(`season.${row}.${column}`);

/** Crops side by side and the whole farm, in dollars. */
export function seasonBlock({ crops }: FarmContext): MatrixBlock {
  const heads = cropHeads(crops);
  const first = heads[0]?.key ?? "";
  const last = heads[heads.length - 1]?.key ?? "";
  const acrossCrops = (row: string) => formula`SUM(${at(row, first)}:${at(row, last)})`;
  const line = (row: Omit<MatrixRow, "cells">, of: (column: string) => Expression, whole: Expression): MatrixRow => ({
    ...row,
    cells: computedCells(...heads.map(({ key }) => of(key)), whole),
  });
  const dollars = (key: string, label: string, budgetLine: string, total = false) =>
    line(
      { key, label, unit: "$", format: formats.dollars, total },
      (column) => formula`${at("acres", column)}*${budgetCell(budgetLine, column)}`,
      acrossCrops(key),
    );
  const perAcre = (column: string) =>
    formula`IF(${at("acres", column)}>0,${at("profit", column)}/${at("acres", column)},"")`;
  return {
    kind: "matrix",
    key: "season",
    title: "The season",
    corner: "",
    columns: [...heads, { key: "farm", head: "Whole farm" }],
    rows: [
      line(
        { key: "acres", label: "Acres", unit: "ac", format: formats.one },
        (column) => formula`${budgetCell("acres", column)}`,
        acrossCrops("acres"),
      ),
      dollars("gross", "Income", "gross"),
      dollars("running", "Running costs", "running"),
      dollars("standing", "Standing costs", "standing"),
      dollars("profit", "Left over all costs", "profit", true),
      line({ key: "perAcre", label: "An acre", unit: "$/ac", format: formats.cents }, perAcre, perAcre("farm")),
    ],
  };
}
