import { poundPerTon } from "../../../../core/units/units";
import { productRate } from "../../../../functions/materials/product-rate";
import { call } from "../../../formula/call";
import { formula, joined, type Expression, type Term } from "../../../formula/expression";
import { sumOfAmounts, times, whenNumbers } from "../../../formula/natives";
import { formats } from "../../../model/cell";
import { computed, computedWords } from "../../../model/columns";
import { cautions } from "../../../model/paragraphs";
import { tableBlock } from "../../../model/table";
import type { SheetModel } from "../../../model/workbook-model";
import { tabColors } from "../../tab-colors";
import type { FarmContext } from "../farm-context";
import { farmSheets } from "../farm-sheets";
import { fieldOfRow, fromFields, wordsFromFields } from "../field-lookup";
import { plannedFor } from "./fertility-plan-sheet";
import { productPlan, type PlannedNutrient } from "../headers";
import { named, type FarmName } from "../names";

const own = productPlan.own;
const field = own("field");

/** Nutrients in the order their products are sized: nitrogen last, after what comes along with the others. */
export const plannedNutrients = ["phosphate", "potash", "sulfur", "zinc", "nitrogen"] as const;
const broadcast = ["phosphate", "potash", "sulfur", "zinc"] as const;

export function productPlanSheet({ rows }: FarmContext): SheetModel {
  return {
    key: "product-plan",
    name: farmSheets["product-plan"].name,
    tabColor: tabColors.answer,
    title: "Product plan",
    answers: "Pounds of product that carry what is planned, the nitrogen that comes along, and what an acre costs.",
    blocks: [
      tableBlock(
        productPlan,
        { rows, wholeLabel: "Whole farm" },
        { ...fieldColumns(), ...broadcastColumns(), ...nitrogenColumns(), ...costColumns() },
      ),
      cautions(
        "A product with two nutrients is sized on the first and credited for the nitrogen in it. The label of the product at hand gives its analysis.",
        "Anhydrous ammonia: only trained people, with the protection and the water the supplier calls for.",
      ),
    ],
    freeze: { table: productPlan.table, columns: 1 },
    print: { orientation: "landscape" },
  };
}

function fieldColumns() {
  return {
    field: computedWords(fieldOfRow(productPlan), { width: 18 }),
    acres: computed(fromFields(field, "acres"), {
      width: 9,
      format: formats.one,
      whole: sumOfAmounts(productPlan.all("acres")),
    }),
    nextCrop: computedWords(wordsFromFields(field, "nextCrop"), { width: 10 }),
  };
}

function broadcastColumns() {
  const rate = (nutrient: (typeof broadcast)[number]) =>
    computed(rateOf(plannedFor(field, nutrient), named(`${nutrient}Analysis`)), { width: 13, format: formats.whole });
  return { phosphate: rate("phosphate"), potash: rate("potash"), sulfur: rate("sulfur"), zinc: rate("zinc") };
}

function rateOf(need: Term, analysis: Term): Expression {
  return whenNumbers([need, analysis], call(productRate, { need, analysis }));
}

function nitrogenColumns() {
  // SUM passes over a cell that waits, where the sign + would not.
  const along = formula`(${joined(
    broadcast.map((nutrient) => formula`SUM(${own(nutrient)})*SUM(${named(`${nutrient}Nitrogen`)})`),
    "+",
  )})/100`;
  const anyRate = formula`COUNT(${joined(broadcast.map(own), ",")})`;
  const need = plannedFor(field, "nitrogen");
  const left = formula`MAX(0,${need}-SUM(${own("nitrogenInIt")}))`;
  return {
    nitrogenInIt: computed(formula`IF(${anyRate}=0,"",${along})`, {
      width: 10,
      format: formats.whole,
      note: "Nitrogen in the other products. It is taken off the nitrogen to buy.",
    }),
    nitrogen: computed(
      whenNumbers(
        [need, named("nitrogenAnalysis")],
        call(productRate, { need: left, analysis: named("nitrogenAnalysis") }),
      ),
      { width: 13, format: formats.whole, note: "For the nitrogen planned, less what comes along." },
    ),
  };
}

function costColumns() {
  const tonPrice = (nutrient: PlannedNutrient) => named(`${nutrient}TonPrice` satisfies FarmName);
  const products = formula`(${joined(
    plannedNutrients.map((nutrient) => formula`SUM(${own(nutrient)})*SUM(${tonPrice(nutrient)})`),
    "+",
  )})/${poundPerTon}`;
  const isSpread = formula`SUM(${joined(broadcast.map(own), ",")})>0`;
  const spreading = formula`IF(${isSpread},${named("spreadingCost")},0)`;
  return {
    spread: computed(whenNumbers([own("acres"), own("perAcre")], formula`IF(${isSpread},${own("acres")},0)`), {
      width: 10,
      format: formats.one,
      note: "Acres that get a broadcast product; nitrogen alone does not count.",
      whole: sumOfAmounts(productPlan.all("spread")),
    }),
    perAcre: computed(whenNumbers([own("phosphate"), own("potash")], formula`${products}+${spreading}`), {
      width: 10,
      format: formats.cents,
      note: "All products and one spreading pass; putting on nitrogen by itself is in the crop budgets.",
    }),
    cost: computed(times(own("perAcre"), own("acres")), {
      width: 12,
      format: formats.dollars,
      whole: sumOfAmounts(productPlan.all("cost")),
    }),
  };
}
