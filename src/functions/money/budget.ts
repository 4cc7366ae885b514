import { cropBudget as cropBudgetOf, type CropBudget } from "../../core/money/crop-budget";
import { farmNet as farmNetOf } from "../../core/money/farm-net";
import { moneyLimits } from "../../core/money/money-limits";
import { operatingInterest as operatingInterestOf, type MonthsInUse } from "../../core/money/operating-interest";
import {
  line,
  list,
  listWithGaps,
  optional,
  quantity,
  rate as rateOf,
  vocabulary,
  worksheetFunction,
  type CellOut,
} from "../frame";
import { orWord } from "../number-or-word";
import { otherIncome } from "./money-arguments";

const halfSeason = vocabulary<"halfSeason">("half season rule", {
  halfSeason: { label: "half season", also: ["half", "half season rule", "half year", "half of the cost"] },
});

function costs(says: string) {
  return list(quantity(moneyLimits.costPerAc, { says: "costs" }), { says: `${says}: a cell or a list`, atLeast: 0 });
}

export const operatingInterest = worksheetFunction({
  name: "OPERATINGINTEREST",
  family: "money",
  summary: "Interest on operating money from the purchase until the crop is sold.",
  asks: ["interest on inputs", "operating loan interest", "what does the operating loan cost"],
  args: {
    cost: quantity(moneyLimits.costPerAc, { says: "operating cost" }),
    rate: rateOf(moneyLimits.rate, { says: "interest a year, 8% or 0.08" }),
    months: orWord<"halfSeason", MonthsInUse>(
      quantity(moneyLimits.months, {
        says: "months from purchase to sale; or the words half season, for all of it out half a year",
      }),
      halfSeason,
      { ofNumber: (months) => months, ofWord: (word) => word },
    ),
  },
  returns: { shape: "one", unit: "$/ac", says: "interest" },
  sources: ["enterprise-budget"],
  example: {
    call: [378.68, 0.07, "half season"],
    gives: 13.25,
    because: "printed: interest on half of operating cost, 189.34 at 7 %, corn budget of northern Alabama",
  },
  compute: (values) => operatingInterestOf({ costUsdPerAc: values.cost, rate: values.rate, months: values.months }),
  value: (result) => result.interestUsdPerAc,
  working: (result, values) => [
    line("Operating cost", values.cost, "$/ac"),
    line(result.isHalfSeason ? "Out, by the half-season rule" : "Out", result.monthsInUse, "months"),
    line("Interest for a whole year", values.cost * values.rate, "$/ac"),
    line("Interest", result.interestUsdPerAc, "$/ac"),
  ],
});

export const cropBudget = worksheetFunction({
  name: "CROPBUDGET",
  family: "money",
  summary: "Budget of a crop on one acre: margins, net, and break-evens for this year and for the long run.",
  asks: ["crop budget per acre", "margin over variable cost", "return to land", "cost per bushel"],
  args: {
    yield: quantity(moneyLimits.yield, { says: "yield expected" }),
    price: quantity(moneyLimits.price, { says: "price of the crop" }),
    variableCosts: costs("seed, fertilizer, crop protection, fuel, interest and what else this crop alone costs"),
    fixedCosts: optional(costs("machinery ownership, overhead, own labor; without land"), [], "none"),
    land: optional(quantity(moneyLimits.rent, { says: "rent, or the charge for owned land" }), 0, "0"),
    otherIncome,
    costPerBushel: optional(
      quantity(moneyLimits.costPerBushel, { says: "hauling, drying and storing of each bushel" }),
      0,
      "0: none, or among the variable costs",
    ),
  },
  returns: { shape: "table", unit: "", says: "a line each with its amount and unit" },
  sources: ["enterprise-budget"],
  example: {
    call: [150, 6, 391.93, 66.35],
    gives: [
      ["Budget of an acre", "Amount", "Unit"],
      ["Gross", 900, "$/ac"],
      ["Variable costs", 391.93, "$/ac"],
      ["Margin over variable costs", 508.07, "$/ac"],
      ["Fixed costs", 66.35, "$/ac"],
      ["Return to land", 441.72, "$/ac"],
      ["Land", 0, "$/ac"],
      ["Net", 441.72, "$/ac"],
      ["All costs", 458.28, "$/ac"],
      ["Cost of a bushel", 3.0552, "$/bu"],
      ["Break-even price, variable costs", 2.6129, "$/bu"],
      ["Break-even price, all costs", 3.0552, "$/bu"],
      ["Break-even yield, variable costs", 65.3217, "bu/ac"],
      ["Break-even yield, all costs", 76.38, "bu/ac"],
    ],
    tolerance: 0.0001,
    because: "printed costs of corn, northern Alabama: 900 − 391.93, less 66.35; 391.93 and 458.28 over 150 and over 6",
  },
  compute: (values) =>
    cropBudgetOf({
      yieldBuPerAc: values.yield,
      priceUsdPerBu: values.price,
      variableCostsUsdPerAc: values.variableCosts,
      fixedCostsUsdPerAc: values.fixedCosts,
      landUsdPerAc: values.land,
      otherIncomeUsdPerAc: values.otherIncome,
      costUsdPerBu: values.costPerBushel,
    }),
  value: (result) => [["Budget of an acre", "Amount", "Unit"], ...budgetRows(result)],
  working: (result, values) => [
    line("Variable costs entered", values.variableCosts.length, "entries"),
    line("Fixed costs entered", values.fixedCosts.length, "entries"),
    line(
      "Worth growing this year",
      result.marginUsdPerAc >= 0 ? "yes: it covers its variable costs" : "no: variable costs are not covered",
    ),
    line("Pays for everything", result.netUsdPerAc >= 0 ? "yes" : "no"),
  ],
});

