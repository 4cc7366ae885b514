import { formula, type Expression } from "../../formula/expression";
import { place } from "../../formula/reference";
import type { MatrixBlock, MatrixRow } from "../../model/block";
import { formats } from "../../model/cell";
import { cropTable, limePlan, nutrientPlan, seedPlan } from "./headers";
import { fieldTable } from "./headers";
import { named } from "./names";

const poundsPerTon = 2000;
const at = (row: string, column: string) => place(`orders.${row}.${column}`);
const wholeOf = (table: { readonly table: string }, column: string) => place(`${table.table}.${column}.whole`);

/** What has to be bought for the plan, and what it comes to. */
export function ordersBlock(): MatrixBlock {
  const tons = (column: "phosphateTons" | "potashTons") => wholeOf(nutrientPlan, column);
  return {
    kind: "matrix",
    key: "orders",
    title: "What to order",
    corner: "",
    columns: [
      { key: "amount", head: "Amount" },
      { key: "cost", head: "Cost $" },
    ],
    rows: [
      order(
        "phosphate",
        "Phosphate product",
        "tons",
        tons("phosphateTons"),
        cost(tons("phosphateTons"), "phosphateTonPrice"),
      ),
      order("potash", "Potash product", "tons", tons("potashTons"), cost(tons("potashTons"), "potashTonPrice")),
      order(
        "nitrogen",
        "Nitrogen, less what comes along",
        "lb N",
        nitrogenToBuy(),
        formula`${at("nitrogen", "amount")}*${named("nitrogenPrice")}`,
      ),
      order("lime", "Lime", "tons", wholeOf(limePlan, "tons"), formula`${wholeOf(limePlan, "cost")}`),
      order(
        "seed",
        "Seed",
        "units",
        formula`SUMIF(${seedPlan.all("units")},">0")`,
        formula`${wholeOf(seedPlan, "cost")}`,
      ),
      {
        key: "all",
        label: "In all",
        unit: "",
        format: formats.whole,
        total: true,
        cells: [
          { kind: "computed", formula: formula`""`, words: true },
          { kind: "computed", formula: formula`SUM(${at("phosphate", "cost")}:${at("seed", "cost")})` },
        ],
      },
    ],
  };
}

function order(
  key: string,
  label: string,
  unit: string,
  amount: Expression | ReturnType<typeof place>,
  price: Expression,
): MatrixRow {
  return {
    key,
    label,
    unit,
    format: formats.whole,
    cells: [
      { kind: "computed", formula: formula`${amount}` },
      { kind: "computed", formula: price },
    ],
  };
}

function cost(tons: ReturnType<typeof place>, price: "phosphateTonPrice" | "potashTonPrice"): Expression {
  return formula`${tons}*${named(price)}`;
}

/** Nitrogen by the table of crops, less what the phosphate product brings. */
function nitrogenToBuy(): Expression {
  const wanted = formula`SUMPRODUCT(SUMIF(${fieldTable.all("nextCrop")},${cropTable.all("crop")},${fieldTable.all("acres")})*${cropTable.all("nitrogen")})`;
  const along = formula`${place(`${nutrientPlan.table}.phosphateTons.whole`)}*${poundsPerTon}*${named("phosphateNitrogen")}/100`;
  return formula`MAX(0,${wanted}-${along})`;
}
