import type { CurveParameters, ResponseModel } from "../response-model";

function peakRate([, root = NaN, linear = NaN]: CurveParameters): number {
  return root > 0 && linear < 0 ? (root / (2 * linear)) ** 2 : NaN;
}

/**
 * yield = intercept + root × √rate + linear × rate.
 *
 * @source heady-pesek-brown-1955
 */
export const squareRoot: ResponseModel = {
  label: "square root",
  also: ["square-root", "root"],
  equation: "intercept + root × √x + linear × x",
  parameters: [
    { label: "Intercept", bushels: 1, units: 0 },
    { label: "Root", bushels: 1, units: -0.5 },
    { label: "Linear", bushels: 1, units: -1 },
  ],
  derived: [{ label: "Rate of the highest yield", bushels: 0, units: 1, of: peakRate }],
  bend: null,
  bendsWhen: "the root one must be above 0: a curve that does not bend down has no best rate.",
  yieldAt: ([intercept = NaN, root = NaN, linear = NaN], rate) => intercept + root * Math.sqrt(rate) + linear * rate,
  gradientAt: (_, rate) => [1, Math.sqrt(rate), rate],
  bestRate([, root = NaN, linear = NaN], priceRatio) {
    if (!(root > 0)) return NaN;
    return linear < priceRatio ? (root / (2 * (priceRatio - linear))) ** 2 : Infinity;
  },
};
