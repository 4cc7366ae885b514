import { practiceLimits } from "../../core/practices/practice-limits";
import { practiceTestValue as practiceTestValueOf } from "../../core/practices/practice-test-value";
import { line, quantity, worksheetFunction } from "../frame";
import { acres, cost, price, seasonLine, seasons, seasonSd } from "./practice-arguments";
import { practiceCautions } from "../cautions";

export const gain = quantity(practiceLimits.gain, { says: "gain expected of the practice" });
export const gainError = quantity(practiceLimits.gainError, { says: "standard deviation of that belief" });

export const practiceTestValue = worksheetFunction({
  name: "PRACTICETESTVALUE",
  family: "practices",
  summary: "Dollars that a trial is worth before the decision it is meant to help.",
  asks: ["is a strip trial worth it", "what is a trial worth", "value of information"],
  args: {
    gain,
    gainError,
    cost,
    price,
    acres,
    trialError: quantity(practiceLimits.gainError, {
      says: "standard error that the trial's gain will have: SD of a pair of strips over the root of their number",
    }),
    seasons,
    seasonSd,
  },
  returns: { shape: "one", unit: "$", says: "expected value of the trial, before its own cost" },
  sources: ["raiffa-schlaifer-1961"],
  cautions: practiceCautions,
  example: {
    call: [6, 20, 0, 1, 500, 18.371_173],
    gives: 1678.5,
    tolerance: 0.05,
    because:
      "by hand: move 400 / √(400 + 337.5) = 14.7292; 6 / 14.7292 = 0.40735; loss 0.22791; 500 × 14.7292 × 0.22791",
  },
  compute: (values) =>
    practiceTestValueOf({
      gainBuPerAc: values.gain,
      gainErrorBuPerAc: values.gainError,
      costUsdPerAc: values.cost,
      priceUsdPerBu: values.price,
      acres: values.acres,
      seasons: values.seasons,
      trialErrorBuPerAc: values.trialError,
      seasonSdBuPerAc: values.seasonSd,
    }),
  value: (result) => result.valueUsd,
  working: (result, values) => [
    line("Net to expect without a trial", result.meanNetUsdPerAc, "$/ac"),
    line("Give or take (SD)", result.netSdUsdPerAc, "$/ac"),
    seasonLine(values.seasonSd),
    line("The trial is expected to move it by (SD)", result.moveSdUsdPerAc, "$/ac"),
    line("Acres times seasons", result.acreSeasons, "ac"),
    line("The trial is worth", result.valueUsd, "$"),
    line("Knowing for certain would be worth", result.certaintyUsd, "$"),
  ],
});
