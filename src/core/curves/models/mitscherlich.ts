import type { BendSearch, ResponseModel } from "../response-model";

const search: Omit<BendSearch, "passesZero" | "parameters"> = {
  // Slower than the low end is a straight line, faster than the high end is level at the second rate.
  range: (rates) => {
    const [first = NaN, second = NaN] = rates;
    return { low: 0.02 / ((rates.at(-1) ?? NaN) - first), high: 6 / (second - first) };
  },
  isLogarithmic: true,
  term: (curvature, rate) => -Math.expm1(-curvature * rate),
  atLow: "yields rise in a straight line through the rates tested: no ceiling to find. Try linear.",
  atHigh: "yields are level from the second-lowest rate on: the trial has too few low rates to show the curve.",
};

const bendsWhen = "the curvature must be above 0, or there is no ceiling.";

function bestRate(response: number, curvature: number, priceRatio: number): number {
  if (!(curvature > 0)) return NaN;
  const startSlope = response * curvature;
  if (startSlope <= priceRatio) return 0;
  return Math.log(startSlope / priceRatio) / curvature;
}

/** yield = ceiling − response × exp(−curvature × rate): each further unit closes the same share of what is missing. */
export const mitscherlich: ResponseModel = {
  label: "mitscherlich",
  also: ["exponential", "diminishing", "asymptotic"],
  equation: "ceiling - response × exp(-curvature × x)",
  parameters: [
    { label: "Ceiling", bushels: 1, units: 0 },
    { label: "Response", bushels: 1, units: 0 },
    { label: "Curvature", bushels: 0, units: -1 },
  ],
  derived: [
    { label: "Yield with none", bushels: 1, units: 0, of: ([ceiling = NaN, response = NaN]) => ceiling - response },
  ],
  bend: {
    ...search,
    passesZero: false,
    parameters: (intercept, slope, curvature) => [intercept + slope, slope, curvature],
  },
  bendsWhen,
  yieldAt: ([ceiling = NaN, response = NaN, curvature = NaN], rate) => ceiling - response * Math.exp(-curvature * rate),
  gradientAt([, response = NaN, curvature = NaN], rate) {
    const left = Math.exp(-curvature * rate);
    return [1, -left, response * rate * left];
  },
  bestRate: ([, response = NaN, curvature = NaN], priceRatio) => bestRate(response, curvature, priceRatio),
};

/** The same with nothing harvested at no input, as for a gain over the untreated strip. */
export const mitscherlichFromZero: ResponseModel = {
  label: "mitscherlich from zero",
  also: ["mitscherlich zero", "exponential from zero"],
  equation: "ceiling × (1 - exp(-curvature × x))",
  parameters: [
    { label: "Ceiling", bushels: 1, units: 0 },
    { label: "Curvature", bushels: 0, units: -1 },
  ],
  derived: [],
  bend: { ...search, passesZero: true, parameters: (_, slope, curvature) => [slope, curvature] },
  bendsWhen,
  yieldAt: ([ceiling = NaN, curvature = NaN], rate) => -ceiling * Math.expm1(-curvature * rate),
  gradientAt: ([ceiling = NaN, curvature = NaN], rate) => [
    -Math.expm1(-curvature * rate),
    ceiling * rate * Math.exp(-curvature * rate),
  ],
  bestRate: ([ceiling = NaN, curvature = NaN], priceRatio) => bestRate(ceiling, curvature, priceRatio),
};
