import { seedReturn } from "../../../src/core/seed/seed-return";
import { stageDays } from "../../../src/core/seed/stage-days";
import { standHoop } from "../../../src/core/seed/stand-hoop";
import { faultOf } from "../fault-of";

// What stands beside the answer: read in the working, so it has to be right as well.

it("tells the plants in a hoop on average, and the ground that it holds", () => {
  const { meanCount, counts, hoopSqFt, plantsPerAcEach } = standHoop({ counts: [4, 6, 11], hoopDiameterIn: 24 });
  expect({ meanCount, counts }).toEqual({ meanCount: 7, counts: 3 });
  // A circle of one foot from the middle.
  expect(hoopSqFt).toBeCloseTo(Math.PI, 12);
  expect(plantsPerAcEach).toBeCloseTo(43_560 / Math.PI, 6);
});

it("tells how many seeds a bushel of grain buys", () => {
  const seed = { seedsPerAc: 140_000, unitPriceUsd: 56, unitSize: { seedsPerUnit: 140_000 }, treatmentUsdPerUnit: 0 };
  // $56 a unit of 140,000 seeds is $0.40 a thousand; a bushel at $10 buys 25 thousand.
  expect(seedReturn({ ...seed, yieldBuPerAc: 50, grainPriceUsd: 10 }).seedsPerBushel).toBeCloseTo(25_000, 6);
  expect(seedReturn({ ...seed, unitPriceUsd: 0, yieldBuPerAc: 50, grainPriceUsd: 10 }).seedsPerBushel).toBeNull();
});

it("tells the heat reached on the day, at a steady figure and along a list", () => {
  // 115 at 20 a day takes 6 days, which bring 120.
  expect(stageDays({ needed: 115, daily: [20] })).toEqual({ days: 6, reached: 120 });
  expect(stageDays({ needed: 45, daily: [20, 15, 18, 30] })).toEqual({ days: 3, reached: 53 });
  expect(faultOf(() => stageDays({ needed: 45, daily: [] }))).toEqual({ kind: "waiting", argument: "dailyHeatUnits" });
});
