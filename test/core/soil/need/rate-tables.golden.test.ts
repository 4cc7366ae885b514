import type { CropKey } from "../../../../src/reference/crops";
import type { GuideKey, NeedNutrient, ReportClassKey } from "../../../../src/reference/guides";
import { faultOf } from "../../fault-of";
import { need, type Refinements } from "./ask-guide";

/** Printed rates, typed a second time from the publications: [lowest test, highest test, rate]. */
type Cells = readonly (readonly [low: number, high: number, rate: number])[];

const open = 400;

/** Reads a printed class at both its ends and in its middle. */
function everyCell(
  guide: GuideKey,
  nutrient: NeedNutrient,
  crop: CropKey,
  cells: Cells,
  more: Refinements & { readonly per?: number } = {},
) {
  const { per = 1, ...refinements } = more;
  for (const [low, high, rate] of cells) {
    for (const soilTest of [low, (low + high) / 2, high]) {
      expect(need(guide, nutrient, crop, 5, soilTest, refinements).unroundedLbPerAc).toBeCloseTo(rate * per, 6);
    }
  }
}

/** Ontario Ministry of Agriculture 2025, Table 1 (corn P); Publication 811 for the others; kg/ha × 0.9. */
describe("Ontario", () => {
  const kilograms = { per: 0.9 };
  it("corn P2O5 in kg/ha by Olsen", () => {
    const cells: Cells = [
      [0, 3, 110],
      [4, 5, 100],
      [6, 7, 90],
      [8, 9, 70],
      [10, 12, 50],
      [13, 15, 20],
      [16, 20, 20],
      [21, 30, 20],
      [31, 60, 0],
      [61, open, 0],
    ];
    everyCell("ON", "P2O5", "corn", cells, kilograms);
  });
  it("corn P2O5 in lb/ac as printed beside it, FW29: 90 lb at Olsen 5", () => {
    const printed = [
      [3, 99],
      [5, 90],
      [7, 81],
      [9, 63],
      [12, 45],
      [15, 18],
      [20, 18],
      [30, 18],
      [60, 0],
      [61, 0],
    ] as const;
    for (const [test, lb] of printed) expect(need("ON", "P2O5", "corn", 150, test).rateLbPerAc).toBe(lb);
  });
  it("corn K2O and both for soybean", () => {
    const potash = (rates: readonly number[]): Cells =>
      [
        [0, 15],
        [16, 30],
        [31, 45],
        [46, 60],
        [61, 80],
        [81, 100],
        [101, 120],
        [121, open],
      ].map(([low = 0, high = 0], place) => [low, high, rates[place] ?? Number.NaN]);
    everyCell("ON", "K2O", "corn", potash([170, 160, 140, 110, 80, 50, 30, 0]), kilograms);
    everyCell("ON", "K2O", "soybean", potash([120, 110, 90, 80, 60, 40, 30, 0]), kilograms);
    const phosphate: Cells = [
      [0, 3, 80],
      [4, 5, 60],
      [6, 7, 50],
      [8, 9, 40],
      [10, 12, 30],
      [13, 15, 20],
      [16, open, 0],
    ];
    everyCell("ON", "P2O5", "soybean", phosphate, kilograms);
  });
  it("target and maintain: 180 bu × 0.405 lb in the target, no rate held outside it", () => {
    const removal = { approach: "removal" } as const;
    // 72.9 to the nearest pound.
    expect(need("ON", "P2O5", "corn", 180, 15, removal).rateLbPerAc).toBe(73);
    for (const test of [11, 19]) {
      expect(faultOf(() => need("ON", "P2O5", "corn", 180, test, removal))).toMatchObject({ kind: "notPublished" });
    }
  });
});

