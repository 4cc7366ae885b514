import { customRate as customRateOf } from "../../core/machinery/custom-rate";
import { machineryLimits } from "../../core/machinery/machinery-limits";
import { machineValue as machineValueOf } from "../../core/machinery/machine-value";
import { repairCost as repairCostOf } from "../../core/machinery/repair-cost";
import { wearCost as wearCostOf } from "../../core/machinery/wear-cost";
import { customSurveys } from "../../reference/machinery/custom-rates";
import { choice, line, optional, quantity, worksheetFunction } from "../frame";
import { checkLines } from "../check-lines";
import { customRateWords, customSurveyWords, machineWords, valueClassWords } from "./cover-words";
import { averageMachine, blockedUp, machinery } from "../cautions";

const listPrice = quantity(machineryLimits.listPrice, { says: "list price of an equal new machine today" });

export const machineValue = worksheetFunction({
  name: "MACHINEVALUE",
  family: "cover",
  summary: "What a used machine is worth at an age.",
  asks: ["what is my tractor worth", "remaining value of a machine", "depreciation of a combine"],
  args: {
    class: choice(valueClassWords, { says: "class of machine" }),
    age: quantity(machineryLimits.age, { says: "years since new" }),
    hoursPerYear: optional(
      quantity(machineryLimits.hoursPerYear, { says: "average hours a year" }),
      null,
      "needed for tractors, combines and skid steers; implements do not ask for it",
    ),
    listPrice,
  },
  returns: { shape: "one", unit: "$", says: "value" },
  sources: ["cross-perry-1995"],
  example: {
    call: ["other tillage tool", 12, null, 32_000],
    gives: 8321.53,
    tolerance: 0.05,
    because: "by hand: 0.891 − 0.110 × √12 = 0.509949; squared 0.2600478; × 32,000",
  },
  cautions: [averageMachine],
  compute: (values) =>
    machineValueOf({
      valueClass: values.class,
      ageYears: values.age,
      hoursPerYear: values.hoursPerYear,
      listPriceUsd: values.listPrice,
    }),
  value: (result) => result.valueUsd,
  working: (result) => [
    line("Value left", result.ofListPct, "% of list"),
    line("Value", result.valueUsd, "$"),
    line("Lost since new", result.lostUsd, "$"),
    ...(result.countsHours ? [] : [line("Hours", "do not count in this class")]),
    ...checkLines([result.published]),
  ],
  cites: (result) => [result.published],
});

export const repairCost = worksheetFunction({
  name: "REPAIRCOST",
  family: "cover",
  summary: "Repairs and maintenance between two readings of the hour meter.",
  asks: ["what will repairs cost", "repair cost of a tractor", "maintenance over the hours"],
  args: {
    machine: choice(machineWords, { says: "machine" }),
    listPrice,
    fromHours: quantity(machineryLimits.machineHours, { says: "hours at the start; 0 when new" }),
    toHours: quantity(machineryLimits.machineHours, { says: "hours at the end" }),
  },
  returns: { shape: "one", unit: "$", says: "repairs and maintenance" },
  sources: ["asabe-d497"],
  example: {
    call: ["2WD tractor", 150_000, 0, 6000],
    gives: 37_800,
    because: "by hand: 150,000 × 0.007 × 6²",
  },
  cautions: [averageMachine, machinery],
  compute: (values) =>
    repairCostOf({
      machine: values.machine,
      listPriceUsd: values.listPrice,
      fromHours: values.fromHours,
      toHours: values.toHours,
    }),
  value: (result) => result.costUsd,
  working: (result) => [
    line("Repairs since new, at the start", result.untilFromUsd, "$"),
    line("Repairs since new, at the end", result.untilToUsd, "$"),
    line("Between", result.costUsd, "$"),
    ...(result.usdPerHour === null ? [] : [line("For each hour", result.usdPerHour, "$/h")]),
    line("Life to wear-out", result.lifeHours, "h"),
    ...(result.isPastLife ? [line("Mind", "past its wear-out life the curve is a stretch")] : []),
    ...checkLines([result.published]),
  ],
  cites: (result) => [result.published],
});

export const wearCost = worksheetFunction({
  name: "WEARCOST",
  family: "cover",
  summary: "Cost on an acre of points, sweeps, blades or openers that wear out.",
  asks: ["what do sweeps cost per acre", "wearing parts", "cost of chisel points"],
  args: {
    parts: quantity(machineryLimits.parts, { says: "parts in the set" }),
    pricePerPart: quantity(machineryLimits.pricePerPart, { says: "price of one part" }),
    lifeAcres: quantity(machineryLimits.acres, { says: "acres that the set lasts" }),
  },
  returns: { shape: "one", unit: "$/ac", says: "wear" },
  sources: ["wear-by-acre"],
  example: { call: [60, 12, 1800], gives: 0.4, because: "by hand: 60 × 12 / 1,800" },
  cautions: [blockedUp],
  compute: (values) =>
    wearCostOf({ parts: values.parts, pricePerPartUsd: values.pricePerPart, lifeAcres: values.lifeAcres }),
  value: (result) => result.costUsdPerAc,
  working: (result) => [line("A set", result.setUsd, "$"), line("Wear", result.costUsdPerAc, "$/ac")],
});

export const customRate = worksheetFunction({
  name: "CUSTOMRATE",
  family: "cover",
  summary: "What a published Iowa survey found neighbors charging for a field operation.",
  asks: ["custom rate for planting", "what do neighbors charge", "hire it done or own the machine"],
  args: {
    operation: choice(customRateWords, { says: "field operation" }),
    survey: optional(choice(customSurveyWords, { says: "2019 or 2023" }), null, "the newest that asked about it"),
  },
  returns: { shape: "one", unit: "$/ac", says: "rate with fuel and operator, without seed or chemicals" },
  sources: ["isu-a3-10-2019", "isu-a3-10-2023"],
  example: { call: ["chisel plow"], gives: 18.35, because: "printed: median of 2019" },
  cautions: ["Rates are averages of one state and one year: ask for today's rate where you farm."],
  compute: (values) => customRateOf(values.operation, values.survey),
  value: (result) => result.rateUsdPerAc,
  working: (result) => [
    ...result.all.map(({ survey, rateUsdPerAc }) =>
      line(`Iowa ${customSurveys[survey].label}, ${customSurveys[survey].middle}`, rateUsdPerAc, "$/ac"),
    ),
    line("Rate", result.rateUsdPerAc, "$/ac"),
    line("To set beside your own", "PASSCOST gives the cost with your machines"),
  ],
  cites: (result) => [result.published],
});
