import { moneyLimits } from "../../core/money/money-limits";
import { revenueSpread as revenueSpreadOf } from "../../core/risk/revenue-spread";
import { riskLimits } from "../../core/risk/risk-limits";
import { line, optional, quantity, worksheetFunction } from "../frame";

export const revenueSpread = worksheetFunction({
  name: "REVENUESPREAD",
  family: "money",
  summary: "Mean and spread of revenue from past yields and prices that move together.",
  asks: ["average revenue when price and yield move together", "how much does revenue vary", "natural hedge"],
  args: {
    meanYield: quantity(moneyLimits.yield, { says: "mean yield" }),
    yieldSpread: quantity(moneyLimits.yield, { says: "standard deviation of the yield from year to year" }),
    meanPrice: quantity(moneyLimits.price, { says: "mean price" }),
    priceSpread: quantity(moneyLimits.price, { says: "standard deviation of the price from year to year" }),
    correlation: optional(
      quantity(riskLimits.correlation, { says: "of price and yield; below 0 when high yields meet low prices" }),
      0,
      "0: they go their own ways",
    ),
  },
  returns: { shape: "table", unit: "$/ac", says: "a line each, with header" },
  sources: ["bivariate-normal-product"],
  example: {
    call: [190, 25, 4.5, 0.9, -0.5],
    gives: [
      ["Revenue of an acre", "$/ac"],
      ["Mean", 843.75],
      ["Standard deviation", 152.619],
      ["Mean price × mean yield", 855],
    ],
    tolerance: 0.001,
    because:
      "by hand: 190 × 4.50 − 0.5 × 25 × 0.90 = 843.75; variance 12,656.25 + 29,241 − 19,237.50 + 506.25 × 1.25 = 23,292.5625",
  },
  compute: (values) =>
    revenueSpreadOf({
      meanYieldBuPerAc: values.meanYield,
      yieldSdBuPerAc: values.yieldSpread,
      meanPriceUsdPerBu: values.meanPrice,
      priceSdUsdPerBu: values.priceSpread,
      correlation: values.correlation,
    }),
  value: (result) => [
    ["Revenue of an acre", "$/ac"],
    ["Mean", result.meanUsdPerAc],
    ["Standard deviation", result.sdUsdPerAc],
    ["Mean price × mean yield", result.productOfMeansUsdPerAc],
  ],
  working: (result) => [
    line("Mean price × mean yield", result.productOfMeansUsdPerAc, "$/ac"),
    line("Added or taken by moving together", result.meanUsdPerAc - result.productOfMeansUsdPerAc, "$/ac"),
    line("Mean revenue", result.meanUsdPerAc, "$/ac"),
    line("Standard deviation", result.sdUsdPerAc, "$/ac"),
  ],
});
