import { poundPerTon } from "../../../../core/units/units";
import { formula, joined, type Expression, type Term } from "../../../formula/expression";
import { lookUp, quiet, sumOfAmounts, wordsInRow } from "../../../formula/natives";
import { place } from "../../../formula/reference";
import type { MatrixBlock, MatrixRow } from "../../../model/block";
import { formats } from "../../../model/cell";
import { computed, computedWords } from "../../../model/columns";
import { computedCells } from "../../../model/matrix-rows";
import { remarks } from "../../../model/paragraphs";
import { tableBlock } from "../../../model/table";
import type { SheetModel } from "../../../model/workbook-model";
import { tabColors } from "../../tab-colors";
import { farmSheets } from "../farm-sheets";
import { limePlan, materialTable, productPlan, seedPlan, shoppingList, type PlannedNutrient } from "../headers";
import { materialRows } from "../materials/material-rows";
import { named } from "../names";
import { chosenMaterial } from "../materials/plan-materials-block";
import { plannedNutrients } from "./product-plan-sheet";

const own = shoppingList.own;

export function shoppingListSheet(): SheetModel {
  return {
    key: "shopping-list",
    name: farmSheets["shopping-list"].name,
    tabColor: tabColors.answer,
    title: "Shopping list",
    answers: "Tons of each material and dollars for the whole farm: the rates of the product plan times the acres.",
    blocks: [
      tableBlock(shoppingList, { rows: materialRows, wholeLabel: "Fertilizer in all" }, columns()),
      otherBlock(),
      remarks(
        "Fields that still wait for a rate are not in it. Order by the truck and bag the dealer sells, and keep the tickets.",
      ),
    ],
    freeze: { table: shoppingList.table, columns: 1 },
    widths: [34, 30, 13, 13, 13, 13],
    print: { orientation: "portrait", onePage: true },
  };
}

function columns() {
  const fact = quiet(lookUp(own("material"), materialTable.all("material"), materialTable.all("price")));
  return {
    material: computedWords(wordsInRow(materialTable.all("material"), shoppingList.rowNumber), { width: 34 }),
    purpose: computedWords(formula`IF(${own("material")}="","",${purposes()})`, { width: 30 }),
    pounds: computed(formula`IF(${own("material")}="","",${pounds()})`, { width: 13, format: formats.whole }),
    tons: computed(formula`IF(${own("material")}="","",${own("pounds")}/${poundPerTon})`, {
      width: 13,
      format: formats.one,
      whole: sumOfAmounts(shoppingList.all("tons")),
    }),
    price: computed(formula`IF(${own("material")}="","",SUM(${fact}))`, { width: 13, format: formats.dollars }),
    cost: computed(formula`IF(${own("material")}="","",${own("tons")}*${own("price")})`, {
      width: 13,
      format: formats.dollars,
      whole: sumOfAmounts(shoppingList.all("cost")),
    }),
  };
}

/** Pounds over all fields, for every nutrient that this material is chosen for. */
function pounds(): Expression {
  const part = (nutrient: PlannedNutrient) =>
    formula`IF(${own("material")}=${chosenMaterial(nutrient)},SUMPRODUCT(${productPlan.all(nutrient)},${productPlan.all("acres")}),0)`;
  return joined(plannedNutrients.map(part), "+");
}

/** "phosphate, sulfur", or that the plan has no use for it. */
function purposes(): Expression {
  const part = (nutrient: PlannedNutrient) =>
    formula`IF(${own("material")}=${chosenMaterial(nutrient)},${`, ${nutrient}`},"")`;
  return formula`IF(${own("pounds")}>0,MID(${joined(plannedNutrients.map(part), "&")},3,60),"not in the plan")`;
}

type OrderColumn = "amount" | "price" | "cost";
const at = (row: string, column: OrderColumn) => place("beside", row, column);

/** What the plan buys beside fertilizer, and the sum of it all. */
function otherBlock(): MatrixBlock {
  const columns = [
    { key: "amount", head: "Amount" },
    { key: "price", head: "Price $" },
    { key: "cost", head: "Cost $" },
  ];
  return {
    kind: "matrix",
    key: "beside",
    title: "And beside it",
    corner: "",
    columns,
    rows: [
      order("lime", "Lime, delivered and spread", "tons", [limePlan.whole("tons"), named("limePrice")]),
      order("spreading", "Spreading fertilizer", "ac", [productPlan.whole("spread"), named("spreadingCost")]),
      seedRow(),
      totalRow(),
    ],
  };
}

function order(key: string, label: string, unit: string, [amount, price]: readonly [Term, Term]): MatrixRow {
  const cost = formula`${at(key, "amount")}*${at(key, "price")}`;
  return { key, label, unit, format: formats.whole, cells: computedCells(amount, price, cost) };
}

function seedRow(): MatrixRow {
  return {
    key: "seed",
    label: "Seed, units of all crops",
    unit: "units",
    format: formats.whole,
    cells: computedCells(sumOfAmounts(seedPlan.all("units")), "", sumOfAmounts(seedPlan.all("cost"))),
  };
}

function totalRow(): MatrixRow {
  const total = formula`${shoppingList.whole("cost")}+SUM(${at("lime", "cost")}:${at("seed", "cost")})`;
  return {
    key: "all",
    label: "Everything",
    unit: "$",
    format: formats.dollars,
    total: true,
    cells: computedCells("", "", total),
  };
}
