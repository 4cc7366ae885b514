import { moneyLimits } from "../../core/money/money-limits";
import { coinFlipPremium } from "../../core/risk/certainty-equivalent";
import type { Outlook } from "../../core/risk/profit-distribution";
import { profitOdds as profitOddsOf } from "../../core/risk/profit-odds";
import { profitRange as profitRangeOf, type ProfitRange } from "../../core/risk/profit-range";
import { riskLimits } from "../../core/risk/risk-limits";
import { priceYieldTies } from "../../reference/money/price-yield";
import { chanceUnit } from "../chance";
import {
  line,
  optional,
  quantity,
  rate as rateOf,
  worksheetFunction,
  type ArgumentValues,
  type CellOut,
  type WorkingLine,
} from "../frame";
import { rangeShape } from "../range-shape";
import { cost, costPerBushel, otherIncome } from "./money-arguments";

const yieldOf = (says: string) => quantity(moneyLimits.yield, { says });
const priceOf = (says: string) => quantity(moneyLimits.price, { says });

const outlookArguments = {
  lowYield: yieldOf("lowest yield you can think of"),
  likelyYield: yieldOf("likeliest yield"),
  highYield: yieldOf("highest yield you can think of"),
  lowPrice: priceOf("lowest price"),
  likelyPrice: priceOf("likeliest price"),
  highPrice: priceOf("highest price"),
  cost,
  correlation: optional(
    quantity(riskLimits.correlation, {
      says: "how price and yield move together; below 0 when high yields meet low prices",
    }),
    0,
    "0: they go their own ways",
  ),
  target: optional(quantity(riskLimits.target, { says: "profit to beat" }), 0, "0: no loss"),
  shape: rangeShape,
  otherIncome,
  costPerBushel,
} as const;

type OutlookValues = ArgumentValues<typeof outlookArguments>;

function outlookOf(values: OutlookValues): Outlook {
  return {
    yieldBuPerAc: { low: values.lowYield, likely: values.likelyYield, high: values.highYield },
    priceUsdPerBu: { low: values.lowPrice, likely: values.likelyPrice, high: values.highPrice },
    shape: values.shape,
    correlation: values.correlation,
    costUsdPerAc: values.cost,
    otherIncomeUsdPerAc: values.otherIncome,
    costUsdPerBu: values.costPerBushel,
  };
}

function mindLines(): readonly WorkingLine[] {
  return [
    ...priceYieldTies.map(({ where, crop, correlation: { from, to, mean } }) =>
      line(`Correlation of price and yield of ${crop}, ${where}`, `${from} to ${to}, mean ${mean}; weaker on one farm`),
    ),
    line("Mind", "lowest and highest are taken as limits, and most people set them too close together"),
    line(
      "How it is worked out",
      "summed over the yields, not by chance draws: the same every time, chances good to 0.003",
    ),
  ];
}

export const profitOdds = worksheetFunction({
  name: "PROFITODDS",
  family: "money",
  summary: "Chance that an acre earns more than a target when yield and price are uncertain.",
  asks: ["chance of making money", "odds of a profit", "how likely is a loss"],
  args: outlookArguments,
  returns: { shape: "one", unit: chanceUnit, says: "0.7 is 7 years in 10; show it with a % format" },
  sources: ["three-point-range", "gaussian-copula", "farmdoc-price-yield-2012"],
  example: {
    call: [100, 150, 200, 4, 4, 4, 500],
    gives: 0.875,
    tolerance: 0.0001,
    because: "by hand: at $4 a loss is a yield below 125; of the triangle (125 − 100)² / (100 × 50) = 0.125 lie there",
  },
  compute: (values) => profitOddsOf(outlookOf(values), values.target),
  value: (result) => result.chance,
  working: (result, values) => [
    line("Worst: lowest yield and price, or what is worse", result.worstUsdPerAc, "$/ac"),
    line("Likeliest yield at the likeliest price", result.likelyUsdPerAc, "$/ac"),
    line("Best", result.bestUsdPerAc, "$/ac"),
    line(`Chance of more than ${values.target} $/ac`, result.chance * 100, "%"),
    ...mindLines(),
  ],
});

