import { binVolume } from "../../../src/core/harvest/bin-volume";
import { dryingCost } from "../../../src/core/harvest/drying-cost";
import { dryingFuel } from "../../../src/core/harvest/drying-fuel";
import { earCountYield } from "../../../src/core/harvest/ear-count-yield";
import { earLoss } from "../../../src/core/harvest/ear-loss";
import { grainShrink } from "../../../src/core/harvest/grain-shrink";
import { bushelCount, harvestLoss } from "../../../src/core/harvest/harvest-loss";
import { autumnWheatYield, headCountYield, headWeightYield } from "../../../src/core/harvest/head-count-yield";
import { equilibriumMoisture, safeMoisture } from "../../../src/core/harvest/keeping-moisture";
import { podCountYield, podsFromSample, podsFromStand } from "../../../src/core/harvest/pod-count-yield";
import { paidBushels, testWeightDry } from "../../../src/core/harvest/test-weight";
import type { GrainKey } from "../../../src/reference/grain";
import type { LossCropKey } from "../../../src/reference/harvest/loss-crops";

/** Cases in print, and the arithmetic of the methods in print; the source stands in each name. */
describe("yield before harvest", () => {
  it("corn, yield component method: 30 ears, 16 rows, 30 kernels, 90 thousand: 160 bu/ac", () => {
    const count = { ears: 30, kernelRows: 16, kernelsPerRow: 30, fractionOfAcre: 0.001 };
    expect(earCountYield({ ...count, kernelSize: { fill: "normal" } }).yieldBuPerAc).toBeCloseTo(160, 10);
    // 14,400 / 85 and / 110
    expect(earCountYield({ ...count, kernelSize: { fill: "modern" } }).yieldBuPerAc).toBeCloseTo(169.41, 2);
    expect(earCountYield({ ...count, kernelSize: { kernelsPerBu: 110_000 } }).yieldBuPerAc).toBeCloseTo(130.91, 2);
  });
  it("soybean, North Dakota: 120,000 plants, 30 pods, 2.5 seeds, 2,500 to the pound: 60 bu/ac", () => {
    const count = { podsPerAc: podsFromStand(120_000, 30), seedsPerPod: 2.5, seedSize: { seedsPerLb: 2500 } };
    expect(podCountYield(count).yieldBuPerAc).toBeCloseTo(60, 10);
  });
  it.each([
    ["large", 15],
    ["normal", 18],
    ["small", 21],
  ] as const)("soybean, Purdue: pods on 1/10,000 ac × seeds / factor, %s seed %i", (size, factor) => {
    const podsPerAc = podsFromSample(400, 0.0001);
    const { yieldBuPerAc } = podCountYield({ podsPerAc, seedsPerPod: 2.5, seedSize: { size } });
    expect(yieldBuPerAc).toBeCloseTo((400 * 2.5) / factor, 10);
  });
  it("wheat, North Dakota: 135 heads in 3 ft, 15 spikelets, 2.3 kernels, 7-in rows: 94.48 bu/ac", () => {
    const count = { heads: 135, rowWidthIn: 7, spikelets: 15, kernelsPerSpikelet: null, feetCounted: 3 };
    expect(headCountYield(count).yieldBuPerAc).toBeCloseTo(94.48, 2);
    expect(headCountYield({ ...count, heads: 270, feetCounted: 6 }).yieldBuPerAc).toBeCloseTo(94.48, 2);
    // 135 heads on 3 ft × 7/12 ft = 1.75 sq ft
    expect(headCountYield(count).headsPerSqFt).toBeCloseTo(135 / 1.75, 10);
  });
  it("wheat, Ontario: 55 heads, 32 kernels, 35 g, × 0.0016: 98.56 bu/ac; the exact factor is 0.0016006", () => {
    expect(headWeightYield({ headsPerSqFt: 55, kernelsPerHead: 32, kernelWeightG: 35 }).yieldBuPerAc).toBeCloseTo(
      98.56,
      8,
    );
    expect(43_560 / 453.592 / 60 / 1000).toBeCloseTo(0.0016006, 7);
  });
  it("wheat, Nebraska in autumn: 4.99 bu/ac for each plant on a square foot", () => {
    const stand = { plantsPerSqFt: 1, headsPerPlant: null, kernelsPerHead: null, kernelsPerLb: null };
    expect(autumnWheatYield(stand).yieldBuPerAc).toBeCloseTo(4.99, 2);
  });
});

