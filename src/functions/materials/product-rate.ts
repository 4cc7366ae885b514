import { limits } from "../../core/limits";
import { productRate as productRateOf } from "../../core/materials/product-rate";
import { line, quantity, worksheetFunction } from "../frame";
import { analysisArgument } from "./analysis-argument";

export const productRate = worksheetFunction({
  name: "PRODUCTRATE",
  family: "materials",
  summary: "Pounds of a product that carry the nutrient an acre needs.",
  asks: ["how many pounds of potash fertilizer", "pounds of urea for my nitrogen", "pounds of product per acre"],
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
