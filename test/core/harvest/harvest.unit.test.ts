import { binVolume } from "../../../src/core/harvest/bin-volume";
import { dryingCost } from "../../../src/core/harvest/drying-cost";
import { dryingFuel } from "../../../src/core/harvest/drying-fuel";
import { grainShrink } from "../../../src/core/harvest/grain-shrink";
import { harvestLoss } from "../../../src/core/harvest/harvest-loss";
import { autumnWheatYield, headCountYield } from "../../../src/core/harvest/head-count-yield";
import { lossByPlace } from "../../../src/core/harvest/loss-by-place";
import { marketBushels } from "../../../src/core/harvest/market-bushels";
import { storageDays } from "../../../src/core/harvest/storage-days";
import { storageUsed } from "../../../src/core/harvest/storage-used";
import { testWeightDry } from "../../../src/core/harvest/test-weight";
import { bushelWeight } from "../../../src/core/units/bushel-weight";
import { handlingLoss, type DryerKey } from "../../../src/reference/harvest/drying";
import { faultOf } from "../fault-of";

describe("grainShrink", () => {
  const corn = {
    grain: "corn",
    moisturePct: 20,
    marketMoisturePct: 15,
    handlingLossPct: null,
    shrinkPerPointPct: null,
  } as const;

  it("takes the usual handling loss where none is given, and cites it only where it counts", () => {
    const usual = grainShrink(corn);
    expect(usual.totalPct).toBeCloseTo(500 / 85 + handlingLoss.rows[0].value, 10);
    expect(usual.cited).toEqual(handlingLoss.rows);
    expect(grainShrink({ ...corn, shrinkPerPointPct: 1.4 })).toMatchObject({ totalPct: 7, cited: [] });
    expect(grainShrink({ ...corn, handlingLossPct: 0.5 }).cited).toEqual([]);
  });
  it("is not overdry at the market's own moisture", () => {
    expect([15, 14.9].map((moisturePct) => grainShrink({ ...corn, moisturePct }).isOverdry)).toEqual([false, true]);
  });
  it("leaves something of every load: 50 points at 2 % are all of it", () => {
    const all = { ...corn, moisturePct: 60, marketMoisturePct: 10, shrinkPerPointPct: 2 };
    expect(faultOf(() => grainShrink(all))).toMatchObject({ kind: "refused", argument: "shrinkPerPoint" });
    expect(grainShrink({ ...all, moisturePct: 59 }).totalPct).toBe(98);
  });
  it("is cited with the bushel it was weighed by", () => {
    expect(marketBushels(56_000, corn).cited).toEqual([bushelWeight("corn"), ...handlingLoss.rows]);
  });
});

describe("harvestLoss", () => {
  const soybean = {
    crop: "soybean",
    seedsPerSqFt: 8,
    standingPerSqFt: 4,
    seedsPerLb: null,
    yieldBuPerAc: null,
    priceUsdPerBu: null,
  } as const;

  it("knows what was lost before harvest, and no share or worth of what it is not told", () => {
    expect(harvestLoss(soybean)).toMatchObject({ beforeHarvestBuPerAc: 1, lossPct: null, valueUsdPerAc: null });
    const nothing = { ...soybean, seedsPerSqFt: 0, standingPerSqFt: 0, yieldBuPerAc: 0 };
    expect(harvestLoss(nothing).lossPct).toBeNull();
    expect(harvestLoss({ ...soybean, yieldBuPerAc: 49, priceUsdPerBu: 10 })).toMatchObject({
      lossPct: 2,
      valueUsdPerAc: 10,
    });
  });
  it("refuses a yield and a price below 0", () => {
    expect(faultOf(() => harvestLoss({ ...soybean, yieldBuPerAc: -1 }))).toMatchObject({ argument: "yield" });
    expect(faultOf(() => harvestLoss({ ...soybean, priceUsdPerBu: -1 }))).toMatchObject({ argument: "price" });
  });
  it("cites the printed count, or the seeds in a pound and the bushel it was worked out from, and the target", () => {
    const ofTarget = harvestLoss(soybean).target;
    expect(harvestLoss(soybean).cited).toEqual([
      expect.objectContaining({ crop: "soybean", seedsPerSqFtPerBu: 4 }),
      ofTarget,
    ]);
    const own = harvestLoss({ ...soybean, seedsPerLb: 2700 });
    expect(own.cited).toEqual([bushelWeight("soybean"), ofTarget]);
    expect(harvestLoss({ ...soybean, crop: "rye" }).cited).toEqual(
      expect.arrayContaining([expect.objectContaining({ crop: "rye", seedsPerLb: 18_000 }), bushelWeight("rye")]),
    );
  });
});