describe("harvest loss", () => {
  it("soybean, Michigan State: 10, 9, 11, 11 behind, 2, 1, 2, 2 standing: 8.5 / 4 = 2.125 bu/ac (printed 2.2)", () => {
    const loss = harvestLoss({
      crop: "soybean",
      seedsPerSqFt: (10 + 9 + 11 + 11) / 4,
      standingPerSqFt: (2 + 1 + 2 + 2) / 4,
      seedsPerLb: null,
      yieldBuPerAc: null,
      priceUsdPerBu: null,
    });
    expect(loss.lossBuPerAc).toBeCloseTo(2.125, 10);
  });
  it("frame rule, Georgia and Nebraska: 20 kernels of corn or 40 soybeans in 10 sq ft are 1 bu/ac", () => {
    const of = (crop: LossCropKey, seeds: number) => seeds / 10 / bushelCount(crop, null).seedsPerSqFt;
    expect([of("corn", 20), of("soybean", 40)]).toEqual([1, 1]);
  });
  it("length for 1/100 acre, Missouri: 6 rows of 30 in, 29.04 ft (printed 29)", () => {
    const walk = earLoss({ ears: 1, rows: 6, rowWidthIn: 30, walkedFt: null });
    expect(walk.hundredthFt).toBeCloseTo(29.04, 10);
    expect(walk.lossBuPerAc).toBe(1);
  });
  // North Dakota 2002: seeds in a pound beside seeds on a square foot; agreement is what the rounding of print leaves.
  it.each([
    ["corn", 1500, 2, 1.93],
    ["smallSoybean", 3300, 4.5, 4.55],
    ["largeSoybean", 2400, 3.5, 3.31],
    ["springWheat", 14_300, 20, 19.7],
    ["durum", 11_500, 16, 15.84],
    ["barley", 13_500, 15, 14.88],
    ["oat", 15_500, 11, 11.39],
    ["sorghum", 15_000, 18, 19.28],
    ["canola", 150_000, 172, 172.18],
    ["flax", 88_000, 113, 113.13],
    ["navyBean", 3000, 4, 4.13],
    ["pintoBean", 1400, 2, 1.93],
    ["buckwheat", 15_000, 16, 16.53],
  ] as const)("%s, %i seeds in a pound: printed %d, computed %d", (crop, seedsPerLb, printed, computed) => {
    expect(bushelCount(crop, null)).toMatchObject({ seedsPerSqFt: printed, from: "printed" });
    expect(bushelCount(crop, seedsPerLb).seedsPerSqFt).toBeCloseTo(computed, 2);
    expect(Math.abs(computed / printed - 1)).toBeLessThan(0.08);
  });
  it("rye is worked out, 18,000 × 56 / 43,560 = 23.14, because the printed 42 contradicts its own 18,000", () => {
    expect(bushelCount("rye", null)).toMatchObject({ from: "seeds in a pound" });
    expect(bushelCount("rye", null).seedsPerSqFt).toBeCloseTo(23.14, 2);
    expect(bushelCount("winterWheat", null).seedsPerSqFt).toBeCloseTo(22.04, 2);
  });
});

const shrinkOf = (grain: GrainKey, moisturePct: number, marketMoisturePct: number | null = null) =>
  grainShrink({ grain, moisturePct, marketMoisturePct, handlingLossPct: 0, shrinkPerPointPct: null });

