import { capitalLimits } from "../../core/capital/capital-limits";
import { investmentReturn as investmentReturnOf } from "../../core/capital/internal-rate";
import type { InvestmentFlows } from "../../core/capital/investment-flows";
import { neededGain as neededGainOf } from "../../core/capital/needed-gain";
import { investmentValue as investmentValueOf } from "../../core/capital/net-present-value";
import { paybackYears as paybackYearsOf } from "../../core/capital/payback-years";
import { realRate as realRateOf } from "../../core/capital/real-rate";
import { yearlyCost as yearlyCostOf } from "../../core/capital/yearly-cost";
import { line, optional, quantity, rate as rateOf, worksheetFunction, type WorkingLine } from "../frame";

const investment = quantity(capitalLimits.investment, {
  says: "price paid now, for an acre or for the whole; every other amount is for the same",
});
const yearlyGain = quantity(capitalLimits.yearlyGain, {
  says: "what it adds each year after its own upkeep; gain in bushels times the price",
});
const years = quantity(capitalLimits.years, { says: "years it lasts" });
const wholeYears = quantity(capitalLimits.years, { says: "whole years it lasts" });
const rate = rateOf(capitalLimits.rate, { says: "interest a year, 8% or 0.08; after tax when a tax rate is given" });
const plainRate = rateOf(capitalLimits.rate, { says: "interest a year, 8% or 0.08" });
const salvage = optional(
  quantity(capitalLimits.salvage, { says: "what it still brings when the years are over" }),
  0,
  "0: worth nothing then",
);
const taxRate = optional(
  rateOf(capitalLimits.taxRate, { says: "income tax on the next dollar, 25% or 0.25" }),
  0,
  "0: before tax",
);
const taxYears = optional(
  quantity(capitalLimits.years, {
    says: "whole years over which tax law lets the price be written off, in equal parts",
  }),
  null,
  "the years it lasts",
);
const adviser =
  "A planning aid, not tax or loan advice: ask your tax adviser how and how fast the price may be written off.";

interface AsTyped {
  readonly investment: number;
  readonly years: number;
  readonly salvage: number;
  readonly taxRate: number;
  readonly taxYears: number | null;
}

function investmentOf(values: AsTyped) {
  return {
    investmentUsd: values.investment,
    years: values.years,
    salvageUsd: values.salvage,
    taxRate: values.taxRate,
    taxYears: values.taxYears ?? values.years,
  };
}

function taxLines(flows: InvestmentFlows, values: AsTyped): readonly WorkingLine[] {
  if (values.taxRate === 0) return [];
  return [
    line("Gain after tax", flows.gainAfterTaxUsdPerYr, "$/yr"),
    line(
      `Tax spared, the first ${Math.min(values.taxYears ?? values.years, values.years)} years`,
      flows.taxSparedUsdPerYr,
      "$/yr",
    ),
    ...(flows.notWrittenOffUsd > 0
      ? [line("Not yet written off at the end, left out here", flows.notWrittenOffUsd, "$")]
      : []),
  ];
}

function unusual(interest: number): readonly WorkingLine[] {
  return interest < 0 || interest > 0.2 ? [line("Look again", "interest is outside the usual 0 to 20 % a year")] : [];
}

export const yearlyCost = worksheetFunction({
  name: "YEARLYCOST",
  family: "money",
  summary: "Level yearly cost of something bought once and used for years: tile, lime, a machine.",
  asks: [
    "what does tile cost a year",
    "yearly cost of a machine",
    "spread the cost of lime over years",
    "loan payment",
  ],
  args: { investment, years, rate: plainRate, salvage },
  returns: { shape: "one", unit: "$/yr", says: "price used up and interest on it, the same each year" },
  sources: ["time-value-of-money", "farmdoc-12-180-2022"],
  example: {
    call: [1000, 50, 0.08],
    gives: 81.74,
    because: "printed: tile at $1,000 an acre, 8 % and 50 years, needs $81.74 an acre a year",
  },
  compute: (values) =>
    yearlyCostOf({
      investmentUsd: values.investment,
      years: values.years,
      rate: values.rate,
      salvageUsd: values.salvage,
    }),
  value: (result) => result.costUsdPerYr,
  working: (result, values) => [
    line("Each dollar used up costs a year", result.recoveryFactor, "$"),
    line("Price used up over its years", values.investment - values.salvage, "$"),
    line("To recover that", result.recoveryUsdPerYr, "$/yr"),
    line("Interest on what comes back at the end", result.salvageInterestUsdPerYr, "$/yr"),
    line("Yearly cost", result.costUsdPerYr, "$/yr"),
    line("Interest over all the years", result.interestUsd, "$"),
    ...unusual(values.rate),
  ],
});

export const paybackYears = worksheetFunction({
  name: "PAYBACKYEARS",
  family: "money",
  summary: "Years until an investment has paid itself back.",
  asks: ["when does tile pay for itself", "how many years to pay back", "payback with interest"],
  args: {
    investment,
    yearlyGain,
    rate: optional(plainRate, 0, "0: interest is not counted, the simple payback"),
  },
  returns: { shape: "one", unit: "years", says: "years of the gain that pay the price" },
  sources: ["time-value-of-money"],
  example: {
    call: [1000, 110],
    gives: 9.0909,
    tolerance: 0.000_05,
    because: "by hand: 1,000 / 110",
  },
  compute: (values) =>
    paybackYearsOf({
      investmentUsd: values.investment,
      yearlyGainUsd: values.yearlyGain,
      rate: values.rate,
    }),
  value: (result) => result.years,
  working: (result, values) => [
    line("Without interest", result.simpleYears, "years"),
    ...(values.rate === 0
      ? [line("Interest", "not counted: give a rate to count it")]
      : [line("Interest in the first year", result.firstInterestUsdPerYr, "$/yr")]),
    line("Paid back after", result.years, "years"),
    line("Mind", "it must last longer than this, and payback says nothing of the years after"),
    ...unusual(values.rate),
  ],
});

