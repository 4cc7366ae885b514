import { formula, joined, type Expression, type Term } from "../../formula/expression";
import { sumOfAmounts } from "../../formula/natives";
import { place } from "../../formula/reference";
import type { MatrixBlock, MatrixRow } from "../../model/block";
import { formats } from "../../model/cell";
import { budgetCell } from "./budget-rows";
import { ofCrop } from "./crop-lookup";
import { cropHeads } from "./crop-matrix";
import type { FarmContext } from "./farm-context";
import { limePlan, nutrientPlan, seedPlan } from "./headers";
import { named } from "./names";

const poundsPerTon = 2000;
const at = (row: string, column: string) => place(`orders.${row}.${column}`);
const wholeOf = (table: { readonly table: string }, column: string) => place(`${table.table}.${column}.whole`);

/** What has to be bought for the plan, and what it comes to. */
export function ordersBlock(context: FarmContext): MatrixBlock {
  return {
    kind: "matrix",
    key: "orders",
    title: "What to order",
    corner: "",
    columns: [
      { key: "amount", head: "Amount" },
      { key: "cost", head: "Cost $" },
    ],
    rows: [...fertilizerRows(context), ...otherRows(), totalRow()],
  };
}

function fertilizerRows(context: FarmContext): MatrixRow[] {
  const phosphate = wholeOf(nutrientPlan, "phosphateTons");
  const potash = wholeOf(nutrientPlan, "potashTons");
  const nitrogenCost = formula`${at("nitrogen", "amount")}*${named("nitrogenPrice")}`;
  return [
    order("phosphate", "Phosphate product", "tons", phosphate, formula`${phosphate}*${named("phosphateTonPrice")}`),
    order("potash", "Potash product", "tons", potash, formula`${potash}*${named("potashTonPrice")}`),
    order("nitrogen", "Nitrogen, less what comes along", "lb N", nitrogenToBuy(context), nitrogenCost),
  ];
}

function otherRows(): MatrixRow[] {
  const units = sumOfAmounts(seedPlan.all("units"));
  return [
    order("lime", "Lime", "tons", wholeOf(limePlan, "tons"), wholeOf(limePlan, "cost")),
    order("seed", "Seed", "units", units, wholeOf(seedPlan, "cost")),
  ];
}

function totalRow(): MatrixRow {
  return {
    key: "all",
    label: "In all",
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
  const cells = [amount, cost].map((value) => ({ kind: "computed" as const, formula: formula`${value}` }));
  return { key, label, unit, format: formats.whole, cells };
}

/** Nitrogen by the table of crops, less what the phosphate product brings. */
function nitrogenToBuy({ crops }: FarmContext): Expression {
  const perCrop = cropHeads(crops).map(
    ({ key }) => formula`${budgetCell("acres", key)}*${ofCrop(budgetCell("head", key), "nitrogen")}`,
  );
  const along = formula`${wholeOf(nutrientPlan, "phosphateTons")}*${poundsPerTon}*${named("phosphateNitrogen")}/100`;
  return formula`MAX(0,${joined(perCrop, "+")}-${along})`;
}
