import { seedPerFoot } from "../../../src/core/seed/seed-per-foot";
import { seedPounds } from "../../../src/core/seed/seed-pounds";
import { seedRate } from "../../../src/core/seed/seed-rate";
import { seedReturn } from "../../../src/core/seed/seed-return";
import { standEvenness } from "../../../src/core/seed/stand-evenness";
import { standHoop } from "../../../src/core/seed/stand-hoop";
import { standRange } from "../../../src/core/seed/stand-range";

describe("North Dakota State University, Optimal Seeding Rates", () => {
  it("wheat: 1.1 million plants, 15 % lost, 12,500 seeds/lb, 95 % germination: 108.98 lb/ac, rounded there to 110", () => {
    const { seedsPerAc } = seedRate({ targetStandPerAc: 1_100_000, germinationPct: 95, fieldSurvivalPct: 85 });
    const { poundsPerAc } = seedPounds({ seedsPerAc, seedsPerLb: 12_500, thousandKernelG: null });
    expect(poundsPerAc).toBeCloseTo(108.98, 2);
  });
});

describe("University of Kentucky, seeds per square foot to pounds", () => {
  const pounds = (perSqFt: number, seedsPerLb: number) =>
    seedPounds({ seedsPerAc: perSqFt * 43_560, seedsPerLb, thousandKernelG: null }).poundsPerAc;
  it("35 seeds of 14,000 to the pound: 109 lb/ac", () => {
    expect(Math.abs(pounds(35, 14_000) - 109)).toBeLessThan(0.5);
  });
  // The 10,000 seeds/lb cell is printed as 150; 35 × 43,560 / 10,000 is 152.46, and stays that here.
  it("35 seeds of 10,000 to the pound: 152.5 by the same sum", () => {
    expect(pounds(35, 10_000)).toBeCloseTo(152.46, 2);
  });
  it("7-in rows: 20.57 in of row make a square foot, 20.4 seeds stand in a foot of row", () => {
    const row = seedPerFoot({ seedsPerAc: 35 * 43_560, rowWidthIn: 7 });
    expect(row.rowInchesPerSqFt).toBeCloseTo(20.57, 2);
    expect(row.seedsPerFoot).toBeCloseTo(20.42, 2);
  });
  it("a sample of 20 g: seeds in a pound are the count times 22.68", () => {
    // 700 kernels in 20 g: 1,000 weigh 20,000 / 700 g.
    const { seedsPerLb } = seedPounds({ seedsPerAc: 1e6, seedsPerLb: null, thousandKernelG: 20_000 / 700 });
    expect(seedsPerLb).toBeCloseTo(700 * 22.68, 0);
  });
});

describe("the prairie rule, plants per square foot × grams / survival / 10", () => {
  it("is 4 % above the exact sum: its divisor is 10.413", () => {
    const exact = seedPounds({ seedsPerAc: (30 / 0.8) * 43_560, seedsPerLb: null, thousandKernelG: 35 }).poundsPerAc;
    expect((30 * 35) / 0.8 / 10 / exact).toBeCloseTo(1.0413, 4);
  });
});

describe("Michigan State University, Thumb soybean population trials", () => {
  it.each([
    [80_000, 36.8, 43.99, 495.38],
    [120_000, 43.2, 44.52, 527.22],
    [240_000, 48.8, 44.95, 527.54],
  ])("%i seeds, %d and %d bu/ac: $%d", (seedsPerAc, first, second, printed) => {
    const { returnUsdPerAc } = seedReturn({
      seedsPerAc,
      yieldBuPerAc: (first + second) / 2,
      grainPriceUsd: 12.9,
      unitPriceUsd: 45,
      unitSize: { crop: "soybean" },
      treatmentUsdPerUnit: 0,
    });
    // Yields are printed to 0.01 bu, 0.065 $ either way.
    expect(Math.abs(returnUsdPerAc - printed)).toBeLessThan(0.07);
  });
});

describe("Purdue University, Corn & Soybean Field Guide: plants an acre for each plant in the hoop", () => {
  // Printed with π = 3.14, 0.05 % high.
  it.each([
    [18, 24_662],
    [21, 18_119],
    [24, 13_872],
    [27, 10_961],
    [30, 8878],
    [33, 7337],
    [36, 6165],
  ])("%i in: %i", (hoopDiameterIn, printed) => {
    const { plantsPerAcEach } = standHoop({ counts: [1], hoopDiameterIn });
    expect(Math.abs(plantsPerAcEach / printed - 1)).toBeLessThan(0.001);
  });
  it("13 plants in 24 in: 180,336 printed", () => {
    const { plantsPerAc } = standHoop({ counts: [13], hoopDiameterIn: 24 });
    expect(Math.abs(plantsPerAc / 180_336 - 1)).toBeLessThan(0.001);
    expect(plantsPerAc).toBeCloseTo(180_253, 0);
  });
});

describe("five counts of 28, 31, 30, 26 and 29 in 1/1000 acre", () => {
  it("mean 28,800, deviation 1,924, give or take 2,388", () => {
    const range = standRange({
      counts: [28, 31, 30, 26, 29],
      rowWidthIn: 30,
      feetCounted: null,
      confidencePct: 95,
      withinPct: 5,
    });
    expect(range.meanPerAc).toBeCloseTo(28_800, 8);
    expect(Math.abs(range.sdPerAc - 1924)).toBeLessThan(1);
    expect(Math.abs(range.halfWidthPerAc - 2388)).toBeLessThan(5);
  });
});

describe("corn spacing, SD 4.5 in against 2 in tolerated", () => {
  // Two gaps 4.5 × √2 in apart have a sample deviation of 4.5 in.
  const gapsIn = [6, 6 + 4.5 * Math.SQRT2];
  const loss = (lossPerInch: Parameters<typeof standEvenness>[0]["lossPerInch"]) =>
    standEvenness({ gapsIn, lossPerInch, toleratedIn: null, nominalIn: null }).lossBuPerAc;
  it("costs 10.0 bu by Site-Specific Management Guideline 37 and 5.5 bu by Purdue's trial of 2004", () => {
    expect(loss({ key: "guideline37" })).toBeCloseTo(10, 10);
    expect(loss({ key: "purdue2004" })).toBeCloseTo(5.5, 10);
  });
});