export const profitRange = worksheetFunction({
  name: "PROFITRANGE",
  family: "money",
  summary: "How far profit of an acre may range: percentiles, mean, chance of loss and how bad the bad years are.",
  asks: ["range of profit", "how bad can it get", "value at risk", "average profit with risk"],
  args: {
    ...outlookArguments,
    tail: optional(
      rateOf(riskLimits.tail, { says: "share of the worst years to look at, 5% or 0.05" }),
      0.05,
      "0.05: 1 year in 20",
    ),
    riskAversion: optional(
      quantity(riskLimits.riskAversion, { says: "absolute risk aversion for $/ac; the working says what it gives up" }),
      null,
      "no certain profit is shown",
    ),
  },
  returns: { shape: "table", unit: "", says: "a line each with its amount and unit" },
  sources: ["three-point-range", "gaussian-copula", "risk-measures", "babcock-1993", "farmdoc-price-yield-2012"],
  example: {
    call: [150, 150, 150, 3, 4, 5, 540],
    gives: [
      ["Profit of an acre", "Amount", "Unit"],
      ["10th percentile: 1 year in 10 is below", -22.918, "$/ac"],
      ["50th percentile: half of the years are below", 60, "$/ac"],
      ["90th percentile: 1 year in 10 is above", 142.918, "$/ac"],
      ["Mean", 60, "$/ac"],
      ["Standard deviation", 61.237, "$/ac"],
      ["Chance of 0 $/ac or less", 0.18, "chance (0 to 1)"],
      ["Short of 0 $/ac, mean of all years", 5.4, "$/ac"],
      ["Worst 5 % of the years: below", -42.566, "$/ac"],
      ["Worst 5 % of the years: mean", -58.377, "$/ac"],
    ],
    tolerance: 0.02,
    because:
      "by hand: price x in 3-5 around 4 has (x − 3)² / 2 below it; 10 % at 3 + √0.2, 5 % at 3 + √0.1, no profit at 3.60: 0.18; times 150, less 540; sd 150 / √6; short 150 × 0.6³ / 6; mean below 3 + √0.1: 3 + ⅔ √0.1",
  },
  compute: (values) =>
    profitRangeOf({
      outlook: outlookOf(values),
      targetUsdPerAc: values.target,
      tail: values.tail,
      riskAversion: values.riskAversion,
    }),
  value: (result, values) => [["Profit of an acre", "Amount", "Unit"], ...rangeRows(result, values)],
  working: (result, values) => [
    line("Worst of all", result.worstUsdPerAc, "$/ac"),
    line("Likeliest yield at the likeliest price", result.likelyUsdPerAc, "$/ac"),
    line("Best of all", result.bestUsdPerAc, "$/ac"),
    ...(values.riskAversion === null
      ? []
      : [
          line(
            "To be rid of a coin flip for 100 $/ac more or less you give up",
            coinFlipPremium(values.riskAversion, 100),
            "$/ac",
          ),
        ]),
    ...mindLines(),
  ],
});

function rangeRows(range: ProfitRange, { target, tail }: { target: number; tail: number }): CellOut[][] {
  const worst = `Worst ${Number((tail * 100).toPrecision(6))} % of the years`;
  return [
    ["10th percentile: 1 year in 10 is below", range.lowUsdPerAc, "$/ac"],
    ["50th percentile: half of the years are below", range.middleUsdPerAc, "$/ac"],
    ["90th percentile: 1 year in 10 is above", range.highUsdPerAc, "$/ac"],
    ["Mean", range.meanUsdPerAc, "$/ac"],
    ["Standard deviation", range.sdUsdPerAc, "$/ac"],
    [`Chance of ${target} $/ac or less`, range.chanceShort, chanceUnit],
    [`Short of ${target} $/ac, mean of all years`, range.shortfallUsdPerAc, "$/ac"],
    [`${worst}: below`, range.valueAtRiskUsdPerAc, "$/ac"],
    [`${worst}: mean`, range.tailMeanUsdPerAc, "$/ac"],
    ...(range.certainUsdPerAc === null ? [] : [["Certain profit worth as much", range.certainUsdPerAc, "$/ac"]]),
  ];
}
