import type { CurveParameters, ResponseModel } from "../response-model";

/** The rate of the highest yield; NaN for a curve that bends up. */
export function peakRate([, linear = NaN, quadratic = NaN]: CurveParameters): number {
  return quadratic < 0 ? -linear / (2 * quadratic) : NaN;
}

/** The yield there. */
export function peakYield([intercept = NaN, linear = NaN, quadratic = NaN]: CurveParameters): number {
  return quadratic < 0 ? intercept - (linear * linear) / (4 * quadratic) : NaN;
}

export const parabolaBendsWhen = "the quadratic one must be below 0: a curve that does not bend down has no best rate.";

/** Where the slope has fallen to the price ratio; 0 where it starts below. */
export function bestOnParabola([, linear = NaN, quadratic = NaN]: CurveParameters, priceRatio: number): number {
  if (!(quadratic < 0)) return NaN;
  return Math.max(0, (priceRatio - linear) / (2 * quadratic));
}

/** yield = intercept + linear × rate + quadratic × rate² */
export const quadratic: ResponseModel = {
  label: "quadratic",
  also: ["parabola", "quad"],
  equation: "intercept + linear × x + quadratic × x²",
  parameters: [
    { label: "Intercept", bushels: 1, units: 0 },
    { label: "Linear", bushels: 1, units: -1 },
    { label: "Quadratic", bushels: 1, units: -2 },
  ],
  derived: [
    { label: "Rate of the highest yield", bushels: 0, units: 1, of: peakRate },
    { label: "Highest yield", bushels: 1, units: 0, of: peakYield },
  ],
  bend: null,
  bendsWhen: parabolaBendsWhen,
  yieldAt: ([intercept = NaN, linear = NaN, quadratic = NaN], rate) => intercept + rate * (linear + rate * quadratic),
  gradientAt: (_, rate) => [1, rate, rate * rate],
  bestRate: bestOnParabola,
};
