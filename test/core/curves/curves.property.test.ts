import fc from "fast-check";
import { responseBest } from "../../../src/core/curves/response-best";
import { responseFit } from "../../../src/core/curves/response-fit";
import { responseYield } from "../../../src/core/curves/response-yield";
import type { ResponseModelKey } from "../../../src/core/curves/response-models";
import { segmentedPairs } from "./segmented-pairs";

const models: readonly ResponseModelKey[] = [
  "quadratic-plateau",
  "linear-plateau",
  "quadratic",
  "linear",
  "mitscherlich",
  "square-root",
];

function fit(model: ResponseModelKey, pairs: typeof segmentedPairs) {
  return responseFit({ ...pairs, model, confidencePct: 95, priceRatio: null });
}

/** Curves that bend down, as trials give them. */
const bentDown: fc.Arbitrary<readonly [ResponseModelKey, readonly number[]]> = fc.oneof(
  fc.tuple(number(50, 150), number(0.05, 2), number(-0.01, -0.0005)).map((p) => ["quadratic", p] as const),
  fc.tuple(number(50, 150), number(0.05, 2), number(-0.01, -0.0005)).map((p) => ["quadratic-plateau", p] as const),
  fc.tuple(number(50, 150), number(0.05, 2), number(20, 250)).map((p) => ["linear-plateau", p] as const),
  fc.tuple(number(100, 250), number(20, 100), number(0.005, 0.05)).map((p) => ["mitscherlich", p] as const),
  fc.tuple(number(50, 150), number(1, 10), number(-0.4, 0)).map((p) => ["square-root", p] as const),
);

function number(min: number, max: number) {
  return fc.double({ min, max, noNaN: true });
}

describe.each(models)("a fit of %s", (model) => {
  it("is the same to the last digit in any order of the strips", () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([...Array(16).keys()], { minLength: 16, maxLength: 16 }), (order) => {
        const shuffled = {
          rates: order.map((index) => segmentedPairs.rates[index] ?? NaN),
          yieldsBuPerAc: order.map((index) => segmentedPairs.yieldsBuPerAc[index] ?? NaN),
        };
        expect(fit(model, shuffled)).toEqual(fit(model, segmentedPairs));
      }),
      { numRuns: 10 },
    );
  });
  it("follows the units of rate and yield", () => {
    const scales = fc.tuple(
      fc.double({ min: 0.01, max: 1000, noNaN: true }),
      fc.double({ min: 0.1, max: 500, noNaN: true }),
    );
    fc.assert(
      fc.property(scales, ([rateScale, yieldScale]) => {
        const plain = fit(model, segmentedPairs);
        const scaled = fit(model, {
          rates: segmentedPairs.rates.map((rate) => rate * rateScale),
          yieldsBuPerAc: segmentedPairs.yieldsBuPerAc.map((one) => one * yieldScale),
        });
        plain.parameters.forEach(({ facts, value, standardError }, index) => {
          const factor = yieldScale ** facts.bushels * rateScale ** facts.units;
          expect((scaled.parameters[index]?.value ?? NaN) / factor / value).toBeCloseTo(1, 6);
          expect((scaled.parameters[index]?.standardError ?? NaN) / factor / (standardError ?? NaN)).toBeCloseTo(1, 5);
        });
        expect(scaled.r2).toBeCloseTo(plain.r2, 9);
      }),
      { numRuns: 15 },
    );
  });
  it("misses no more than any of its neighbours", () => {
    const found = fit(model, segmentedPairs);
    const best = found.parameters.map(({ value }) => value);
    const missedBy = (parameters: readonly number[]) =>
      segmentedPairs.rates.reduce((sum, rate, index) => {
        const expected = responseYield({ model, parameters, rate }).yieldBuPerAc;
        return sum + ((segmentedPairs.yieldsBuPerAc[index] ?? NaN) - expected) ** 2;
      }, 0);
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -0.05, max: 0.05, noNaN: true }), { minLength: 3, maxLength: 3 }),
        (shifts) => {
          const neighbour = best.map((value, index) => value * (1 + (shifts[index] ?? 0)));
          expect(missedBy(neighbour)).toBeGreaterThanOrEqual(found.missedSquares * (1 - 1e-12));
        },
      ),
    );
  });
});

describe("the best rate", () => {
  it("falls, or stays, as the input grows dearer", () => {
    fc.assert(
      fc.property(bentDown, number(0, 1), number(0, 1), ([model, parameters], one, other) => {
        const at = (priceRatio: number) => responseBest({ model, parameters, priceRatio, highestRate: 300 }).bestRate;
        expect(at(Math.max(one, other))).toBeLessThanOrEqual(at(Math.min(one, other)));
      }),
    );
  });
  it("returns at least as much as any other rate of the trial", () => {
    fc.assert(
      fc.property(bentDown, number(0, 1), number(0, 300), ([model, parameters], priceRatio, rate) => {
        const best = responseBest({ model, parameters, priceRatio, highestRate: 300 });
        const other = responseYield({ model, parameters, rate }).gainBuPerAc - priceRatio * rate;
        expect(best.netGainBuPerAc).toBeGreaterThanOrEqual(other - 1e-9);
      }),
    );
  });
});
