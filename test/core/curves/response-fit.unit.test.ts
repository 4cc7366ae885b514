import { responseFit } from "../../../src/core/curves/response-fit";
import type { ResponseModelKey } from "../../../src/core/curves/response-models";
import { responseCompare } from "../../../src/core/curves/response-compare";
import { faultOf } from "../fault-of";
import { segmentedPairs } from "./segmented-pairs";

function fit(model: ResponseModelKey, rates: readonly (number | null)[], yieldsBuPerAc: readonly (number | null)[]) {
  return responseFit({ rates, yieldsBuPerAc, model, confidencePct: 95, priceRatio: 0.1 });
}

describe("responseFit finds the curve that yields were made from", () => {
  const rates = [0, 40, 80, 120, 160, 200, 240];
  it("linear-plateau 100 + 0.5 × min(x, 130): join 130, plateau 165", () => {
    const found = fit("linear-plateau", rates, [100, 120, 140, 160, 165, 165, 165]);
    expect(found.parameters.map(({ value }) => value)).toEqual([100, 0.5, 130].map((one) => expect.closeTo(one, 6)));
    expect(found.derived[0]?.value).toBeCloseTo(165, 6);
    expect(found.aicc).toBeNull();
  });
  it("quadratic-plateau 100 + x - 0.0025 x², level at 200 from x = 200", () => {
    const made = [0, 60, 120, 180, 200, 260, 320].map((x) => 100 + Math.min(x, 200) - 0.0025 * Math.min(x, 200) ** 2);
    const found = fit("quadratic-plateau", [0, 60, 120, 180, 200, 260, 320], made);
    expect(found.derived.map(({ value }) => value)).toEqual([expect.closeTo(200, 4), expect.closeTo(200, 6)]);
    expect(found.best?.value).toBeCloseTo((0.1 - 1) / (2 * -0.0025), 4);
  });
  it("mitscherlich 200 - 90 × 2^(-x/40): halving every 40", () => {
    const found = fit(
      "mitscherlich",
      rates,
      rates.map((x) => 200 - 90 * 2 ** (-x / 40)),
    );
    const values = found.parameters.map(({ value }) => value);
    expect(values).toEqual([expect.closeTo(200, 6), expect.closeTo(90, 6), expect.closeTo(Math.LN2 / 40, 9)]);
    expect(found.derived[0]?.value).toBeCloseTo(110, 6);
  });
  it("square root 50 + 6 √x - 0.3 x: highest at (6 / 0.6)² = 100", () => {
    const made = (linear: number) => rates.map((x) => 50 + 6 * Math.sqrt(x) + linear * x);
    const found = fit("square-root", rates, made(-0.3));
    expect(found.derived).toMatchObject([
      { facts: { label: "Rate of the highest yield", units: 1 }, value: expect.closeTo(100, 6) },
    ]);
    // A curve that rises all the way has no highest yield, nor has one that falls before it rises.
    expect(fit("square-root", rates, made(0.05)).derived).toEqual([]);
    const falling = rates.map((x) => 50 - 6 * Math.sqrt(x) + 0.05 * x);
    expect(fit("square-root", rates, falling)).toMatchObject({ derived: [], best: null });
  });
  it("mitscherlich from zero 120 (1 - 2^(-x/40))", () => {
    const made = rates.map((x) => 120 * (1 - 2 ** (-x / 40)));
    const values = fit("mitscherlich-zero", rates, made).parameters.map(({ value }) => value);
    expect(values).toEqual([expect.closeTo(120, 6), expect.closeTo(Math.LN2 / 40, 9)]);
  });
  it("leaves out half-filled pairs and says how many", () => {
    const found = fit("linear", [0, 50, 75, 100, null, 150, null], [100, 121, null, 139, 150, 160, null]);
    expect([found.pairs, found.leftOut]).toEqual([4, 2]);
    expect(found.parameters[1]?.value).toBeCloseTo(0.396, 12);
  });
  it("holds the best rate of a line that pays at the highest rate tested, without a standard error", () => {
    expect(fit("linear", [0, 50, 100, 150], [100, 121, 139, 160]).best).toMatchObject({
      value: 150,
      standardError: null,
    });
  });
});

