import type { ResponseModel } from "../response-model";
import { plateauSearch } from "./plateau-search";

/**
 * yield = intercept + slope × rate up to the join, level from there on.
 *
 * @source cerrato-blackmer-1990
 */
export const linearPlateau: ResponseModel = {
  label: "linear-plateau",
  also: ["linear plateau", "line plateau", "broken stick", "LP"],
  equation: "intercept + slope × x up to the join, level after",
  parameters: [
    { label: "Intercept", bushels: 1, units: 0 },
    { label: "Slope", bushels: 1, units: -1 },
    { label: "Plateau starts at", bushels: 0, units: 1 },
  ],
  derived: [
    {
      label: "Plateau yield",
      bushels: 1,
      units: 0,
      of: ([intercept = NaN, slope = NaN, join = NaN]) => intercept + slope * join,
    },
  ],
  bend: {
    ...plateauSearch,
    term: (join, rate) => Math.min(rate, join),
    parameters: (intercept, slope, join) => [intercept, slope, join],
  },
  bendsWhen: "a line with a plateau always does.",
  yieldAt: ([intercept = NaN, slope = NaN, join = NaN], rate) => intercept + slope * Math.min(rate, join),
  gradientAt: ([, slope = NaN, join = NaN], rate) => (rate < join ? [1, rate, 0] : [1, join, slope]),
  bestRate: ([, slope = NaN, join = NaN], priceRatio) => (slope > priceRatio ? Math.max(0, join) : 0),
};
