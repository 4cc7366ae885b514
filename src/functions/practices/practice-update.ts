import { chanceInWords } from "../../core/statistics/chance-in-words";
import { practiceLimits } from "../../core/practices/practice-limits";
import { practiceUpdate as practiceUpdateOf, type Belief } from "../../core/practices/practice-update";
import { line, optional, quantity, worksheetFunction } from "../frame";
import { cost, gainRange, price, seasonLine, seasonSd } from "./practice-arguments";
import { chanceUnit, confidence } from "../chance";
import { rangeShape } from "../range-shape";
import { practiceCautions, winnersShrink } from "../cautions";

export const practiceUpdate = worksheetFunction({
  name: "PRACTICEUPDATE",
  family: "practices",
  summary: "What to believe about a practice after a trial, from the range held before it.",
  asks: ["what does my trial tell me", "combine a trial with what I expected", "update my guess after a strip trial"],
  args: {
    ...gainRange,
    trialGain: quantity(practiceLimits.gain, { says: "gain that the trial showed" }),
    trialError: quantity(practiceLimits.gainError, { says: "standard error of that gain" }),
    cost: optional(cost, null, "the chance that it pays is left out"),
    price: optional(price, null, "the chance that it pays is left out"),
    confidence: confidence(90),
    shape: rangeShape,
    seasonSd,
  },
  returns: {
    shape: "table",
    unit: "bu/ac",
    says: "the gain to believe before, from the trial alone and after, each with its SD and range; with cost and price its chance of paying",
  },
  sources: ["raiffa-schlaifer-1961", "three-point-range"],
  cautions: [
    ...practiceCautions,
    winnersShrink,
    "A trial that shows much is drawn back only as far as the range held before was honest.",
  ],
  example: {
    call: [0, 6, 12, 9, 2.449_489_743],
    gives: [
      ["Gain", "Mean, bu/ac", "SD, bu/ac", "Low 90 %, bu/ac", "High 90 %, bu/ac"],
      ["Before the trial", 6, 2.4495, 1.9709, 10.0291],
      ["The trial", 9, 2.4495, 4.9709, 13.0291],
      ["After the trial", 7.5, 1.7321, 4.651, 10.349],
    ],
    tolerance: 0.001,
    because:
      "by hand: the triangle's variance is 36 / 6 = 6, the trial's is 6 too, so the two count alike: (6 + 9) / 2 with a variance of 3; 90 % is 1.64485 SD to either side",
  },
  compute: (values) =>
    practiceUpdateOf({
      lowGainBuPerAc: values.lowGain,
      likelyGainBuPerAc: values.likelyGain,
      highGainBuPerAc: values.highGain,
      shape: values.shape,
      trialGainBuPerAc: values.trialGain,
      trialErrorBuPerAc: values.trialError,
      seasonSdBuPerAc: values.seasonSd,
      costUsdPerAc: values.cost,
      priceUsdPerBu: values.price,
      confidencePct: values.confidence,
    }),
  value: ({ before, trial, after }, { confidence }) => [
    [
      "Gain",
      "Mean, bu/ac",
      "SD, bu/ac",
      `Low ${confidence} %, bu/ac`,
      `High ${confidence} %, bu/ac`,
      ...(after.chance === null ? [] : [`It pays, ${chanceUnit}`, "Net, $/ac"]),
    ],
    ["Before the trial", ...cellsOf(before)],
    ["The trial", ...cellsOf(trial)],
    ["After the trial", ...cellsOf(after)],
  ],
  working: ({ before, after, trialWeight }, values) => [
    line("Expected before", before.meanBuPerAc, "bu/ac"),
    seasonLine(values.seasonSd),
    line("Weight of the trial", trialWeight * 100, "%"),
    line("Expected after", after.meanBuPerAc, "bu/ac"),
    line("Give or take (SD)", after.sdBuPerAc, "bu/ac"),
    ...(after.chance === null ? [] : [line("Chance that it pays", chanceInWords(after.chance))]),
  ],
});

function cellsOf(belief: Belief): number[] {
  const { meanBuPerAc, sdBuPerAc, lowBuPerAc, highBuPerAc, chance, netUsdPerAc } = belief;
  const money = chance === null || netUsdPerAc === null ? [] : [chance, netUsdPerAc];
  return [meanBuPerAc, sdBuPerAc, lowBuPerAc, highBuPerAc, ...money];
}
