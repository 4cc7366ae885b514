import { FormulaError } from "../../../src/core/fault";
import { seedCost } from "../../../src/core/seed/seed-cost";
import { askForUnitSize, seedUnit } from "../../../src/core/seed/seed-unit";
import { unitsToBuy } from "../../../src/core/seed/units-to-buy";

describe("unitsToBuy", () => {
  it("154 ac of corn at 32,000: 4,928,000 seeds are 61.6 units, so 62; 32,000 seeds stay over", () => {
    const bought = unitsToBuy({ seedsPerAc: 32_000, acres: 154, unitSize: { crop: "corn" } });
    expect(bought).toMatchObject({ units: 62, seedsNeeded: 4_928_000, seedsLeftOver: 32_000, acresPerUnit: 2.5 });
    expect(bought.exactUnits).toBeCloseTo(61.6, 10);
    expect(bought.unit.published).toMatchObject({ seedsPerUnit: 80_000, source: "illinois-seed-cost" });
  });
  it("does not buy a unit for the dust of a division: 25,000 × 35.2 / 80,000 is 11, not 11.000000000000002", () => {
    expect(Math.ceil((25_000 * 35.2) / 80_000)).toBe(12);
    expect(unitsToBuy({ seedsPerAc: 25_000, acres: 35.2, unitSize: { seedsPerUnit: 80_000 } }).units).toBe(11);
  });
  it("buys nothing for no acres", () => {
    expect(unitsToBuy({ seedsPerAc: 140_000, acres: 0, unitSize: { crop: "soybean" } })).toMatchObject({
      units: 0,
      seedsLeftOver: 0,
    });
  });
});

describe("seedUnit", () => {
  it("assumes no crop: asks, and lists the units it knows", () => {
    expect(() => seedUnit(null)).toThrow(/waiting/);
    expect(askForUnitSize()).toBe(
      "seedsPerUnit (seeds in one unit, or the crop: corn 80,000, soybean 140,000, sunflower 200,000)",
    );
  });
  it("knows no counted unit for a crop sold by weight", () => {
    expect(() => seedUnit({ crop: "wheat" })).toThrow(/notPublished.*wheat/);
  });
  it("takes 80 for a slip of 80,000", () => {
    expect(() => seedUnit({ seedsPerUnit: 80 })).toThrow(/"suggestion":"80000"/);
  });
});

describe("seedCost", () => {
  const soybean = {
    seedsPerAc: 140_000,
    unitPriceUsd: 60,
    unitSize: { seedsPerUnit: 140_000 },
    treatmentUsdPerUnit: 12,
  };
  it("adds the treatment: one unit an acre at $60 + $12 is $72", () => {
    expect(seedCost(soybean)).toMatchObject({
      costUsdPerAc: 72,
      seedUsdPerAc: 60,
      treatmentUsdPerAc: 12,
      unitsPerAc: 1,
    });
  });
  it("half a unit costs half: 70,000 seeds are $36, $0.514 a thousand seeds", () => {
    const cost = seedCost({ ...soybean, seedsPerAc: 70_000 });
    expect(cost.costUsdPerAc).toBe(36);
    expect(cost.usdPerThousandSeeds).toBeCloseTo(0.514_286, 6); // 72 / 140
  });
  it("refuses a negative price", () => {
    expect(() => seedCost({ ...soybean, unitPriceUsd: -1 })).toThrow(FormulaError);
  });
});
