import { cropBudget } from "../../../src/core/money/crop-budget";
import { farmNet } from "../../../src/core/money/farm-net";
import { flexRent, type FlexRentInput } from "../../../src/core/money/flex-rent";
import { landCharge } from "../../../src/core/money/land-charge";
import { marginalReturn } from "../../../src/core/money/marginal-return";
import { operatingInterest } from "../../../src/core/money/operating-interest";
import { shareRent } from "../../../src/core/money/share-rent";
import { faultOf } from "../fault-of";

const lease: FlexRentInput = {
  method: "priceAndYield",
  yieldBuPerAc: 200,
  priceUsdPerBu: 5,
  share: null,
  baseRentUsdPerAc: 240,
  baseYieldBuPerAc: 160,
  basePriceUsdPerBu: 4,
  baseGrossUsdPerAc: null,
  leastRentUsdPerAc: null,
  mostRentUsdPerAc: null,
};

describe("flexRent", () => {
  it("is indexed to both, or to one: 240 × 1.25 × 1.25 = 375, 240 × 1.25 = 300", () => {
    expect(flexRent(lease).rentUsdPerAc).toBeCloseTo(375, 10);
    expect(flexRent({ ...lease, method: "priceOnly", baseYieldBuPerAc: null }).rentUsdPerAc).toBeCloseTo(300, 10);
    expect(flexRent({ ...lease, method: "yieldOnly", basePriceUsdPerBu: null }).rentUsdPerAc).toBeCloseTo(300, 10);
  });
  it("stays between the least and the most", () => {
    expect(flexRent({ ...lease, mostRentUsdPerAc: 350 })).toMatchObject({ rentUsdPerAc: 350, heldBy: "most" });
    expect(flexRent({ ...lease, leastRentUsdPerAc: 400 })).toMatchObject({ rentUsdPerAc: 400, heldBy: "least" });
    expect(flexRent(lease).heldBy).toBeNull();
    // A rule that comes out just at either end is held by none, and one rent may be both ends.
    const fixed = { ...lease, leastRentUsdPerAc: 375, mostRentUsdPerAc: 375 };
    expect(flexRent(fixed)).toMatchObject({ rentUsdPerAc: 375, heldBy: null });
    expect(flexRent({ ...lease, leastRentUsdPerAc: 300 }).rentUsdPerAc).toBeCloseTo(375, 10);
  });
  it("names the base gross of a bonus only: 160 × 4 = 640, or the lease's own", () => {
    const bonus = { ...lease, method: "basePlusBonus", share: 0.5 } as const;
    // 240 + half of 1,000 - 640
    expect(flexRent(bonus)).toMatchObject({ baseGrossUsdPerAc: 640, rentUsdPerAc: 420, shareOfGross: 0.42 });
    expect(flexRent({ ...bonus, baseGrossUsdPerAc: 700 })).toMatchObject({ baseGrossUsdPerAc: 700, rentUsdPerAc: 390 });
    expect(flexRent(lease).baseGrossUsdPerAc).toBeNull();
    expect(flexRent({ ...lease, method: "shareOfGross", share: 0.3, baseYieldBuPerAc: null }).rentUsdPerAc).toBe(300);
    expect(flexRent({ ...lease, priceUsdPerBu: 0 }).shareOfGross).toBeNull();
  });
  it("pays no bonus and takes nothing off below the base gross", () => {
    const poor = { ...lease, method: "basePlusBonus", share: 0.5, yieldBuPerAc: 50 } as const;
    expect(flexRent(poor).rentUsdPerAc).toBe(240);
  });
  it("waits for what its method needs and for nothing else", () => {
    expect(faultOf(() => flexRent({ ...lease, baseRentUsdPerAc: null }))).toEqual({
      kind: "waiting",
      argument: "baseRent",
    });
    expect(faultOf(() => flexRent({ ...lease, method: "shareOfGross" }))).toEqual({
      kind: "waiting",
      argument: "share",
    });
    expect(faultOf(() => flexRent({ ...lease, basePriceUsdPerBu: null }))).toEqual({
      kind: "waiting",
      argument: "basePrice",
    });
    for (const method of ["basePlusBonus", "priceOnly", "yieldOnly"] as const) {
      const unsaid = { ...lease, method, share: 0.5, baseRentUsdPerAc: null };
      expect(faultOf(() => flexRent(unsaid))).toEqual({ kind: "waiting", argument: "baseRent" });
    }
    const bonus = { ...lease, method: "basePlusBonus" } as const;
    expect(faultOf(() => flexRent(bonus))).toEqual({ kind: "waiting", argument: "share" });
    const noYield = { ...bonus, share: 0.5, baseYieldBuPerAc: null };
    expect(faultOf(() => flexRent(noYield))).toEqual({ kind: "waiting", argument: "baseYield" });
  });
  it("refuses a base of 0 and a least above the most", () => {
    const isZero = (argument: string) => ({ kind: "refused", argument, because: expect.stringContaining("is 0") });
    expect(faultOf(() => flexRent({ ...lease, baseYieldBuPerAc: 0 }))).toMatchObject(isZero("baseYield"));
    expect(faultOf(() => flexRent({ ...lease, basePriceUsdPerBu: 0 }))).toMatchObject(isZero("basePrice"));
    expect(faultOf(() => flexRent({ ...lease, leastRentUsdPerAc: 300, mostRentUsdPerAc: 200 }))).toMatchObject({
      argument: "leastRent",
      because: "must not be above mostRent (200 $/ac); got 300.",
    });
  });
});

