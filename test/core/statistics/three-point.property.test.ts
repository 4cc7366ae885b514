import fc from "fast-check";
import { pert, triangular, type ThreePoints } from "../../../src/core/statistics/three-point";

const points: fc.Arbitrary<ThreePoints> = fc
  .tuple(fc.integer({ min: -500, max: 500 }), fc.integer({ min: 0, max: 300 }), fc.integer({ min: 0, max: 300 }))
  .filter(([, below, above]) => below + above > 0)
  .map(([low, below, above]) => ({ low, likely: low + below, high: low + below + above }));
const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });

describe.each([
  ["triangular", triangular],
  ["pert", pert],
])("%s", (_name, shape) => {
  it("cdf undoes quantile", () => {
    fc.assert(
      fc.property(points, share, (three, p) => expect(shape(three).cdf(shape(three).quantile(p))).toBeCloseTo(p, 8)),
    );
  });
  it("rises: a larger value is never less likely to hold", () => {
    fc.assert(
      fc.property(points, share, share, (three, one, other) => {
        const spread = shape(three);
        // The quantile of the beta curve is found by steps: it is good to the last digits but one.
        const slack = 1e-9 * Math.max(1, Math.abs(three.low), Math.abs(three.high));
        const larger = spread.quantile(Math.max(one, other));
        expect(spread.quantile(Math.min(one, other))).toBeLessThanOrEqual(larger + slack);
      }),
    );
  });
  it("mean and sd are those of its quantiles, summed over 1,000 equal slices", () => {
    fc.assert(
      fc.property(points, (three) => {
        const spread = shape(three);
        const slices = Array.from({ length: 1000 }, (_, index) => spread.quantile((index + 0.5) / 1000));
        const mean = slices.reduce((sum, x) => sum + x, 0) / slices.length;
        const variance = slices.reduce((sum, x) => sum + (x - mean) ** 2, 0) / slices.length;
        const width = three.high - three.low;
        expect(Math.abs(mean - spread.mean) / width).toBeLessThan(0.0005);
        expect(Math.abs(Math.sqrt(variance) - spread.sd) / width).toBeLessThan(0.002);
      }),
      { numRuns: 8 },
    );
  });
  it("moves and stretches with its points", () => {
    fc.assert(
      fc.property(points, share, (three, p) => {
        const stretched = { low: 3 * three.low + 7, likely: 3 * three.likely + 7, high: 3 * three.high + 7 };
        expect(shape(stretched).quantile(p)).toBeCloseTo(3 * shape(three).quantile(p) + 7, 6);
        expect(shape(stretched).sd).toBeCloseTo(3 * shape(three).sd, 8);
      }),
    );
  });
});
