import { responseFit, type ResponseFit } from "../../../src/core/curves/response-fit";
import type { ResponseModelKey } from "../../../src/core/curves/response-models";
import { boxBod, misra1a, norris, pontius, type ReferenceSet } from "./nist-data";
import { segmentedPairs } from "./segmented-pairs";

function fitOf(model: ResponseModelKey, { x, y }: { x: readonly number[]; y: readonly number[] }): ResponseFit {
  return responseFit({ rates: x, yieldsBuPerAc: y, model, confidencePct: 95, priceRatio: null });
}

const fitSegmented = (model: ResponseModelKey, priceRatio: number | null = null) =>
  responseFit({ ...segmentedPairs, model, confidencePct: 95, priceRatio });

/** Correct significant digits of a value against a certified one. */
function digits(value: number, certified: number): number {
  return -Math.log10(Math.max(Math.abs(value - certified) / Math.abs(certified), 1e-15));
}

/* The certified values have 15 digits for sums of terms and 11 for the others; these are the digits a double attains. */
describe.each<[string, ResponseModelKey, ReferenceSet, number, number]>([
  ["Norris", "linear", norris, 11.5, 10],
  ["Pontius", "quadratic", pontius, 10.5, 9.5],
  ["Misra1a", "mitscherlich-zero", misra1a, 9.5, 8],
  ["BoxBOD", "mitscherlich-zero", boxBod, 9.5, 7.5],
])("the certified %s", (_name, model, set, estimateDigits, errorDigits) => {
  const fit = () => fitOf(model, set);
  it.each(set.certified.map(([value, error], index) => [index, value, error] as const))(
    "parameter %i is %d with standard error %d",
    (index, value, error) => {
      expect(digits(fit().parameters[index]?.value ?? NaN, value)).toBeGreaterThan(estimateDigits);
      expect(digits(fit().parameters[index]?.standardError ?? NaN, error)).toBeGreaterThan(errorDigits);
    },
  );
  it("has the certified residual SD", () => {
    expect(digits(fit().residualSdBuPerAc, set.residualSd)).toBeGreaterThan(9);
  });
});

describe("quadratic-plateau on sixteen printed pairs", () => {
  const fit = () => fitSegmented("quadratic-plateau", 0.01);
  it("has the printed parameters and standard errors", () => {
    const [intercept, linear, quadratic] = fit().parameters;
    expect(intercept?.value).toBeCloseTo(0.39212, 5);
    expect(intercept?.standardError).toBeCloseTo(0.02667, 5);
    expect(linear?.value).toBeCloseTo(0.060463, 6);
    expect(linear?.standardError).toBeCloseTo(0.008423, 6);
    expect(quadratic?.value).toBeCloseTo(-0.0023715, 7);
    expect(quadratic?.standardError).toBeCloseTo(0.0005513, 7);
  });
  it("has the printed plateau, sum of squares and degrees of freedom", () => {
    expect(fit().derived.map(({ value }) => value)).toEqual([expect.closeTo(12.7477, 4), expect.closeTo(0.7775, 4)]);
    expect(fit().missedSquares).toBeCloseTo(0.010066, 6);
    expect(fit().degreesOfFreedom).toBe(13);
  });
  it("has its best rate at a price ratio of 0.01: 10.6393, standard error 0.8202, 95 % 8.867 to 12.411", () => {
    expect(fit().best?.value).toBeCloseTo(10.6393, 4);
    expect(fit().best?.standardError).toBeCloseTo(0.8202, 4);
    expect(fit().best?.low).toBeCloseTo(8.867, 3);
    expect(fit().best?.high).toBeCloseTo(12.411, 3);
  });
});

/* Least squares of scipy 1.17 (curve_fit, tolerances 1e-15) on the same sixteen pairs. */
describe("the other models against scipy", () => {
  it.each<[ResponseModelKey, readonly number[], readonly number[], number]>([
    ["quadratic", [0.40236968, 0.05600915, -0.00204843], [0.02424909, 0.00657538, 0.00037936], 0.010508371313463],
    ["linear", [0.50525857, 0.02152491], [0.02602548, 0.00271611], 0.034076529645766],
    ["linear-plateau", [0.41285714, 0.04380952, 8.00951086], [0.02345358, 0.0046445, 0.50640336], 0.011777976190476],
    ["mitscherlich", [0.81296823, 0.45516173, 0.19595951], [0.02506607, 0.0308916, 0.03995594], 0.009968022891126],
    ["square-root", [0.19121224, 0.26786015, -0.02921825], [0.0623775, 0.05155719, 0.00989827], 0.01107704288928],
  ])("%s", (model, values, errors, missed) => {
    const fit = fitSegmented(model);
    values.forEach((value, index) => expect(fit.parameters[index]?.value).toBeCloseTo(value, 7));
    errors.forEach((error, index) => expect(fit.parameters[index]?.standardError).toBeCloseTo(error, 7));
    expect(fit.missedSquares).toBeCloseTo(missed, 13);
  });
  it("quadratic is the printed refit 0.402370, 0.0560091, -0.00204843 with a sum of squares of 0.0105084", () => {
    const fit = fitSegmented("quadratic");
    expect(fit.parameters.map(({ value }) => value)).toEqual([
      expect.closeTo(0.40237, 6),
      expect.closeTo(0.0560091, 7),
      expect.closeTo(-0.00204843, 8),
    ]);
    expect(fit.missedSquares).toBeCloseTo(0.0105084, 7);
  });
  it("AICc of mitscherlich is 16 ln(0.00996802 / 16) + 8 + 40 / 11 = -106.459", () => {
    expect(fitSegmented("mitscherlich").aicc).toBeCloseTo(16 * Math.log(0.009968022891 / 16) + 8 + 40 / 11, 6);
  });
});
