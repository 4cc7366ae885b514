import { nutrientPrice } from "../../../../functions/materials/nutrient-price";
import { limits } from "../../../../core/limits";
import { call } from "../../../formula/call";
import { formula, joined, type Expression } from "../../../formula/expression";
import { quiet } from "../../../formula/natives";
import type { EntriesBlock } from "../../../model/block";
import { formats } from "../../../model/cell";
import { computed, pick, typedNumber, typedWords, within } from "../../../model/columns";
import { typedEntry } from "../../../model/entries";
import { cautions } from "../../../model/paragraphs";
import { tableBlock, type TableBlock } from "../../../model/table";
import type { SheetModel } from "../../../model/workbook-model";
import { farmExamples, materialExamples } from "../../../scenario/farm-examples";
import { tabColors } from "../../tab-colors";
import type { FarmContext } from "../farm-context";
import { farmSheets } from "../farm-sheets";
import { materialTable } from "../headers";
import { leastCostBlocks } from "./least-cost-blocks";
import { materialRows } from "./material-rows";
import { farmNames, named } from "../names";
import { planMaterialsBlock } from "./plan-materials-block";
import { seedSaltBlock } from "./seed-salt-block";

export function materialsSheet(context: FarmContext): SheetModel {
  return {
    key: "materials",
    name: farmSheets.materials.name,
    tabColor: tabColors.input,
    title: "Materials",
    answers: "Fertilizer on offer, what a pound of nutrient costs in it, what the plan spreads, and the cheapest mix.",
    blocks: [
      materialsBlock(),
      planMaterialsBlock(),
      spreadingBlock(),
      ...leastCostBlocks(context),
      seedSaltBlock(context),
      cautions(
        "The label of the product comes first: its analysis, and whether it may touch seed at all. No urea, UAN, thiosulfate or boron in touch with seed.",
        "Not every mix keeps: urea with ammonium nitrate turns wet, urea with superphosphate cakes. Ask the blender.",
      ),
    ],
    print: { orientation: "portrait", onePage: true },
  };
}

function materialsBlock(): TableBlock {
  const first = { width: 13, format: formats.one, allow: within(limits.share, "Analysis, percent by weight") };
  const analysis = { ...first, width: 10 };
  return tableBlock(
    materialTable,
    { title: "Fertilizer on offer", rows: materialRows },
    {
      material: typedWords(pick(materialExamples, "material"), {
        width: 30,
        note: "Write over these, or add your own below.",
      }),
      nitrogen: typedNumber(pick(materialExamples, "nitrogenPct"), first),
      phosphate: typedNumber(pick(materialExamples, "phosphatePct"), analysis),
      potash: typedNumber(pick(materialExamples, "potashPct"), analysis),
      sulfur: typedNumber(pick(materialExamples, "sulfurPct"), analysis),
      zinc: typedNumber(pick(materialExamples, "zincPct"), analysis),
      price: typedNumber(pick(materialExamples, "priceUsdPerTon"), {
        width: 10,
        format: formats.dollars,
        allow: within(limits.price, "Delivered price of a ton"),
      }),
      most: typedNumber(pick(materialExamples, "mostInBlendLbPerAc"), {
        width: 11,
        format: formats.whole,
        allow: within(limits.ratePounds, "Most of this material in a blend"),
        note: "For the cheapest mix below. Blank: any amount. 0: left out, as liquids and ammonia are in a dry blend.",
      }),
      ...priceColumns(),
    },
  );
}

const priced = ["nitrogen", "phosphate", "potash", "sulfur", "zinc"] as const;
type Priced = (typeof priced)[number];

function priceColumns() {
  const price = (nutrient: Priced) =>
    computed(pricePerPound(nutrient), { width: 10, format: formats.perPound, note: priceNote });
  return {
    nitrogenPrice: price("nitrogen"),
    phosphatePrice: price("phosphate"),
    potashPrice: price("potash"),
    sulfurPrice: price("sulfur"),
    zincPrice: price("zinc"),
  };
}

const priceNote =
  "Dollars a pound, with the other nutrients counted at what the plan's own materials charge for them. Blank where nothing is left to price.";

/** What a pound of one nutrient costs in this material once the others are paid for. */
function pricePerPound(nutrient: Priced): Expression {
  const own = materialTable.own;
  const others = joined(
    priced.filter((other) => other !== nutrient).map((other) => formula`SUM(${own(other)})*${named(`${other}Price`)}`),
    "+",
  );
  const price = call(nutrientPrice, {
    pricePerTon: own("price"),
    analysis: own(nutrient),
    otherNutrientsValue: formula`20*(${others})`,
  });
  return formula`IF(AND(SUM(${own(nutrient)})>0,SUM(${own("price")})>0),${quiet(price)},"")`;
}

function spreadingBlock(): EntriesBlock {
  const line = {
    key: "spreading",
    label: "Spreading",
    unit: "$/ac",
    format: formats.cents,
    name: farmNames.spreadingCost,
    says: "One pass, hired or your own.",
  };
  const allow = within(limits.price, "Spreading an acre");
  return { kind: "entries", key: "spreading", entries: [typedEntry(line, farmExamples.spreadingUsdPerAc, allow)] };
}
