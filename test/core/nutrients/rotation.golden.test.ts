import { rotationBalance } from "../../../src/core/nutrients/rotation-balance";
import { testDrift } from "../../../src/core/nutrients/test-drift";

/** Worked examples as their publications print them; tolerance is the printed rounding. */
describe("corn and soybean, 180 and 60 bu (Ohio State Extension ANR-74)", () => {
  it.each([
    ["P2O5", 110],
    ["K2O", 110],
  ] as const)("remove 100 to 120 lb %s in two years", (nutrient, middle) => {
    const { removedLbPerAc } = rotationBalance({
      crops: ["corn", "soybean"],
      yields: [180, 60],
      parts: null,
      nutrient,
      appliedLbPerAc: [0, 0],
      set: null,
    });
    expect(Math.abs(removedLbPerAc - middle)).toBeLessThanOrEqual(10);
  });
});

describe("pounds of K2O that move the soil test by 1 ppm (Ohio State Extension, 2012)", () => {
  it.each([
    [5, 5],
    [10, 6],
    [20, 8],
    [30, 10],
  ])("at an exchange capacity of %d: %d", (cecMeq, printed) => {
    const drift = testDrift({ soilTestPpm: 100, balanceLbPerAc: 0, nutrient: "K2O", lbPerPpm: null, cecMeq });
    expect(drift.lbPerPpm).toBeCloseTo(printed, 9);
  });
});
