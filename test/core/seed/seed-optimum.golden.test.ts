import { curveYieldPct, populationCurve } from "../../../src/core/seed/population-curve";
import { publishedOptimum } from "../../../src/core/seed/published-optimum";
import { seedOptimum } from "../../../src/core/seed/seed-optimum";
import { faultOf } from "../fault-of";

const open = { fewestPerAc: null, mostPerAc: null };

describe("corn at 200 bu and $4.00, seed at $3.00 a thousand, 95 plants from 100 seeds", () => {
  const at = { fullYieldBu: 200, seedUsdPerThousand: 3, grainPriceUsd: 4, survivalPct: 95, ...open };
  it.each([
    ["cornIllinois", 27_778, 29_240],
    ["cornIowa", 31_456, 33_112],
  ] as const)("%s: %i plants, %i seeds", (key, plants, seeds) => {
    const best = publishedOptimum({ choice: { key }, ...at });
    expect(Math.abs(best.plantsPerAc - plants)).toBeLessThan(10);
    expect(Math.abs(best.seedsPerAc - seeds)).toBeLessThan(10);
  });
  it("the highest yields stand at 30,300 and 36,000 plants", () => {
    const highest = (key: "cornIllinois" | "cornIowa") =>
      (publishedOptimum({ choice: { key }, ...at }).highestYieldPlantsPerAc ?? 0) / 1000;
    expect(highest("cornIllinois")).toBeCloseTo(30.3, 1);
    expect(highest("cornIowa")).toBeCloseTo(36.0, 1);
  });
});

describe("soybeans at 60 bu and $12, seed at $60 for 140,000, 85 plants from 100 seeds", () => {
  it("90,899 plants, 106,940 seeds", () => {
    const best = publishedOptimum({
      choice: { key: "soybeanIllinois" },
      fullYieldBu: 60,
      seedUsdPerThousand: 60 / 140,
      grainPriceUsd: 12,
      survivalPct: 85,
      ...open,
    });
    expect(Math.abs(best.plantsPerAc - 90_899)).toBeLessThan(20);
    expect(Math.abs(best.seedsPerAc - 106_940)).toBeLessThan(20);
  });
  it("Illinois: 50,000 plants give 0.91 of 100,000 and 0.90 of 150,000", () => {
    const share = (thousand: number) => curveYieldPct(populationCurve("soybeanIllinois"), thousand);
    expect(share(50) / share(100)).toBeCloseTo(0.909, 3);
    expect(share(50) / share(150)).toBeCloseTo(0.901, 3);
    // Penn State prints 90 to 95 % for 70,000; the two do not agree, and this one stays with Illinois.
    expect(share(70)).toBeCloseTo(96, 0);
  });
});

describe("the Illinois corn curve against its table", () => {
  it("20,000 on April 25 and 30,000 on May 25: 91.5 and 86.8 (printed 92 and 87)", () => {
    const curve = populationCurve("cornIllinois");
    expect(curveYieldPct(curve, 20, 24)).toBeCloseTo(91.5, 1);
    expect(curveYieldPct(curve, 30, 54)).toBeCloseTo(86.8, 1);
  });
});

describe("seedOptimum", () => {
  const own = (over: Partial<Parameters<typeof seedOptimum>[0]>) =>
    seedOptimum({
      curve: { form: "quadratic", linear: 8, quadratic: -0.125 },
      seedUsdPerThousand: 4,
      grainPriceUsd: 4,
      survivalPct: 100,
      ...open,
      ...over,
    });
  it("is the highest yield when seed is free: -8 / (2 × -0.125) = 32 thousand", () => {
    expect(own({ seedUsdPerThousand: 0 }).plantsPerAc).toBeCloseTo(32_000, 8);
  });
  it("is kept between the fewest and the most plants", () => {
    expect(own({ mostPerAc: 26_000 })).toMatchObject({ plantsPerAc: 26_000, heldAt: "most" });
    expect(own({ fewestPerAc: 30_000 })).toMatchObject({ plantsPerAc: 30_000, heldAt: "fewest" });
    // Seed at $40: 1,000 plants must bring 10 bu, the first ones bring 8.
    expect(own({ seedUsdPerThousand: 40, fewestPerAc: 15_000 })).toMatchObject({ plantsPerAc: 15_000 });
  });
  it("says so when no stand is best", () => {
    expect(faultOf(() => own({ seedUsdPerThousand: 40 }))).toMatchObject({ kind: "noSolution" });
    const free = { curve: { form: "exponential", fullYieldBu: 60, rise: 0.05 } as const, seedUsdPerThousand: 0 };
    expect(faultOf(() => own(free))).toMatchObject({ kind: "noSolution" });
    expect(faultOf(() => own({ fewestPerAc: 30_000, mostPerAc: 20_000 }))).toMatchObject({ kind: "refused" });
  });
  it("earns more than a hundred plants to either side, on the person's own exponential", () => {
    const best = publishedOptimum({
      choice: { rise: 0.05 },
      fullYieldBu: 60,
      seedUsdPerThousand: 0.5,
      grainPriceUsd: 10,
      survivalPct: 80,
      ...open,
    });
    const over = (plants: number) => 600 * (1 - Math.exp((-0.05 * plants) / 1000)) - (0.5 * plants) / 800;
    expect(over(best.plantsPerAc)).toBeGreaterThan(over(best.plantsPerAc - 100));
    expect(over(best.plantsPerAc)).toBeGreaterThan(over(best.plantsPerAc + 100));
    expect(best.overSeedUsdPerAc).toBeCloseTo(over(best.plantsPerAc), 8);
  });
});