describe("shrink", () => {
  it("corn from 25 to 15.5 %, South Dakota State: 11.24 % by water", () => {
    expect(shrinkOf("corn", 25).waterPct).toBeCloseTo(11.24, 2);
  });
  it.each([
    [15.5, 1.183],
    [15, 1.176],
    [14, 1.163],
    [13, 1.149],
    [12, 1.136],
    [11, 1.124],
    [10, 1.111],
  ])("one point over %d %% shrinks %d %%", (market, factor) => {
    expect(shrinkOf("corn", market + 1, market).waterPct).toBeCloseTo(factor, 3);
  });
});

describe("test weight", () => {
  it("Ohio State: 1,000 volume bushels at 52 lb are 928.6 paid bushels (printed 929)", () => {
    expect(paidBushels(1000, 52, "corn").paidBu).toBeCloseTo(928.57, 2);
  });
  it("52 lb at 20 % dries to 52 × 84.5 / 80 = 54.925 lb: a gain of about 3 (Wisconsin prints 2)", () => {
    const dry = testWeightDry({ testWeightLbPerBu: 52, moisturePct: 20, dryMoisturePct: 15.5 });
    expect(dry.testWeightLbPerBu).toBeCloseTo(54.925, 10);
    expect(dry.grade).toContain("No. 2");
  });
});

describe("drying", () => {
  it("North Dakota: LP gas at $1.90 and 0.022 gal, 10 points: 4.18 cents a point, 41.8 cents a bushel (printed 42)", () => {
    const cost = dryingCost({
      points: 10,
      bushels: 1,
      fuelPriceUsdPerGal: 1.9,
      gasUse: { rule: "highTemperature" },
      fanKwhPerBu: 0,
      powerPriceUsdPerKwh: null,
      otherUsdPerBu: 0,
    });
    expect(cost.fuelUsdPerBuPoint).toBeCloseTo(0.0418, 10);
    expect(cost.costUsdPerBu).toBeCloseTo(0.418, 10);
  });
  it("corn 25.5 to 15.5 %, 2,500 BTU, 91,500 a gallon: 7.517 lb of water and 0.2054 gal a dry bushel, 0.0205 a point", () => {
    const fuel = dryingFuel({
      wetBu: 1000,
      moisturePct: 25.5,
      grain: "corn",
      fuel: "lpGas",
      dryerUse: { dryer: "highTemperature" },
      targetMoisturePct: null,
    });
    expect(fuel.waterLbPerDryBu).toBeCloseTo(7.517, 3);
    expect(fuel.fuelPerDryBu).toBeCloseTo(0.2054, 4);
    expect(fuel.fuelPerDryBu / fuel.points).toBeCloseTo(0.0205, 4);
  });
});

describe("bins and keeping", () => {
  it("Iowa: 0.6313 × diameter² bushels for a foot of depth, within the 0.04 % of its 0.80385 bushels a cubic foot", () => {
    const bin = { diameterFt: 30, depthFt: 20, peak: { heightFt: 0 }, packFactor: 1 } as const;
    expect(binVolume(bin).bushels / (0.6313 * 900 * 20)).toBeCloseTo(1, 3);
    // A cone holds a third of its cylinder: 6 ft of peak is 2 ft of depth.
    const peaked = binVolume({ ...bin, peak: { grain: "corn" } });
    expect(peaked.peakFt).toBe(6);
    expect(peaked.peakBu).toBeCloseTo(binVolume({ ...bin, depthFt: 2 }).bushels, 8);
  });
  it("Purdue: 15.5 % to six months, 14 to twelve, 13 beyond", () => {
    expect([0, 6, 6.1, 12, 12.1, 24].map((months) => safeMoisture(months).moisturePct)).toEqual([
      15.5, 15.5, 14, 14, 13, 13,
    ]);
  });
  it("Chung-Pfost: air of 65 % at 21.1 °C brings corn to 13.5 %", () => {
    expect(equilibriumMoisture(65, 21.1 * 1.8 + 32).wetBasisPct).toBeCloseTo(13.5, 1);
  });
});
