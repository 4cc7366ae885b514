import { limits } from "../core/limits";
import { nutrientPrice as nutrientPriceOf } from "../core/materials/nutrient-price";
import { productRate as productRateOf } from "../core/materials/product-rate";
import { line, optional, percent, quantity, worksheetFunction, type WorksheetFunction } from "./frame";

const analysisArgument = percent(limits.analysis, {
  says: "share of the nutrient in the product, as on the label: 46 for urea's nitrogen",
});

export const productRate = worksheetFunction({
  name: "PRODUCTRATE",
  family: "materials",
  summary: "Pounds of a product that carry the nutrient an acre needs.",
  args: {
    need: quantity(limits.ratePounds, { says: "pounds of the nutrient wanted per acre" }),
    analysis: analysisArgument,
  },
  returns: { shape: "one", unit: "lb/ac", says: "pounds of product per acre" },
  sources: ["osu-anr74"],
  cautions: ["A product with two nutrients is sized on the first and credited for the second."],
  example: {
    call: [110, 52],
    gives: 211.54,
    because: "by hand: 110 / 0.52; a printed case rounds it to 210",
  },
  compute: ({ need, analysis }) => productRateOf({ needLbPerAc: need, analysisPct: analysis }),
  value: (result) => result.productLbPerAc,
  working: (result) => [
    line("Nutrient wanted", result.needLbPerAc, "lb/ac"),
    line("Pounds of nutrient in 100 lb of product", result.analysisPct, "lb"),
    line("Product", result.productLbPerAc, "lb/ac"),
  ],
});

export const nutrientPrice = worksheetFunction({
  name: "NUTRIENTPRICE",
  family: "materials",
  summary: "Price of a pound of nutrient in a product sold by the ton.",
  args: {
    pricePerTon: quantity(limits.price, { says: "delivered price of a ton of product" }),
    analysis: analysisArgument,
    otherNutrientsValue: optional(
      quantity(limits.price, { says: "worth of the other nutrients in that ton" }),
      0,
      "the product holds one nutrient that counts",
    ),
  },
  returns: { shape: "one", unit: "$/lb", says: "dollars per pound of the nutrient" },
  sources: ["nmsu-a133", "purdue-reckoning-2002"],
  example: { call: [996, 46], gives: 1.083, because: "printed as $1.08: 996 / (20 × 46) = 996 / 920" },
  compute: ({ pricePerTon, analysis, otherNutrientsValue }) =>
    nutrientPriceOf({
      priceUsdPerTon: pricePerTon,
      analysisPct: analysis,
      otherNutrientsUsdPerTon: otherNutrientsValue,
    }),
  value: (result) => result.priceUsdPerLb,
  working: (result) => [
    line("Pounds of the nutrient in a ton", result.nutrientLbPerTon, "lb/ton"),
    line("Dollars left for it", result.leftUsdPerTon, "$/ton"),
    line("Price", result.priceUsdPerLb, "$/lb"),
  ],
});

/** Everything this family puts on the sheet. */
export const materialFunctions: readonly WorksheetFunction[] = [productRate, nutrientPrice];