describe("lossByPlace", () => {
  const counts = {
    crop: "soybean",
    standingPerSqFt: 4,
    headerPerSqFt: 8,
    behindPerSqFt: 20,
    seedsPerLb: null,
    headerWidthFt: 30,
    residueWidthFt: 10,
  } as const;

  it("is 1, 1 and (20 - 8) / 3 / 4 = 1 bu/ac where the residue falls on a third of the width", () => {
    expect(lossByPlace(counts)).toMatchObject({
      beforeHarvestBuPerAc: 1,
      headerBuPerAc: 1,
      machineBuPerAc: 1,
      totalBuPerAc: 3,
      narrowing: 3,
    });
  });
  it("refuses fewer seeds where more was lost, naming the count", () => {
    expect(faultOf(() => lossByPlace({ ...counts, headerPerSqFt: 3 }))).toEqual({
      kind: "refused",
      argument: "header",
      because: "fewer seeds than under the standing crop: count both again.",
    });
    expect(faultOf(() => lossByPlace({ ...counts, behindPerSqFt: 7 }))).toEqual({
      kind: "refused",
      argument: "behind",
      because: "fewer seeds than in the header zone: count both again.",
    });
  });
  it("waits for the width that is missing, and refuses one out of range", () => {
    const waits = (argument: string) => ({ kind: "waiting", argument });
    expect(faultOf(() => lossByPlace({ ...counts, headerWidthFt: null }))).toEqual(waits("headerWidth"));
    expect(faultOf(() => lossByPlace({ ...counts, residueWidthFt: null }))).toEqual(waits("residueWidth"));
    expect(faultOf(() => lossByPlace({ ...counts, headerWidthFt: 81 }))).toMatchObject({ argument: "headerWidth" });
    expect(faultOf(() => lossByPlace({ ...counts, residueWidthFt: 31 }))).toMatchObject({ argument: "residueWidth" });
  });
});

describe("grain in a bin", () => {
  it("fills the volume that its bushels take: 1.2445 cu ft each, peak and all", () => {
    const bin = binVolume({ diameterFt: 30, depthFt: 20, peak: { heightFt: 6 }, packFactor: 1 });
    expect(bin.volumeCuFt).toBeCloseTo((Math.PI / 4) * 900 * 22, 8);
    expect(bin.bushels / bin.volumeCuFt).toBeCloseTo(1 / 1.2445, 4);
  });
  it("may be drawn down to the floor", () => {
    const emptied = { diameterFt: 30, depthFt: 3, peak: { heightFt: -3 }, packFactor: 1 };
    expect(binVolume(emptied).bushels).toBeCloseTo(
      (2 / 3) * binVolume({ ...emptied, peak: { heightFt: 0 } }).bushels,
      8,
    );
  });
});

