import type { BendSearch } from "../response-model";

/** The join lies between the second-lowest rate, so that something shows the rise, and the highest. */
export const plateauSearch: Pick<BendSearch, "range" | "isLogarithmic" | "passesZero" | "atLow" | "atHigh"> = {
  range: (rates) => ({ low: rates[1] ?? NaN, high: rates.at(-1) ?? NaN }),
  isLogarithmic: false,
  passesZero: false,
  atLow: "yields are level from the second-lowest rate on: the trial has too few low rates to place the plateau.",
  atHigh: "no plateau within the rates tested: yields still rise at the highest. Try linear or quadratic.",
};
