import { breakEvenGain as breakEvenGainOf } from "../core/money/break-even-gain";
import { breakEvenPrice as breakEvenPriceOf } from "../core/money/break-even-price";
import { breakEvenYield as breakEvenYieldOf } from "../core/money/break-even-yield";
import { refuse } from "../core/fault";
import { moneyLimits } from "../core/money/money-limits";
import { partialBudget as partialBudgetOf } from "../core/money/partial-budget";
import { profitGrid as profitGridOf, type ProfitCell } from "../core/money/profit-grid";
import { returnPerDollar as returnPerDollarOf } from "../core/money/return-per-dollar";
import { line, list, optional, quantity, worksheetFunction, type ManyArgument } from "./frame";
import { firstRunsAcross, heading } from "./heading";

const price = quantity(moneyLimits.price, { says: "price of the crop" });
const cost = quantity(moneyLimits.costPerAc, { says: "costs that do not change with the yield" });
const costPerBushel = optional(
  quantity(moneyLimits.costPerBushel, { says: "hauling, drying and storing of each bushel" }),
  0,
  "0",
);
const otherIncome = optional(
  quantity(moneyLimits.otherIncome, { says: "income besides the grain: payments, indemnity, straw" }),
  0,
  "0",
);

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
      refuse({ kind: "waiting", argument: "addedReturns" });
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

export const profitGrid = worksheetFunction({
  name: "PROFITGRID",
  family: "money",
  summary: "Profit per acre for every yield and price, to set inside your own headings.",
  asks: ["profit at different prices and yields", "table of yield and price", "what if the price falls"],
  args: {
    yields: heading(quantity(moneyLimits.yield, { says: "yields" }), {
      says: "yields down the side or across the top",
    }),
    prices: heading(quantity(moneyLimits.price, { says: "prices" }), {
      says: "prices across the top or down the side",
    }),
    cost,
    otherIncome,
    costPerBushel,
  },
  returns: {
    shape: "table",
    unit: "$/ac",
    says: "profit only, without headings: it runs the way your headings run, yields down when they do not tell",
  },
  sources: ["enterprise-budget"],
  example: {
    call: [[[150], [180]], [[4, 4.5, 5]], 700],
    gives: [
      [-100, -25, 50],
      [20, 110, 200],
    ],
    because: "by hand: 150 × 4 − 700 = −100; 150 × 4.50 − 700 = −25; and so on to 180 × 5 − 700 = 200",
  },
  compute: ({ yields, prices, cost: costUsdPerAc, otherIncome: other, costPerBushel: costUsdPerBu }) => {
    const grid = profitGridOf({
      yieldsBuPerAc: yields.values,
      pricesUsdPerBu: prices.values,
      costUsdPerAc,
      otherIncomeUsdPerAc: other,
      costUsdPerBu,
    });
    const blank = yields.values.every((value) => value === null) ? "yields" : "prices";
    return grid ?? refuse({ kind: "waiting", argument: blank });
  },
  value: (result, { yields, prices }) => {
    const body = result.profitUsdPerAc.map((row) => row.map((profit) => profit ?? ""));
    return firstRunsAcross(yields, prices) ? turned(body) : body;
  },
  working: (result) => [
    line(pairing("Best", result.best), result.best.profitUsdPerAc, "$/ac"),
    line(pairing("Worst", result.worst), result.worst.profitUsdPerAc, "$/ac"),
    line("Pairings that lose money", `${result.losingCells} of ${result.cells}`),
    line("Mind", "high yields often meet low prices: the middle of the grid is not the expected profit"),
  ],
});

function pairing(label: string, { yieldBuPerAc, priceUsdPerBu }: ProfitCell): string {
  return `${label}: ${yieldBuPerAc} bu/ac at ${priceUsdPerBu} $/bu`;
}

function turned<T>(rows: readonly (readonly T[])[]): T[][] {
  return (rows[0] ?? []).map((_, column) => rows.map((row) => row[column] as T)); // rectangular by construction
}

export const moneyFunctions = [
  partialBudget,
  breakEvenGain,
  breakEvenPrice,
  breakEvenYield,
  returnPerDollar,
  profitGrid,
] as const;
