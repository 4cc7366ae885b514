import type { ResponseModel } from "../response-model";
import { plateauSearch } from "./plateau-search";
import { bestOnParabola, parabolaBendsWhen, peakRate, peakYield } from "./quadratic";

/**
 * yield = intercept + linear × rate + quadratic × rate² up to the top of that curve, level from there on.
 *
 * @source cerrato-blackmer-1990
 */
export const quadraticPlateau: ResponseModel = {
  label: "quadratic-plateau",
  also: ["quadratic plateau", "quad plateau", "QP"],
  equation: "intercept + linear × x + quadratic × x² up to its top, level after",
  parameters: [
    { label: "Intercept", bushels: 1, units: 0 },
    { label: "Linear", bushels: 1, units: -1 },
    { label: "Quadratic", bushels: 1, units: -2 },
  ],
  derived: [
    { label: "Plateau starts at", bushels: 0, units: 1, of: peakRate },
    { label: "Plateau yield", bushels: 1, units: 0, of: peakYield },
  ],
  bend: {
    ...plateauSearch,
    term: (join, rate) => (rate < join ? rate - (rate * rate) / (2 * join) : join / 2),
    parameters: (intercept, slope, join) => [intercept, slope, -slope / (2 * join)],
  },
  bendsWhen: parabolaBendsWhen,
  yieldAt(parameters, rate) {
    const [intercept = NaN, linear = NaN, quadratic = NaN] = parameters;
    const join = peakRate(parameters);
    const rising = rate < join ? rate : join;
    return intercept + rising * (linear + rising * quadratic);
  },
  gradientAt(parameters, rate) {
    const join = peakRate(parameters);
    // At the top the slope is 0, so that moving the join moves nothing: one formula serves both sides.
    const rising = rate < join ? rate : join;
    return [1, rising, rising * rising];
  },
  bestRate: bestOnParabola,
};