const noPrice = "none: no yield";
const noYield = "none: a bushel brings nothing";

function budgetRows(budget: CropBudget): CellOut[][] {
  const { shortRun, longRun } = budget;
  return [
    ["Gross", budget.grossUsdPerAc, "$/ac"],
    ["Variable costs", budget.variableUsdPerAc, "$/ac"],
    ["Margin over variable costs", budget.marginUsdPerAc, "$/ac"],
    ["Fixed costs", budget.fixedUsdPerAc, "$/ac"],
    ["Return to land", budget.returnToLandUsdPerAc, "$/ac"],
    ["Land", budget.returnToLandUsdPerAc - budget.netUsdPerAc, "$/ac"],
    ["Net", budget.netUsdPerAc, "$/ac"],
    ["All costs", budget.totalUsdPerAc, "$/ac"],
    ["Cost of a bushel", budget.costUsdPerBu ?? noPrice, "$/bu"],
    ["Break-even price, variable costs", shortRun.priceUsdPerBu ?? noPrice, "$/bu"],
    ["Break-even price, all costs", longRun.priceUsdPerBu ?? noPrice, "$/bu"],
    ["Break-even yield, variable costs", shortRun.yieldBuPerAc ?? noYield, "bu/ac"],
    ["Break-even yield, all costs", longRun.yieldBuPerAc ?? noYield, "bu/ac"],
  ];
}

export const farmNet = worksheetFunction({
  name: "FARMNET",
  family: "money",
  summary: "What the farm nets from all crops together, whole-farm costs taken off once.",
  asks: ["whole farm budget", "net of all crops", "total farm profit"],
  args: {
    acres: listWithGaps(quantity(moneyLimits.acres, { says: "acres" }), { says: "acres of each crop" }),
    margins: listWithGaps(quantity(moneyLimits.margin, { says: "margins" }), {
      says: "margin over variable costs of each crop, in the same order",
    }),
    overhead: optional(
      list(quantity(moneyLimits.amount, { says: "costs" }), {
        says: "costs of the whole farm, in no crop's budget: a cell or a list",
        atLeast: 0,
      }),
      [],
      "none",
    ),
    cropAcres: optional(quantity(moneyLimits.acres, { says: "crop acres of the farm" }), null, "not checked"),
  },
  returns: { shape: "one", unit: "$", says: "net for the year" },
  sources: ["enterprise-budget"],
  example: {
    call: [
      [[300], [200]],
      [[508], [250]],
      [[90_000], [40_000]],
    ],
    gives: 72_400,
    because: "by hand: 300 × 508 + 200 × 250 − 130,000 = 152,400 + 50,000 − 130,000",
  },
  compute: ({ acres, margins, overhead, cropAcres }) =>
    farmNetOf({ acres, marginsUsdPerAc: margins, overheadUsd: overhead, cropAcres }),
  value: (result) => result.netUsd,
  working: (result) => [
    line("Acres", result.acres, "ac"),
    ...(result.idleAcres === null ? [] : [line("Crop acres without a crop", result.idleAcres, "ac")]),
    line("Margins of all crops", result.marginUsd, "$"),
    line("Whole-farm costs", result.overheadUsd, "$"),
    line("Net", result.netUsd, "$"),
    ...(result.netUsdPerAc === null ? [] : [line("Net of an acre", result.netUsdPerAc, "$/ac")]),
  ],
});
