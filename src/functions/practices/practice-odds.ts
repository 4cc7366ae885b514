import { chanceInWords } from "../../core/statistics/chance-in-words";
import { practiceOdds as practiceOddsOf } from "../../core/practices/practice-odds";
import { line, worksheetFunction } from "../frame";
import { cost, gainRange, price } from "./practice-arguments";
import { chanceUnit } from "../chance";
import { rangeShape } from "../range-shape";
import { practiceCautions } from "../cautions";

export const practiceOdds = worksheetFunction({
  name: "PRACTICEODDS",
  family: "practices",
  summary: "Chance that a practice pays for itself.",
  asks: ["will it pay", "chance that fungicide pays", "odds of a practice paying"],
  args: { ...gainRange, cost, price, shape: rangeShape },
  returns: { shape: "one", unit: chanceUnit, says: "0.7 is 7 chances in 10; show it with a % format" },
  sources: ["three-point-range", "partial-budget"],
  cautions: practiceCautions,
  example: {
    call: [0, 6, 12, 18, 4.5],
    gives: 0.7778,
    tolerance: 0.0001,
    because: "by hand: 18 / 4.50 = 4 bu/ac pays; below it lies 4² / (12 × 6) = 16/72 of the triangle",
  },
  compute: (values) =>
    practiceOddsOf({
      lowGainBuPerAc: values.lowGain,
      likelyGainBuPerAc: values.likelyGain,
      highGainBuPerAc: values.highGain,
      shape: values.shape,
      costUsdPerAc: values.cost,
      priceUsdPerBu: values.price,
    }),
  value: (result) => result.chance,
  working: (result) => [
    line("Gain that pays", result.gainThatPaysBuPerAc, "bu/ac"),
    line("Gain to expect", result.meanGainBuPerAc, "bu/ac"),
    line("Give or take (SD)", result.gainSdBuPerAc, "bu/ac"),
    line("Net on average", result.meanNetUsdPerAc, "$/ac"),
    line("Net at the lowest gain", result.lowNetUsdPerAc, "$/ac"),
    line("Net at the highest gain", result.highNetUsdPerAc, "$/ac"),
    line("Chance that it pays", chanceInWords(result.chance)),
  ],
});
