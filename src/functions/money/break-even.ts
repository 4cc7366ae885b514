import { breakEvenPrice as breakEvenPriceOf } from "../../core/money/break-even-price";
import { breakEvenYield as breakEvenYieldOf } from "../../core/money/break-even-yield";
import { moneyLimits } from "../../core/money/money-limits";
import { line, quantity, worksheetFunction } from "../frame";
import { cost, costPerBushel, otherIncome, price } from "./money-arguments";

export const breakEvenPrice = worksheetFunction({
  name: "BREAKEVENPRICE",
  family: "money",
  summary: "Lowest price at which a crop covers its costs.",
  asks: ["break-even price", "what price do I need", "cost of a bushel"],
  args: { cost, yield: quantity(moneyLimits.yield, { says: "yield expected" }), otherIncome, costPerBushel },
  returns: { shape: "one", unit: "$/bu", says: "break-even price" },
  sources: ["enterprise-budget"],
  example: {
    call: [458.28, 150],
    gives: 3.0552,
    tolerance: 0.000_05,
    because: "by hand: 458.28 / 150",
  },
  compute: (values) =>
    breakEvenPriceOf({
      costUsdPerAc: values.cost,
      yieldBuPerAc: values.yield,
      otherIncomeUsdPerAc: values.otherIncome,
      costUsdPerBu: values.costPerBushel,
    }),
  value: (result) => result.priceUsdPerBu,
  working: (result, values) => [
    line("Cost", values.cost, "$/ac"),
    line("Hauling, drying, storing", values.costPerBushel * values.yield, "$/ac"),
    line("Other income", values.otherIncome, "$/ac"),
    line("Left for the grain to cover", result.costToCoverUsdPerAc, "$/ac"),
    line("Break-even price", result.priceUsdPerBu, "$/bu"),
    ...(result.isCovered ? [line("Note", "other income covers every cost: any price will do")] : []),
  ],
});

export const breakEvenYield = worksheetFunction({
  name: "BREAKEVENYIELD",
  family: "money",
  summary: "Lowest yield at which a crop covers its costs.",
  asks: ["break-even yield", "what yield covers my costs", "how many bushels to cover costs"],
  args: { cost, price, otherIncome, costPerBushel },
  returns: { shape: "one", unit: "bu/ac", says: "break-even yield" },
  sources: ["enterprise-budget"],
  example: { call: [458.28, 6], gives: 76.38, tolerance: 0.0005, because: "by hand: 458.28 / 6" },
  compute: (values) =>
    breakEvenYieldOf({
      costUsdPerAc: values.cost,
      priceUsdPerBu: values.price,
      otherIncomeUsdPerAc: values.otherIncome,
      costUsdPerBu: values.costPerBushel,
    }),
  value: (result) => result.yieldBuPerAc,
  working: (result, values) => [
    line("Cost", values.cost, "$/ac"),
    line("Other income", values.otherIncome, "$/ac"),
    line("Left for the grain to cover", result.costToCoverUsdPerAc, "$/ac"),
    line("A bushel leaves", result.marginUsdPerBu, "$/bu"),
    line("Break-even yield", result.yieldBuPerAc, "bu/ac"),
    ...(result.isCovered ? [line("Note", "other income covers every cost: any yield will do")] : []),
  ],
});
