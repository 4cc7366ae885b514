import { equivalentDepth } from "../../../src/core/drainage/equivalent-depth";
import cells from "./equivalent-depth-cells.json";

/**
 * Cells worked by another program (Python) from the closed form of van der Molen and Wesseling (1991): depth of the
 * barrier below the drain, spacing, radius, equivalent depth, all in meters, to a millimeter. A
 * barrier of 1,000,000 m stands for none at all.
 */
describe("equivalentDepth", () => {
  it.each(cells)("barrier %d m below, spacing %d m, radius %d m: %d m", (barrierBelowDrain, spacing, radius, depth) => {
    expect(equivalentDepth({ barrierBelowDrain, spacing, radius })).toBeCloseTo(depth, 3 - 1e-9);
  });
  it.each([
    [5, 50, 0.1, 2.9331],
    [2, 20, 0.1, 1.3593],
  ])("barrier %d m, spacing %d m, radius %d m: %d m", (barrierBelowDrain, spacing, radius, depth) => {
    expect(equivalentDepth({ barrierBelowDrain, spacing, radius })).toBeCloseTo(depth, 4);
  });
  it("comes to the 1.89 m of Hooghoudt's printed table where the barrier is very deep", () => {
    expect(equivalentDepth({ barrierBelowDrain: 1000, spacing: 20, radius: 0.1 })).toBeCloseTo(1.89, 2);
  });
  it("is one curve where its two branches meet, within the 0.0001 of the closed form", () => {
    const spacing = 20;
    const at = (x: number) =>
      equivalentDepth({ barrierBelowDrain: (x * spacing) / (2 * Math.PI), spacing, radius: 0.1 });
    expect(Math.abs(at(1 + 1e-9) - at(1))).toBeLessThan(0.0002);
  });
  it("agrees with Moody (1966) within 3 %: D 5 m, L 50 m, r 0.1 m, D (1 + 0.1 ((8/pi) ln 50 - 3.41))", () => {
    const moody = 5 / (1 + 0.1 * ((8 / Math.PI) * Math.log(50) - (3.55 - 0.16 + 0.02))); // 3.0208
    expect(moody).toBeCloseTo(3.0208, 4);
    expect(equivalentDepth({ barrierBelowDrain: 5, spacing: 50, radius: 0.1 }) / moody).toBeCloseTo(1, 1);
  });
  it("is nothing at the barrier itself, and NaN for a pipe too wide for its spacing", () => {
    expect(equivalentDepth({ barrierBelowDrain: 0, spacing: 20, radius: 0.1 })).toBe(0);
    expect(equivalentDepth({ barrierBelowDrain: 50, spacing: 1, radius: 3 })).toBeNaN();
  });
});
