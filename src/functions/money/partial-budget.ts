import { waitFor } from "../../core/fault";
import { breakEvenGain as breakEvenGainOf } from "../../core/money/break-even-gain";
import { moneyLimits } from "../../core/money/money-limits";
import { partialBudget as partialBudgetOf } from "../../core/money/partial-budget";
import { returnPerDollar as returnPerDollarOf } from "../../core/money/return-per-dollar";
import { line, list, optional, quantity, worksheetFunction, type ManyArgument } from "../frame";
import { price } from "./money-arguments";

function amounts(says: string): ManyArgument<readonly number[]> {
  return list(quantity(moneyLimits.amount, { says }), { says: `${says}; a cell or a list, blank is 0`, atLeast: 0 });
}

export const partialBudget = worksheetFunction({
  name: "PARTIALBUDGET",
  family: "money",
  summary: "Dollars a change adds or takes when only part of the business changes.",
  asks: ["partial budget", "does a change pay", "what do I gain by switching"],
  args: {
    addedReturns: amounts("returns that the change brings"),
    reducedCosts: amounts("costs that the change saves"),
    addedCosts: amounts("costs that the change brings"),
    reducedReturns: amounts("returns that the change takes away"),
  },
  returns: { shape: "one", unit: "$", says: "net change, for the acres and season of the entries" },
  sources: ["partial-budget"],
  example: {
    call: [97_500, 55_000, 69_000, 88_000],
    gives: -4500,
    because: "printed: 100 ac of corn in place of dry beans, 97,500 + 55,000 − 69,000 − 88,000",
  },
  compute: ({ addedReturns, reducedCosts, addedCosts, reducedReturns }) => {
    if (addedReturns.length + reducedCosts.length + addedCosts.length + reducedReturns.length === 0) {
      waitFor("addedReturns");
    }
    return partialBudgetOf({
      addedReturnsUsd: addedReturns,
      reducedCostsUsd: reducedCosts,
      addedCostsUsd: addedCosts,
      reducedReturnsUsd: reducedReturns,
    });
  },
  value: (result) => result.netUsd,
  working: (result) => [
    line("Added returns", result.addedReturnsUsd, "$"),
    line("Reduced costs", result.reducedCostsUsd, "$"),
    line("For the change", result.gainsUsd, "$"),
    line("Added costs", result.addedCostsUsd, "$"),
    line("Reduced returns", result.reducedReturnsUsd, "$"),
    line("Against the change", result.lossesUsd, "$"),
    line("Net change", result.netUsd, "$"),
    result.returnPerDollar === null
      ? line("Returned per dollar of added cost", "nothing is spent")
      : line("Returned per dollar of added cost", result.returnPerDollar, "$"),
  ],
});

export const breakEvenGain = worksheetFunction({
  name: "BREAKEVENGAIN",
  family: "money",
  summary: "Bushels per acre a practice must add to pay for itself.",
  asks: [
    "how many bushels to pay for fungicide",
    "gain to pay for a practice",
    "break-even bushels",
    "how much more yield pays for it",
  ],
  args: {
    cost: quantity(moneyLimits.costPerAc, { says: "cost of the practice, less what it saves" }),
    price,
    costPerBushel: optional(
      quantity(moneyLimits.costPerBushel, { says: "hauling, drying and storing of each extra bushel" }),
      0,
      "0",
    ),
  },
  returns: { shape: "one", unit: "bu/ac", says: "yield gain that pays the cost" },
  sources: ["partial-budget"],
  example: {
    call: [24, 4.5, 0.15],
    gives: 5.5172,
    tolerance: 0.0001,
    because: "by hand: 24 / (4.50 − 0.15) = 24 / 4.35",
  },
  compute: (values) =>
    breakEvenGainOf({
      costUsdPerAc: values.cost,
      priceUsdPerBu: values.price,
      costUsdPerBu: values.costPerBushel,
    }),
  value: (result) => result.gainBuPerAc,
  working: (result, values) => [
    line("Cost of the practice", values.cost, "$/ac"),
    line("A bushel leaves", result.marginUsdPerBu, "$/bu"),
    line("Gain that pays", result.gainBuPerAc, "bu/ac"),
  ],
});

export const returnPerDollar = worksheetFunction({
  name: "RETURNPERDOLLAR",
  family: "money",
  summary: "Dollars that come back for each dollar a practice costs.",
  asks: ["return per dollar", "what do I get back for a dollar", "benefit to cost"],
  args: {
    addedReturns: quantity(moneyLimits.amount, { says: "returns the practice adds, costs it saves included" }),
    addedCosts: quantity(moneyLimits.amount, { says: "costs the practice adds" }),
  },
  returns: { shape: "one", unit: "$ per $", says: "above 1 the practice pays" },
  sources: ["partial-budget"],
  example: { call: [36, 24], gives: 1.5, because: "by hand: 36 / 24" },
  compute: (values) => returnPerDollarOf({ addedReturnsUsd: values.addedReturns, addedCostsUsd: values.addedCosts }),
  value: (result) => result.returnPerDollar,
  working: (result) => [
    line("Returned per dollar", result.returnPerDollar, "$"),
    line("Left of each dollar after paying it back", result.netPerDollar, "$"),
    line("Net", result.netUsd, "$"),
    line("Verdict", result.pays ? "pays" : "does not pay"),
  ],
});
