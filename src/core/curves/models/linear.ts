import type { ResponseModel } from "../response-model";

/** yield = intercept + slope × rate */
export const linear: ResponseModel = {
  label: "linear",
  also: ["line", "straight", "straight line"],
  equation: "intercept + slope × x",
  parameters: [
    { label: "Intercept", bushels: 1, units: 0 },
    { label: "Slope", bushels: 1, units: -1 },
  ],
  derived: [],
  bend: null,
  bendsWhen: "a straight line always does.",
  yieldAt: ([intercept = NaN, slope = NaN], rate) => intercept + slope * rate,
  gradientAt: (_, rate) => [1, rate],
  bestRate: ([, slope = NaN], priceRatio) => (slope > priceRatio ? Infinity : 0),
};