describe("responseFit refuses", () => {
  const level = [0, 50, 100, 150, 200];
  it("lists of different length", () => {
    expect(faultOf(() => fit("linear", [0, 1, 2], [5, 6]))).toMatchObject({
      kind: "sizesDiffer",
      first: { argument: "x", size: "3 cells" },
      second: { argument: "y", size: "2 cells" },
    });
  });
  it("too few different rates, naming the number", () => {
    expect(faultOf(() => fit("quadratic", [0, 50, 50, 100], [1, 2, 3, 4]))).toEqual({
      kind: "refused",
      argument: "x",
      because: "quadratic needs at least 4 different rates; got 3.",
    });
  });
  it("rates so near one another that they tell no curve", () => {
    const rates = [1e6, 1e6 + 1, 1e6 + 2, 1e6 + 3, 1e6 + 4];
    expect(faultOf(() => fit("quadratic", rates, [1, 2, 4, 5, 5]))).toEqual({
      kind: "refused",
      argument: "x",
      because: "the rates do not tell the numbers of quadratic apart: spread them wider.",
    });
  });
  it("more than 1,000 pairs", () => {
    const pairs = (count: number) => {
      const rates = Array.from({ length: count }, (_, index) => index);
      return fit("linear", rates, rates);
    };
    expect(pairs(1000).pairs).toBe(1000);
    expect(faultOf(() => pairs(1001))).toEqual({ kind: "tooLarge", argument: "x", received: 1001, max: 1000 });
  });
  it("yields that are all the same", () => {
    expect(faultOf(() => fit("linear", level, [7, 7, 7, 7, 7]))).toMatchObject({ kind: "refused", argument: "y" });
  });
  it("a plateau where yields rise to the last rate", () => {
    const fault = faultOf(() => fit("linear-plateau", level, [100, 110, 121, 133, 150]));
    expect(fault).toMatchObject({ because: expect.stringContaining("no plateau within the rates tested") });
  });
  it("a plateau reached at the second rate, which cannot be placed", () => {
    const fault = faultOf(() => fit("quadratic-plateau", level, [100, 150, 150.1, 149.9, 150]));
    expect(fault).toMatchObject({ because: expect.stringContaining("level from the second-lowest rate") });
  });
  it("a ceiling where yields rise in a straight line", () => {
    const fault = faultOf(() => fit("mitscherlich", level, [100, 110, 120, 130, 140.5]));
    expect(fault).toMatchObject({ because: expect.stringContaining("straight line") });
  });
  it("a rise where yields fall", () => {
    const fault = faultOf(() => fit("linear-plateau", level, [150, 140, 130, 120, 110]));
    expect(fault).toMatchObject({ argument: "y", because: expect.stringContaining("do not rise") });
  });
  it("a rate below 0 and a yield that is none", () => {
    expect(faultOf(() => fit("linear", [-1, 2, 3, 4], [1, 2, 3, 4]))).toMatchObject({ argument: "x", received: -1 });
    expect(faultOf(() => fit("linear", [1, 2, 3, 4], [1, NaN, 3, 4]))).toMatchObject({ argument: "y" });
  });
});

describe("responseCompare", () => {
  it("fits six models; the closest is the one with the lowest AICc", () => {
    const { models, closest } = responseCompare({ ...segmentedPairs, priceRatio: 0.01 });
    expect(models).toHaveLength(6);
    const known = models.flatMap(({ model, fit: one }) => ("because" in one ? [] : [{ model, aicc: one.aicc ?? NaN }]));
    const lowest = Math.min(...known.map(({ aicc }) => aicc));
    expect(known.find(({ aicc }) => aicc === lowest)?.model).toBe(closest);
  });
  it("keeps the models that fit and says why another does not", () => {
    const { models } = responseCompare({
      rates: [0, 50, 100, 150, 200],
      yieldsBuPerAc: [100, 111, 121, 133, 150],
      priceRatio: 0,
    });
    const plateau = models.find(({ model }) => model === "linear-plateau");
    expect(plateau?.fit).toMatchObject({ because: expect.stringContaining("no plateau") });
    expect(models.find(({ model }) => model === "linear")?.fit).toHaveProperty("r2");
  });
  it("tells no closest model from four pairs", () => {
    const { models, closest } = responseCompare({
      rates: [0, 50, 100, 150],
      yieldsBuPerAc: [1, 2, 2, 4],
      priceRatio: 0,
    });
    expect(models.find(({ model }) => model === "linear")?.fit).toMatchObject({ aicc: null });
    expect(closest).toBeNull();
  });
  it("refuses data that no model fits", () => {
    const fault = faultOf(() => responseCompare({ rates: [0, 50], yieldsBuPerAc: [1, 2], priceRatio: 0 }));
    expect(fault).toMatchObject({ kind: "refused", argument: "x" });
  });
});