/** PM 1688, 2013: fixed rates in the two low classes, yield × removal at optimum, nothing above. */
describe("Iowa 2013", () => {
  // Highest test of each class but the last; the optimum row is the one printed by Iowa State in Oct 2016.
  const scales = {
    bray: [10, 15, 20, 30],
    mehlich3Color: [10, 15, 20, 30],
    mehlich3Icp: [15, 25, 35, 45],
    olsen: [5, 9, 13, 18],
  } as const;
  const potash = { ammoniumAcetate: [120, 160, 200, 240], ammoniumAcetateMoist: [50, 85, 120, 155] } as const;

  // Removal by hand: corn 200 × 0.32 = 64 and × 0.22 = 44; soybean 60 × 0.73 = 43.8 and × 1.17 = 70.2.
  it.each(Object.entries(scales))("P2O5 by %s", (method, [veryLow, low, optimum, high]) => {
    const tests = [0, veryLow, veryLow + 1, low, low + 1, optimum, optimum + 1, high, high + 1];
    const extractant = method as keyof typeof scales; // the keys of the table above
    const at = (crop: CropKey, goal: number) =>
      tests.map((test) => need("IA", "P2O5", crop, goal, test, { extractant }).rateLbPerAc);
    expect(at("corn", 200)).toEqual([100, 100, 75, 75, 64, 64, 0, 0, 0]);
    expect(at("soybean", 60)).toEqual([80, 80, 60, 60, 44, 44, 0, 0, 0]);
  });
  it.each(Object.entries(potash))("K2O by %s", (method, [veryLow, low, optimum, high]) => {
    const tests = [0, veryLow, veryLow + 1, low, low + 1, optimum, optimum + 1, high, high + 1];
    const extractant = method as keyof typeof potash; // the keys of the table above
    const at = (crop: CropKey, goal: number) =>
      tests.map((test) => need("IA", "K2O", crop, goal, test, { extractant }).rateLbPerAc);
    expect(at("corn", 200)).toEqual([130, 130, 90, 90, 44, 44, 0, 0, 0]);
    expect(at("soybean", 60)).toEqual([120, 120, 90, 90, 70, 70, 0, 0, 0]);
  });
});

describe("Nebraska", () => {
  it("corn K2O, broadcast and row together (EC117)", () => {
    const cells: Cells = [
      [0, 40, 120 + 20],
      [41, 74, 80 + 10],
      [75, 124, 40 + 10],
      [125, open, 0],
    ];
    everyCell("NE", "K2O", "corn", cells);
  });
  it("corn P2O5: (25 − test) × 4 meets the broadcast rates printed at 5 and at 15", () => {
    expect(need("NE", "P2O5", "corn", 200, 5, { extractant: "bray" }).rateLbPerAc).toBe(80);
    const afterCorn = { extractant: "bray", rotationCrop: "corn" } as const;
    expect(need("NE", "P2O5", "corn", 200, 15, afterCorn).rateLbPerAc).toBe(40);
    expect(need("NE", "P2O5", "corn", 200, 15, { extractant: "bray" }).rateLbPerAc).toBe(0);
    expect(need("NE", "P2O5", "corn", 200, 20, afterCorn).rateLbPerAc).toBe(0);
  });
});

describe("Minnesota to 2018", () => {
  it("corn K2O: 25 to 35 lb at 121 to 160 ppm, nothing above, no rate held below", () => {
    for (const test of [121, 140, 160]) {
      const { rateLbPerAc } = need("MN-2018", "K2O", "corn", 180, test);
      expect(rateLbPerAc).toBeGreaterThanOrEqual(25);
      expect(rateLbPerAc).toBeLessThanOrEqual(35);
    }
    expect(need("MN-2018", "K2O", "corn", 180, 161).rateLbPerAc).toBe(0);
    expect(faultOf(() => need("MN-2018", "K2O", "corn", 180, 120))).toMatchObject({ kind: "notPublished" });
  });
});

describe("North Dakota barley (county column, 2021-22)", () => {
  it("P2O5 by Olsen", () => {
    const cells: Cells = [
      [0, 3, 78],
      [4, 7, 60],
      [8, 11, 52],
      [12, 15, 26],
      [16, open, 0],
    ];
    everyCell("ND", "P2O5", "barley", cells);
  });
  it("K2O, its higher classes not held", () => {
    const cells: Cells = [
      [0, 40, 90],
      [41, 80, 60],
      [81, 120, 45],
    ];
    everyCell("ND", "K2O", "barley", cells);
    expect(faultOf(() => need("ND", "K2O", "barley", 80, 121))).toMatchObject({ kind: "notPublished" });
  });
});

