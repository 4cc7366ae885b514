import { limits } from "../../core/limits";
import { nutrientPrice as nutrientPriceOf } from "../../core/materials/nutrient-price";
import { line, optional, quantity, worksheetFunction } from "../frame";
import { analysisArgument } from "./analysis-argument";

export const nutrientPrice = worksheetFunction({
  name: "NUTRIENTPRICE",
  family: "materials",
  summary: "Price of a pound of nutrient in a product sold by the ton.",
  asks: [
    "price per pound of nitrogen",
    "which fertilizer is cheaper",
    "cents a pound of potash",
    "compare urea with UAN",
  ],
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
