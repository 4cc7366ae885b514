import { rowLength } from "../../../src/core/seed/row-length";
import { seedCost } from "../../../src/core/seed/seed-cost";
import { seedRate } from "../../../src/core/seed/seed-rate";
import { seedSpacing } from "../../../src/core/seed/seed-spacing";
import { standCount } from "../../../src/core/seed/stand-count";
import { squareFootPerAcre } from "../../../src/core/units/units";

describe("North Dakota State University, Optimal Seeding Rates", () => {
  it("wheat, 1.1 million plants, 15 % stand loss, 12,500 seeds/lb, 95 % germination: 108.98 lb/ac, printed as 110", () => {
    const { seedsPerAc } = seedRate({ targetStandPerAc: 1_100_000, germinationPct: 95, fieldSurvivalPct: 85 });
    expect(seedsPerAc / 12_500).toBeCloseTo(108.98, 1);
    expect(Math.abs(seedsPerAc / 12_500 - 110)).toBeLessThan(1.1);
  });
});

describe("North Dakota State University, ProCrop: length of row for 1/1000 acre", () => {
  // Printed in whole inches, some rounded up and some down: within an inch and a bit.
  it.each([
    [6, 87, 1],
    [7, 74, 8],
    [8, 65, 4],
    [10, 52, 3],
    [15, 34, 10],
    [20, 26, 2],
    [28, 18, 8],
    [30, 17, 5],
    [32, 16, 4],
    [36, 14, 6],
    [38, 13, 9],
    [40, 13, 1],
  ])("%i-in rows: %i ft %i in", (rowWidthIn, feet, inches) => {
    const length = rowLength({ rowWidthIn, fractionOfAcre: 0.001 });
    expect(Math.abs(length.feet - (feet + inches / 12))).toBeLessThan(0.1);
    expect(Math.abs(length.wholeFeet * 12 + length.restInches - (feet * 12 + inches))).toBeLessThanOrEqual(1);
  });
});

describe("University of Illinois Extension, Seed Cost and Planting Rate for Corn", () => {
  it.each([
    [160, 2],
    [200, 2.5],
    [240, 3],
  ])("$%i for 80,000 seeds is $%d a thousand", (unitPriceUsd, printed) => {
    const cost = seedCost({ seedsPerAc: 30_000, unitPriceUsd, unitSize: { crop: "corn" }, treatmentUsdPerUnit: 0 });
    expect(cost.usdPerThousandSeeds).toBeCloseTo(printed, 10);
  });
  it("at $240, 29,000 seeds cost $87 and 34,000 cost $102 an acre (printed in the farm press)", () => {
    const at = (seedsPerAc: number) =>
      seedCost({ seedsPerAc, unitPriceUsd: 240, unitSize: { seedsPerUnit: 80_000 }, treatmentUsdPerUnit: 0 })
        .costUsdPerAc;
    expect(at(29_000)).toBeCloseTo(87, 10);
    expect(at(34_000)).toBeCloseTo(102, 10);
  });
});

describe("Michigan State University Extension, Maximizing Returns on Soybean Seed Investments", () => {
  // Printed: return per acre at $12.90 soybeans and $45 for 140,000 seeds. Yields are printed as two-year means
  // rounded to 0.01 bu, which moves the return by up to $0.07.
  it.each([
    [80_000, 36.8, 43.99, 495.38],
    [120_000, 43.2, 44.52, 527.22],
    [160_000, 43.9, 45.84, 527.39],
    [200_000, 44.8, 44.79, 513.57],
    [240_000, 48.8, 44.95, 527.54],
  ])("%i seeds, %d and %d bu/ac: $%d", (seedsPerAc, first, second, printed) => {
    const { costUsdPerAc } = seedCost({
      seedsPerAc,
      unitPriceUsd: 45,
      unitSize: { crop: "soybean" },
      treatmentUsdPerUnit: 0,
    });
    expect(Math.abs(((first + second) / 2) * 12.9 - costUsdPerAc - printed)).toBeLessThan(0.08);
  });
});

describe("other printed cases", () => {
  it("University of Kentucky: 35 seeds per square foot in 7-in rows are 20.4 seeds per foot of row", () => {
    const spacing = seedSpacing({ seedsPerAc: 35 * squareFootPerAcre, rowWidthIn: 7 });
    expect(spacing.seedsPerFoot).toBeCloseTo(20.4, 1);
  });
  it("Purdue University: 1/10,000 acre is 627.26 in divided by the row width", () => {
    for (const rowWidthIn of [7.5, 15, 30]) {
      expect(rowLength({ rowWidthIn, fractionOfAcre: 0.0001 }).feet * 12).toBeCloseTo(627.26 / rowWidthIn, 2);
    }
  });
  it("University of Georgia: ears in 1/100 acre of six 30-in rows lie on 29 ft", () => {
    expect(rowLength({ rowWidthIn: 30, fractionOfAcre: 0.01 }).feet / 6).toBeCloseTo(29.04, 2);
  });
  it("five counts of 28, 31, 30, 26 and 29 in 1/1000 acre: 28,800 plants", () => {
    const stand = standCount({ counts: [28, 31, 30, 26, 29], rowWidthIn: 30, feetCounted: null });
    expect(stand.plantsPerAc).toBeCloseTo(28_800, 8);
  });
});