describe("shareRent", () => {
  it("splits costs by another share than the crop: 1/3 of 900 less 1/4 of 120 = 270", () => {
    const rent = shareRent({
      yieldBuPerAc: 160,
      priceUsdPerBu: 5,
      share: 1 / 3,
      sharedCostsUsdPerAc: [80, 40],
      costShare: 0.25,
      otherIncomeUsdPerAc: 100,
    });
    expect(rent.rentUsdPerAc).toBeCloseTo(270, 10);
    expect(rent.rentUsdPerAc + rent.tenantUsdPerAc + 120).toBeCloseTo(900, 10);
  });
});

describe("landCharge", () => {
  it("is 8,000 × 0.03 + 35 = 275", () => {
    const charge = landCharge({ landValueUsdPerAc: 8000, cashReturn: 0.03, propertyTaxUsdPerAc: 35 });
    expect(charge).toEqual({ chargeUsdPerAc: 275, returnUsdPerAc: 240 });
  });
});

describe("operatingInterest", () => {
  it("refuses months below 0 and rates in percent points", () => {
    const cost = { costUsdPerAc: 300, rate: 0.08 };
    expect(faultOf(() => operatingInterest({ ...cost, months: -1 }))).toMatchObject({ argument: "months" });
    expect(faultOf(() => operatingInterest({ ...cost, rate: 8, months: 6 }))).toMatchObject({ argument: "rate" });
    expect(operatingInterest({ ...cost, months: 6 })).toMatchObject({ isHalfSeason: false, monthsInUse: 6 });
    expect(operatingInterest({ ...cost, months: "halfSeason" })).toMatchObject({ isHalfSeason: true, monthsInUse: 6 });
  });
});

describe("cropBudget", () => {
  const crop = {
    yieldBuPerAc: 100,
    priceUsdPerBu: 5,
    variableCostsUsdPerAc: [200],
    fixedCostsUsdPerAc: [90, 10],
    landUsdPerAc: 150,
    otherIncomeUsdPerAc: 20,
    costUsdPerBu: 0.5,
  };
  it("moves hauling with the yield and counts other income: break-evens (200 - 20) / 100 + 0.5 and 180 / 4.50", () => {
    const budget = cropBudget(crop);
    expect(budget).toMatchObject({ grossUsdPerAc: 520, variableUsdPerAc: 250, marginUsdPerAc: 270, netUsdPerAc: 20 });
    expect(budget.shortRun.priceUsdPerBu).toBeCloseTo(2.3, 10);
    expect(budget.shortRun.yieldBuPerAc).toBeCloseTo(40, 10);
    expect(budget.longRun.priceUsdPerBu).toBeCloseTo(4.8, 10);
  });
  it("has no price per bushel without bushels and no yield when a bushel brings nothing", () => {
    expect(cropBudget({ ...crop, yieldBuPerAc: 0 })).toMatchObject({
      costUsdPerBu: null,
      longRun: { priceUsdPerBu: null },
    });
    expect(cropBudget({ ...crop, priceUsdPerBu: 0.5 }).longRun.yieldBuPerAc).toBeNull();
  });
});