/** E-2567, Table 14, corn; [yield, rates at Bray P1 5, 10, 15 and 35]. */
describe("IN-MI-OH 1995", () => {
  it.each([
    [100, [85, 60, 35, 20]],
    [120, [95, 70, 45, 20]],
    [140, [100, 75, 50, 25]],
    [160, [110, 85, 60, 30]],
    [180, [115, 90, 65, 35]],
  ])("P2O5 for %d bu: %j", (goal, printed) => {
    expect([5, 10, 15, 35].map((test) => need("IN-MI-OH-1995", "P2O5", "corn", goal, test).rateLbPerAc)).toEqual(
      printed,
    );
    expect(need("IN-MI-OH-1995", "P2O5", "corn", goal, 30).rateLbPerAc).toBe(printed[2]);
    expect(need("IN-MI-OH-1995", "P2O5", "corn", goal, 40).rateLbPerAc).toBe(0);
  });
  it("FW30: 140 bu at 5 ppm: (15 − 5) × 5 + 140 × 0.37 = 101.8, to 100", () => {
    const result = need("IN-MI-OH-1995", "P2O5", "corn", 140, 5);
    expect(result.unroundedLbPerAc).toBeCloseTo(101.8, 9);
    expect(result.rateLbPerAc).toBe(100);
  });
  it("uses the removal it prints itself: wheat 80 × 0.63 = 50.4 and 80 × 0.37 + 20 = 49.6; alfalfa 6 × 13 and 6 × 50 + 20", () => {
    const cec = { cecMeq: 10 };
    expect(need("IN-MI-OH-1995", "P2O5", "wheat", 80, 30).unroundedLbPerAc).toBeCloseTo(50.4, 9);
    expect(need("IN-MI-OH-1995", "K2O", "wheat", 80, 110, cec).unroundedLbPerAc).toBeCloseTo(49.6, 9);
    expect(need("IN-MI-OH-1995", "P2O5", "alfalfa", 6, 30).unroundedLbPerAc).toBeCloseTo(78, 9);
    expect(need("IN-MI-OH-1995", "K2O", "alfalfa", 6, 110, cec).unroundedLbPerAc).toBeCloseTo(320, 9);
  });
});

/** Clemson crop codes 029 and 050. */
describe("South Carolina, by the class on the report", () => {
  const classes: readonly ReportClassKey[] = ["low", "medium", "sufficient", "high", "excessive"];
  it.each([
    ["P2O5", "wheat", [80, 40, 20, 0, 0]],
    ["K2O", "wheat", [80, 60, 40, 0, 0]],
    ["P2O5", "alfalfa", [200, 100, 50, 0, 0]],
    ["K2O", "alfalfa", [300, 200, 100, 50, 0]],
  ] as const)("%s for %s: %j", (nutrient, crop, printed) => {
    expect(classes.map((word) => need("SC", nutrient, crop, 5, word).rateLbPerAc)).toEqual(printed);
  });
  it("takes no number, and other guides take no class", () => {
    expect(faultOf(() => need("SC", "P2O5", "wheat", 60, 30))).toMatchObject({ argument: "soilTest" });
    expect(faultOf(() => need("IA", "P2O5", "corn", 180, "low", { extractant: "bray" }))).toMatchObject({
      argument: "soilTest",
    });
  });
});

/** Montana State, Table 1: single tests, straight lines between them. */
describe("Montana pulses", () => {
  it("meets every printed point", () => {
    const potash = [50, 100, 150, 200, 250].map((test) => need("MT", "K2O", "lentil", 30, test).rateLbPerAc);
    expect(potash).toEqual([40, 35, 30, 25, 20]);
    expect([4, 12, 16].map((test) => need("MT", "P2O5", "fieldPea", 40, test).rateLbPerAc)).toEqual([30, 20, 15]);
  });
  it("gives removal above the last: 40 × 0.67 = 26.8 P2O5", () => {
    expect(need("MT", "P2O5", "fieldPea", 40, 17).unroundedLbPerAc).toBeCloseTo(26.8, 9);
  });
});