export const investmentValue = worksheetFunction({
  name: "INVESTMENTVALUE",
  family: "money",
  summary: "What an investment is worth today beyond its price, before or after tax.",
  asks: ["does tile pay", "net present value", "is the investment worth it", "value after tax"],
  args: { investment, yearlyGain, years: wholeYears, rate, salvage, taxRate, taxYears },
  returns: { shape: "one", unit: "$", says: "net present value; above 0 it earns more than the rate" },
  sources: ["time-value-of-money"],
  example: {
    call: [1000, 110, 30, 0.06],
    gives: 514.13,
    because: "by hand: 110 × 13.764831 (the present value of $1 a year, 30 years at 6 %) − 1,000",
  },
  cautions: [adviser],
  compute: (values) => investmentValueOf({ ...investmentOf(values), yearlyGainUsd: values.yearlyGain }, values.rate),
  value: (result) => result.valueUsd,
  working: (result, values) => [
    ...taxLines(result, values),
    line("Worth today of all it brings", result.inflowsTodayUsd, "$"),
    line("Price", values.investment, "$"),
    line("Worth beyond its price", result.valueUsd, "$"),
    line("The same as a level amount each year", result.valueUsdPerYr, "$/yr"),
    line("Verdict", result.valueUsd > 0 ? "earns more than the rate" : "earns no more than the rate"),
    ...unusual(values.rate),
  ],
});

export const investmentReturn = worksheetFunction({
  name: "INVESTMENTRETURN",
  family: "money",
  summary: "Yearly return of an investment, as a rate to hold against the interest you pay.",
  asks: ["what return does tile make", "internal rate of return", "return on investment a year"],
  args: { investment, yearlyGain, years: wholeYears, salvage, taxRate, taxYears },
  returns: { shape: "one", unit: "a year", says: "0.08 is 8 % a year; show it with a % format" },
  sources: ["time-value-of-money"],
  example: {
    call: [1000, 1060, 1],
    gives: 0.06,
    tolerance: 1e-9,
    because: "by hand: 1,060 / 1,000 − 1",
  },
  cautions: [adviser],
  compute: (values) => investmentReturnOf({ ...investmentOf(values), yearlyGainUsd: values.yearlyGain }),
  value: (result) => result.rate,
  working: (result, values) => [
    ...taxLines(result, values),
    line("Comes back in all, without interest", result.returnedPerDollar, "$ per $"),
    line("Return", result.rate * 100, "% a year"),
    line("Mind", "it pays when money costs you less than this a year"),
  ],
});

export const neededGain = worksheetFunction({
  name: "NEEDEDGAIN",
  family: "money",
  summary: "Gain a year that pays an investment back with interest.",
  asks: ["how much must tile gain", "gain needed to pay for drainage", "break-even benefit a year"],
  args: {
    investment,
    years: wholeYears,
    rate,
    salvage,
    upkeep: optional(
      quantity(capitalLimits.upkeep, { says: "repairs and other costs that come with it every year" }),
      0,
      "0",
    ),
    taxRate,
    taxYears,
  },
  returns: { shape: "one", unit: "$/yr", says: "gain a year, before tax, at which it just pays" },
  sources: ["time-value-of-money", "farmdoc-12-180-2022"],
  example: {
    call: [1000, 50, 0.08],
    gives: 81.74,
    because: "printed: tile at $1,000 an acre, 8 % and 50 years, needs $81.74 an acre a year",
  },
  cautions: [adviser],
  compute: (values) => neededGainOf({ ...investmentOf(values), rate: values.rate, upkeepUsdPerYr: values.upkeep }),
  value: (result) => result.gainUsdPerYr,
  working: (result, values) => [
    line("Price", values.investment, "$"),
    line("Salvage and tax spared, worth today", result.spareTodayUsd, "$"),
    line("Gain that pays the rest", result.forPriceUsdPerYr, "$/yr"),
    line("Upkeep", values.upkeep, "$/yr"),
    line("Gain needed", result.gainUsdPerYr, "$/yr"),
    ...(result.isCovered ? [line("Note", "salvage and tax spared pay for it: no gain is needed")] : []),
    ...unusual(values.rate),
  ],
});

export const realRate = worksheetFunction({
  name: "REALRATE",
  family: "money",
  summary: "Interest with inflation taken off, for gains stated in the dollars of today.",
  asks: ["take inflation off interest", "real interest rate"],
  args: {
    rate: plainRate,
    inflation: rateOf(capitalLimits.inflation, { says: "rise of prices a year, 3% or 0.03" }),
  },
  returns: { shape: "one", unit: "a year", says: "rate for amounts that do not rise with prices" },
  sources: ["time-value-of-money"],
  example: { call: [0.0815, 0.03], gives: 0.05, tolerance: 1e-9, because: "by hand: 1.0815 / 1.03 = 1.05" },
  compute: (values) => realRateOf(values.rate, values.inflation),
  value: (result) => result,
  working: (result, values) => [
    line("Interest", values.rate * 100, "% a year"),
    line("Inflation", values.inflation * 100, "% a year"),
    line("Left after inflation", result * 100, "% a year"),
    line("Mind", "dollars of today go with this rate, dollars as they come go with the interest itself"),
  ],
});