describe("farmNet", () => {
  const farm = { acres: [300, null, 200], marginsUsdPerAc: [508, null, 250], overheadUsd: [130_000], cropAcres: 520 };
  it("takes whole-farm costs off once: 152,400 + 50,000 - 130,000 = 72,400, with 20 acres idle", () => {
    expect(farmNet(farm)).toMatchObject({ netUsd: 72_400, acres: 500, idleAcres: 20, netUsdPerAc: 144.8 });
    expect(farmNet({ ...farm, cropAcres: null }).idleAcres).toBeNull();
    expect(farmNet({ ...farm, acres: [0, null, 0] })).toMatchObject({ netUsd: -130_000, netUsdPerAc: null });
  });
  it("refuses more acres than the farm has and waits for half-filled rows", () => {
    expect(faultOf(() => farmNet({ ...farm, cropAcres: 480 }))).toEqual({
      kind: "refused",
      argument: "acres",
      because: "add up to 500 ac, more than the 480 ac of cropAcres.",
    });
    expect(faultOf(() => farmNet({ ...farm, acres: [300, 50, 200] }))).toEqual({
      kind: "waiting",
      argument: "margins",
    });
    expect(faultOf(() => farmNet({ ...farm, acres: [300] }))).toEqual({
      kind: "sizesDiffer",
      first: { argument: "acres", size: "1 cell" },
      second: { argument: "margins", size: "3 cells" },
    });
    expect(faultOf(() => farmNet({ ...farm, acres: [null], marginsUsdPerAc: [null] }))).toEqual({
      kind: "waiting",
      argument: "acres",
    });
  });
});

describe("marginalReturn", () => {
  it("waits for a cost that is missing, and chooses nothing unless asked", () => {
    const half = { costsUsdPerAc: [0, null], benefitsUsdPerAc: [0, 5], leastReturn: null };
    expect(faultOf(() => marginalReturn(half))).toEqual({ kind: "waiting", argument: "costs" });
    const { options, chosen } = marginalReturn({ ...half, costsUsdPerAc: [0, 4] });
    expect(chosen).toBeNull();
    expect(options.map((option) => option.marginalReturn)).toEqual([null, 1.25]);
    expect(faultOf(() => marginalReturn({ ...half, leastReturn: 3 }))).toMatchObject({ argument: "leastReturn" });
    expect(faultOf(() => marginalReturn({ ...half, costsUsdPerAc: [0, -4] }))).toMatchObject({ argument: "costs" });
  });
  it("passes over a poor step that a later one makes good: 2 for 10, then 20 for 10 more", () => {
    const { chosen } = marginalReturn({ costsUsdPerAc: [0, 10, 20], benefitsUsdPerAc: [0, 2, 22], leastReturn: 0.5 });
    expect(chosen?.costUsdPerAc).toBe(20);
  });
  it("but does not take a good step that the poor one before it spoils: 1 for 10, 3.50 for 10 more is 4.50 for 20", () => {
    const { chosen } = marginalReturn({ costsUsdPerAc: [0, 10, 20], benefitsUsdPerAc: [0, 1, 4.5], leastReturn: 0.3 });
    expect(chosen?.costUsdPerAc).toBe(0);
  });
  it("sorts by cost and keeps the places, and of two at one cost the better stands", () => {
    const { options } = marginalReturn({
      costsUsdPerAc: [30, 10, null, 30],
      benefitsUsdPerAc: [60, 50, null, 70],
      leastReturn: null,
    });
    expect(options.map(({ place, isDominated }) => [place, isDominated])).toEqual([
      [1, false],
      [3, false],
      [0, true],
    ]);
  });
});