describe("testWeightDry", () => {
  it("gains nothing where nothing dries, and reaches No. 1 at 56 lb", () => {
    const same = testWeightDry({ testWeightLbPerBu: 56, moisturePct: 15, dryMoisturePct: 15 });
    expect(same).toMatchObject({ testWeightLbPerBu: 56, gainLbPerBu: 0 });
    expect(same.grade).toContain("No. 1");
    const dried = testWeightDry({ testWeightLbPerBu: 52, moisturePct: 20, dryMoisturePct: 15.5 });
    expect(dried.gainLbPerBu).toBeCloseTo(2.925, 10);
    expect(testWeightDry({ testWeightLbPerBu: 50, moisturePct: 15, dryMoisturePct: 15 }).grade).toContain("below");
  });
});

describe("drying", () => {
  const work = {
    points: 10,
    bushels: 100,
    fuelPriceUsdPerGal: 2,
    gasUse: { galPerBuPoint: 0.02 },
    fanKwhPerBu: 0,
    powerPriceUsdPerKwh: null,
    otherUsdPerBu: 0,
  } as const;

  it("burns 0.02 gal × 10 points × 100 bu = 20 gal, $40", () => {
    expect(dryingCost(work)).toMatchObject({ gallons: 20, costUsd: 40, fanUsdPerBu: 0, cited: [] });
  });
  it("refuses a price of power even where no fan runs", () => {
    expect(faultOf(() => dryingCost({ ...work, powerPriceUsdPerKwh: 11 }))).toMatchObject({ argument: "powerPrice" });
  });
  it("takes each kind of dryer at its own use", () => {
    const task = { wetBu: 1000, moisturePct: 25, grain: "corn", fuel: "lpGas", targetMoisturePct: null } as const;
    const of = (dryer: DryerKey) => dryingFuel({ ...task, dryerUse: { dryer } }).btuPerLb;
    expect([of("highTemperature"), of("heatRecovery"), of("oldBatch")]).toEqual([2500, 1841, 3000]);
  });
});

describe("corn in storage", () => {
  it("cites the tables that were read, a row each", () => {
    const both = storageDays({ moisturePct: 20, temperatureF: 60 }, null);
    expect(both.cited.map((row) => row.source)).toEqual([...new Set(both.cited.map((row) => row.source))]);
    expect(both.cited).toHaveLength(both.read.length);
    expect(storageDays({ moisturePct: 20, temperatureF: 60 }, "ndsu").cited).toEqual([
      expect.objectContaining({ table: "ndsu" }),
    ]);
  });
  it("wants as many moistures and temperatures as periods, and no time below 0", () => {
    const periods = { days: [5, 60, 3], moisturesPct: [20], temperaturesF: [60] };
    const differs = (argument: string) => ({
      kind: "sizesDiffer",
      first: { argument: "days", size: "3 cells" },
      second: { argument, size: "2 cells" },
    });
    expect(faultOf(() => storageUsed({ ...periods, moisturesPct: [20, 16] }))).toEqual(differs("moistures"));
    expect(faultOf(() => storageUsed({ ...periods, temperaturesF: [60, 50] }))).toEqual(differs("temperatures"));
    expect(faultOf(() => storageUsed({ ...periods, days: [-1] }))).toMatchObject({ argument: "days" });
  });
});

describe("wheat counts", () => {
  it("cite the usual numbers they took, and not the person's own", () => {
    const row = { heads: 135, rowWidthIn: 7, spikelets: 15, feetCounted: 3 };
    expect(headCountYield({ ...row, kernelsPerSpikelet: null }).cited).toHaveLength(2);
    expect(headCountYield({ ...row, kernelsPerSpikelet: 2.3 }).cited).toHaveLength(1);
    const stand = { plantsPerSqFt: 20, headsPerPlant: 4, kernelsPerHead: 30, kernelsPerLb: 15_000 };
    // 20 × 4 × 30 × 43,560 / 15,000 / 60 = 116.16
    expect(autumnWheatYield(stand)).toMatchObject({
      yieldBuPerAc: expect.closeTo(116.16, 8),
      headsPerSqFt: 80,
      cited: [bushelWeight("wheat")],
    });
    expect(autumnWheatYield({ ...stand, headsPerPlant: null }).cited).toHaveLength(2);
  });
});
