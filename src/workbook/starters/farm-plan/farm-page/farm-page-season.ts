import { formula, type Expression } from "../../../formula/expression";
import { place } from "../../../formula/reference";
import type { MatrixBlock, MatrixCell, MatrixRow } from "../../../model/block";
import { formats } from "../../../model/cell";
import { computedCells } from "../../../model/matrix-rows";
import { budgetCell } from "../budgets/budget-rows";
import { cropHeads } from "../crop-lookup";
import type { FarmContext } from "../farm-context";
import { profitWithSet } from "../stack/budget-with-practices";
import { outlookCell } from "./profit-range-sheet";

const at = (row: string, column: string) => place(`farm-page.${row}.${column}`);

/** Crops side by side, an acre of each, and the farm's dollars in the last column. */
export function farmPageSeason({ crops, parts }: FarmContext): MatrixBlock {
  const heads = cropHeads(crops);
  const row = (facts: Omit<MatrixRow, "cells">, of: (column: string) => Expression, whole: MatrixCell): MatrixRow => ({
    ...facts,
    cells: [...computedCells(...heads.map(({ key }) => of(key))), whole],
  });
  const first = heads[0]?.key ?? "";
  const last = heads[heads.length - 1]?.key ?? "";
  const span = (key: string) => formula`${at(key, first)}:${at(key, last)}`;
  const acres: MatrixCell = { kind: "computed", formula: formula`SUM(${span("acres")})` };
  const farm = (key: string): MatrixCell => ({
    kind: "computed",
    formula: formula`SUMPRODUCT(${span("acres")},${span(key)})`,
  });
  const line = (facts: Omit<MatrixRow, "cells">, of: (column: string) => Expression) => row(facts, of, nothing);
  const money = (key: string, label: string, of: (column: string) => Expression, total = false) =>
    row({ key, label, unit: "$/ac, farm $", format: formats.dollars, total }, of, farm(key));
  const budget = (key: string) => (column: string) => formula`${budgetCell(key, column)}`;
  const outlook = (key: string) => (column: string) => formula`${outlookCell(key, column)}`;
  const perBushel = { unit: "$/bu", format: formats.cents };
  const perAcre = { unit: "$/ac", format: formats.dollars };
  return {
    kind: "matrix",
    key: "farm-page",
    title: "The season",
    corner: "An acre of",
    columns: [...heads, { key: "farm", head: "Whole farm" }],
    rows: [
      row({ key: "acres", label: "Acres", unit: "ac", format: formats.one }, budget("acres"), acres),
      line({ key: "yield", label: "Yield goal", unit: "bu/ac", format: formats.one }, budget("yield")),
      line({ key: "price", label: "Price planned", ...perBushel }, budget("price")),
      money("gross", "Income", budget("gross")),
      money("running", "Running costs", budget("running")),
      money(
        "owned",
        "Standing costs before land",
        (column) => formula`${budgetCell("standing", column)}-${budgetCell("land", column)}`,
      ),
      money("land", "Land", budget("land")),
      money("profit", "Left over all costs", budget("profit"), true),
      ...(parts.includes("practices") ? [money("withSet", "Left with the practices taken up", profitWithSet)] : []),
      line({ key: "allPrice", label: "Price that covers all costs", ...perBushel }, budget("allPrice")),
      line(
        { key: "allYield", label: "Yield that covers all costs", unit: "bu/ac", format: formats.one },
        budget("allYield"),
      ),
      line({ key: "low", label: "Profit, 1 year in 10 is below", ...perAcre }, outlook("low")),
      line({ key: "middle", label: "Profit, half of the years below", ...perAcre }, outlook("middle")),
      line({ key: "high", label: "Profit, 1 year in 10 is above", ...perAcre }, outlook("high")),
      line(
        { key: "covers", label: "All costs are covered in", unit: "of the years", format: formats.chance },
        outlook("coversAll"),
      ),
    ],
  };
}

/** Figures of an acre that no sum over crops belongs to. */
const nothing: MatrixCell = { kind: "computed", formula: formula`""`, words: true };
