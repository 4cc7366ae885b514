import { practiceLimits } from "../../core/practices/practice-limits";
import {
  practiceStrips as practiceStripsOf,
  type PracticeStrips,
  type StripCount,
} from "../../core/practices/practice-strips";
import { line, optional, quantity, worksheetFunction, type Matrix } from "../frame";
import { acres, cost, dollars, price, seasonLine, seasons, seasonSd } from "./practice-arguments";
import { gain, gainError } from "./practice-test-value";
import { practiceCautions, stripsNotPoints } from "../cautions";

export const pairSd = quantity(practiceLimits.gainError, {
  says: "standard deviation of the difference of one pair of strips, from earlier trials on like ground",
});
export const pairCost = quantity(practiceLimits.stripCost, {
  says: "cost of one pair of strips: laying out, tending, weighing, yield given up",
});

export const practiceStrips = worksheetFunction({
  name: "PRACTICESTRIPS",
  family: "practices",
  summary: "How many pairs of strips are worth laying to decide about a practice.",
  asks: ["how many strips should I lay", "how big a trial is worth it", "how many replications pay"],
  args: {
    gain,
    gainError,
    cost,
    price,
    acres,
    pairSd,
    pairCost,
    seasons,
    seasonSd,
    setUpCost: optional(quantity(practiceLimits.stripCost, { says: "cost of a trial whatever its size" }), 0, "0"),
    mostPairs: optional(quantity(practiceLimits.mostPairs, { says: "most pairs that fit" }), 12, "12"),
  },
  returns: {
    shape: "table",
    unit: "$",
    says: "for each number of pairs the trial's error, worth, cost and what is left",
  },
  sources: ["raiffa-schlaifer-1961"],
  cautions: [...practiceCautions, stripsNotPoints, "Two pairs settle nothing by themselves."],
  example: {
    call: [6, 20, 0, 1, 500, 45, 100, 1, 0, 0, 3],
    gives: [
      ["Pairs", "Trial error, bu/ac", "Trial is worth, $", "Trial costs, $", "Left, $", "Note"],
      [2, 31.8198, 951.68, 200, 751.68, ""],
      [3, 25.9808, 1222.04, 300, 922.04, "most is left"],
    ],
    tolerance: 0.05,
    because:
      "by hand: 45 / √2 and 45 / √3; moves 400 / √(400 + 1,012.5) = 10.643 and 400 / √(400 + 675) = 12.2; losses 0.17884 and 0.20034 of 6 / move; times 500",
  },
  compute: (values) =>
    practiceStripsOf({
      gainBuPerAc: values.gain,
      gainErrorBuPerAc: values.gainError,
      costUsdPerAc: values.cost,
      priceUsdPerBu: values.price,
      acres: values.acres,
      seasons: values.seasons,
      pairSdBuPerAc: values.pairSd,
      pairCostUsd: values.pairCost,
      setUpCostUsd: values.setUpCost,
      seasonSdBuPerAc: values.seasonSd,
      mostPairs: values.mostPairs,
    }),
  value: stripTable,
  working: (result, values) => [
    line("Net to expect without a trial", result.meanNetUsdPerAc, "$/ac"),
    seasonLine(values.seasonSd),
    line("Knowing for certain would be worth", result.certaintyUsd, "$"),
    line("Pairs that leave most", result.best.pairs, "pairs"),
    line("That trial is worth", result.best.valueUsd, "$"),
    line("It costs", result.best.costUsd, "$"),
    line("Verdict", verdict(result)),
  ],
});

function stripTable(result: PracticeStrips): Matrix<string | number> {
  return [
    ["Pairs", "Trial error, bu/ac", "Trial is worth, $", "Trial costs, $", "Left, $", "Note"],
    ...result.counts.map((count) => [
      count.pairs,
      count.trialErrorBuPerAc,
      count.valueUsd,
      count.costUsd,
      count.leftUsd,
      noteOn(count, result),
    ]),
  ];
}

function noteOn(count: StripCount, { best, isWorthIt }: PracticeStrips): string {
  if (count !== best) return "";
  return isWorthIt ? "most is left" : "the least loss: no trial is worth its cost";
}

function verdict({ best, isWorthIt }: PracticeStrips): string {
  return isWorthIt
    ? `lay ${best.pairs} pairs: ${dollars(best.leftUsd)} is left over their cost`
    : "no trial is worth its cost: decide on what is expected";
}
