import { poundPerTon } from "../../../../core/units/units";
import { formula, type Term } from "../../../formula/expression";
import { sumOfAmounts } from "../../../formula/natives";
import { place } from "../../../formula/reference";
import type { MatrixBlock, MatrixRow } from "../../../model/block";
import { formats } from "../../../model/cell";
import { computedCells } from "../../../model/matrix-rows";
import { limePlan, productPlan, seedPlan } from "../headers";
import { named } from "../names";

const at = (row: string, column: string) => place(`orders.${row}.${column}`);

/** What has to be bought for the plan, and what it comes to. */
export function ordersBlock(): MatrixBlock {
  return {
    kind: "matrix",
    key: "orders",
    title: "What to order",
    corner: "",
    columns: [
      { key: "amount", head: "Amount" },
      { key: "cost", head: "Cost $" },
    ],
    rows: [...fertilizerRows(), ...otherRows(), totalRow()],
  };
}

function fertilizerRows(): MatrixRow[] {
  const lines = [
    ["phosphate", "Phosphate product"],
    ["potash", "Potash product"],
    ["sulfur", "Sulfur product"],
    ["zinc", "Zinc product"],
    ["nitrogen", "Nitrogen product, less what comes along"],
  ] as const;
  return lines.map(([nutrient, label]) => {
    const pounds = formula`SUMPRODUCT(${productPlan.all(nutrient)},${productPlan.all("acres")})`;
    const price = named(`${nutrient}TonPrice`);
    return order(
      nutrient,
      label,
      "tons",
      formula`${pounds}/${poundPerTon}`,
      formula`${at(nutrient, "amount")}*SUM(${price})`,
    );
  });
}

function otherRows(): MatrixRow[] {
  const units = sumOfAmounts(seedPlan.all("units"));
  return [
    order("lime", "Lime", "tons", limePlan.whole("tons"), limePlan.whole("cost")),
    order("seed", "Seed", "units", units, seedPlan.whole("cost")),
  ];
}

function totalRow(): MatrixRow {
  return {
    key: "all",
    label: "In all, before spreading",
    unit: "",
    format: formats.whole,
    total: true,
    cells: [
      { kind: "computed", formula: formula`""`, words: true },
      { kind: "computed", formula: formula`SUM(${at("phosphate", "cost")}:${at("seed", "cost")})` },
    ],
  };
}

function order(key: string, label: string, unit: string, amount: Term, cost: Term): MatrixRow {
  return { key, label, unit, format: formats.whole, cells: computedCells(amount, cost) };
}
