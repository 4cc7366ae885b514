import type { CropKey } from "../../../../src/reference/crops";
import { equationKey, type ExtractantKey } from "../../../../src/reference/guides";
import { faultOf } from "../../fault-of";
import { need, zone } from "./ask-guide";

/** EC750: (rise − fall × test) × yield, and the level beside it at which it has to be zero. */
describe("South Dakota", () => {
  const rows: readonly (readonly [CropKey, ExtractantKey, number, number, number, number])[] = [
    ["corn", "olsen", 0.7, 0.044, 16, 1],
    ["corn", "bray", 0.7, 0.035, 20, 1],
    ["corn", "ammoniumAcetate", 1.166, 0.0073, 160, 1],
    ["soybean", "olsen", 1.55, 0.14, 11, 1],
    ["soybean", "bray", 1.55, 0.1, 15.5, 1],
    ["soybean", "ammoniumAcetate", 2.2, 0.0183, 120, 1],
    ["wheat", "olsen", 1.071, 0.067, 16, 1],
    ["wheat", "bray", 1.071, 0.054, 20, 1],
    ["wheat", "ammoniumAcetate", 2.71, 0.017, 160, 1],
    ["sunflower", "olsen", 0.0225, 0.0014, 16, 100],
    ["sunflower", "bray", 0.0225, 0.0011, 20, 100],
    ["alfalfa", "olsen", 18.57, 1.16, 16, 1],
    ["alfalfa", "bray", 18.57, 0.93, 20, 1],
    ["alfalfa", "ammoniumAcetate", 55.71, 0.38, 147, 1],
  ];
  it.each(rows)("%s by %s", (crop, extractant, rise, fall, level, poundsPerUnit) => {
    const nutrient = extractant === "ammoniumAcetate" ? "K2O" : "P2O5";
    const at = (soilTest: number) => need("SD", nutrient, crop, 20, soilTest, { extractant });
    expect(at(4).unroundedLbPerAc).toBeCloseTo((rise - fall * 4) * 20 * poundsPerUnit, 9);
    // The prints round their coefficients: the crossing lies within 3 % of the level.
    expect(Math.abs((at(4).criticalLevel ?? 0) - level) / level).toBeLessThan(0.03);
    expect(at(level * 1.04).rateLbPerAc).toBe(0);
  });
  it("sunflower K2O, where the level is 152 by the equation's own coefficients: 0.041 / 0.00027", () => {
    const at = (soilTest: number) => need("SD", "K2O", "sunflower", 20, soilTest);
    expect(at(100).unroundedLbPerAc).toBeCloseTo((0.041 - 0.027) * 2000, 9);
    expect(at(152).rateLbPerAc).toBe(0);
  });
  it("Minnesota shares the phosphate equations for corn and soybean and no others", () => {
    for (const crop of ["corn", "soybean"] as const) {
      for (const extractant of ["olsen", "bray"] as const) {
        for (const soilTest of [0, 5, 9, 30]) {
          const ours = (guide: "SD" | "MN") => need(guide, "P2O5", crop, 60, soilTest, { extractant }).rateLbPerAc;
          expect(ours("MN")).toBe(ours("SD"));
        }
      }
    }
    expect(faultOf(() => need("MN", "P2O5", "alfalfa", 5, 5, { extractant: "bray" }))).toMatchObject({
      kind: "notPublished",
      where: "MN, as far as we hold it,",
    });
  });
  it("names classes by their printed limits", () => {
    const words = ["very low", "low", "medium", "high", "very high"];
    expect([3, 7, 11, 15, 16].map((test) => zone("SD", "P2O5", "corn", test, { extractant: "olsen" }))).toEqual(words);
    expect([5, 10, 15, 20, 21].map((test) => zone("SD", "P2O5", "corn", test, { extractant: "bray" }))).toEqual(words);
    expect([40, 80, 120, 160, 161].map((test) => zone("SD", "K2O", "wheat", test))).toEqual(words);
  });
});

/** MF2586, worked by hand. */
describe("Kansas", () => {
  it.each([
    // 50 + 30 − 25 − 15 = 40; 46 + 25.2 − 23 − 12.6 = 35.6
    ["P2O5", "corn", 150, 10, 40],
    ["P2O5", "sorghum", 100, 5, 50 + 20 - 12.5 - 5],
    ["P2O5", "wheat", 60, 10, 35.6],
    // 73 + 31.5 − 56.5 − 24 = 24; 62 + 14.4 − 24 − 5.4 = 47; 60 + 31.4 − 36.8 − 19.2 = 35.4
    ["K2O", "corn", 150, 100, 24],
    ["K2O", "wheat", 60, 50, 47],
    ["K2O", "soybean", 50, 80, 35.4],
  ] as const)("sufficiency %s, %s %d at %d: %d", (nutrient, crop, goal, test, lb) => {
    expect(need("KS", nutrient, crop, goal, test).unroundedLbPerAc).toBeCloseTo(lb, 9);
  });
  it("phosphate forms are 0 at 20 whatever the yield, and potash forms within 1.5 lb of it at 130 at usual yields", () => {
    // By the coefficients alone, as the check on them is printed.
    for (const goal of [50, 100, 200]) {
      expect(50 + 0.2 * goal - 2.5 * 20 - 0.01 * goal * 20).toBeCloseTo(0, 9);
      expect(46 + 0.42 * goal - 2.3 * 20 - 0.021 * goal * 20).toBeCloseTo(0, 9);
    }
    for (const crop of ["corn", "wheat"] as const) {
      const below = need("KS", "P2O5", crop, 100, 19.99);
      expect(below.unroundedLbPerAc).toBe(15);
      expect(need("KS", "P2O5", crop, 100, 20).rateLbPerAc).toBe(0);
    }
    expect(need("KS", "K2O", "soybean", 50, 129.9).unroundedLbPerAc).toBe(15);
    expect(need("KS", "K2O", "soybean", 50, 130).rateLbPerAc).toBe(0);
  });
  it("has no sufficiency phosphate for soybean", () => {
    expect(faultOf(() => need("KS", "P2O5", "soybean", 50, 10))).toMatchObject({
      kind: "notPublished",
      instead: "Crops it prints: corn, grain sorghum, wheat.",
    });
  });
  it("builds over 4, 6 or 8 years and waits to be told which: ((20 − 10) × 18 + 100 × 0.34 × 6) / 6 = 64", () => {
    const build = { approach: "build" } as const;
    expect(need("KS", "P2O5", "sorghum", 100, 10, { ...build, years: 6 }).unroundedLbPerAc).toBeCloseTo(64, 9);
    // ((130 − 90) × 9 + 100 × 0.23 × 4) / 4 = 113
    expect(need("KS", "K2O", "sorghum", 100, 90, { ...build, years: 4 }).unroundedLbPerAc).toBeCloseTo(113, 9);
    expect(faultOf(() => need("KS", "P2O5", "sorghum", 100, 10, build))).toEqual({
      kind: "waiting",
      argument: "years",
      accepted: "KS spreads build-up over 4, 6 or 8 years",
    });
    expect(faultOf(() => need("KS", "P2O5", "sorghum", 100, 10, { ...build, years: 5 }))).toMatchObject({
      argument: "years",
    });
    expect(need("KS", "P2O5", "sorghum", 100, 25, build).unroundedLbPerAc).toBeCloseTo(34, 9);
    expect(need("KS", "P2O5", "sorghum", 100, 31, build).rateLbPerAc).toBe(0);
  });
  it("borrows no removal: corn K2O to build has no Kansas number", () => {
    expect(faultOf(() => need("KS", "K2O", "corn", 150, 100, { approach: "build", years: 4 }))).toMatchObject({
      kind: "notPublished",
    });
  });
});

/** Illinois Agronomy Handbook, chapter 8; tests in lb/ac. */
describe("Illinois", () => {
  const high = { group: "highSupply" } as const;
  it("FW31: 180 bu at P1 30 in the high region: (40 − 30) × 9 / 4 = 22.5 of build-up, 66.6 of maintenance", () => {
    const result = need("IL", "P2O5", "corn", 180, 30, high);
    expect(Math.abs(result.buildupLbPerAc - 22.5)).toBeLessThanOrEqual(0.5);
    expect(result.maintenanceLbPerAc).toBeCloseTo(66.6, 9);
    expect(result.rateLbPerAc).toBe(89);
  });
  it.each([
    ["highSupply", 40],
    ["mediumSupply", 45],
    ["lowSupply", 50],
  ] as const)("%s wants %d lb/ac and ends 20 above", (group, desired) => {
    const at = (test: number) => need("IL", "P2O5", "corn", 100, test, { group });
    expect(at(desired).buildupLbPerAc).toBe(0);
    expect(at(desired - 4).buildupLbPerAc).toBeCloseTo(9, 9);
    expect(at(desired + 19).maintenanceLbPerAc).toBeCloseTo(37, 9);
    expect(at(desired + 20).rateLbPerAc).toBe(0);
  });
  it("counts wheat maintenance half as much again: 70 × 0.46 × 1.5 = 48.3", () => {
    expect(need("IL", "P2O5", "wheat", 70, 45, high).unroundedLbPerAc).toBeCloseTo(48.3, 9);
  });
  it("splits potash at a CEC of 12: 260 below, 300 from there; (260 − 240) × 4 / 4 = 20", () => {
    const at = (test: number, cecMeq: number) => need("IL", "K2O", "corn", 100, test, { cecMeq });
    expect(at(240, 11.9).buildupLbPerAc).toBeCloseTo(20, 9);
    expect(at(240, 12).buildupLbPerAc).toBeCloseTo(60, 9);
    expect(at(359, 11.9).maintenanceLbPerAc).toBeCloseTo(24, 9);
    expect(at(360, 11.9).rateLbPerAc).toBe(0);
    expect(at(399, 12).maintenanceLbPerAc).toBeCloseTo(24, 9);
    expect(at(400, 12).rateLbPerAc).toBe(0);
  });
  it("waits for the region and takes none silently", () => {
    expect(faultOf(() => need("IL", "P2O5", "corn", 180, 30))).toEqual({
      kind: "waiting",
      argument: "group",
      accepted: "IL prints high supply, medium supply, low supply",
    });
    expect(faultOf(() => need("IL", "P2O5", "corn", 180, 30, { group: "loamy" }))).toMatchObject({
      because: "IL prints high supply, medium supply, low supply; got loamy.",
    });
  });
  it("reads a test given in ppm at twice its number", () => {
    const inPounds = need("IL", "P2O5", "corn", 180, 30, high);
    expect(need("IL", "P2O5", "corn", 180, 15, { ...high, testUnit: "ppm" })).toEqual(inPounds);
    expect(need("KS", "P2O5", "corn", 150, 20, { testUnit: "lbPerAc" })).toEqual(need("KS", "P2O5", "corn", 150, 10));
  });
});

/** Missouri 2004, by hand. */
describe("Missouri", () => {
  it("builds along a square root: 110 × (√45 − √25) / 4 = 46.9756, over 8 years 23.4878; corn 150 × 0.29 = 43.5", () => {
    const at = (years: number) => need("MO", "P2O5", "corn", 150, 25, { years });
    expect(at(4).buildupLbPerAc).toBeCloseTo(46.9756, 4);
    expect(at(8).buildupLbPerAc).toBeCloseTo(23.4878, 4);
    expect(at(8).maintenanceLbPerAc).toBeCloseTo(43.5, 9);
    expect(at(8).rateLbPerAc).toBe(65);
  });
  it("potash: 75.5 × (√270 − √200) / 8 = 21.6078 at CEC 10 and the target of 220", () => {
    const at = need("MO", "K2O", "soybean", 50, 200, { cecMeq: 10, group: "target220" });
    expect(at.criticalLevel).toBe(270);
    // 270^½ = 16.431677, 200^½ = 14.142136: 2.289541 × 75.5 / 8.
    expect(at.buildupLbPerAc).toBeCloseTo((2.289541 * 75.5) / 8, 4);
    expect(faultOf(() => need("MO", "K2O", "soybean", 50, 200, { cecMeq: 10 }))).toMatchObject({ argument: "group" });
  });
  it("holds no rate from the target up", () => {
    expect(faultOf(() => need("MO", "P2O5", "corn", 150, 45, { years: 4 }))).toMatchObject({ kind: "notPublished" });
  });
  it("names P and K classes in lb/ac", () => {
    expect([22, 24, 44, 45].map((test) => zone("MO", "P2O5", "corn", test))).toEqual([
      "low",
      "medium",
      "medium",
      "desired",
    ]);
    const potash = (test: number) => zone("MO", "K2O", "corn", test, { cecMeq: 10, group: "target160" });
    expect([110, 112, 220].map(potash)).toEqual(["low", "medium", "medium"]);
  });
});

/** Circular 1, Table 2.4, typed again: square, linear, constant. */
describe("North Carolina", () => {
  const table: readonly (readonly [number, number, number])[] = [
    [0.0467, 13.0, 900],
    [0.0202, 6.37, 500],
    [0.01, 3.5, 300],
    [0.0175, 4.46, 300],
    [0.0193, 4.9, 300],
    [0.0272, 6.08, 300],
    [0.01, 3.25, 250],
    [0.0173, 4.64, 250],
    [0.0102, 3.0, 220],
    [0.0103, 2.9, 200],
    [0.019, 4.2, 200],
    [0.0053, 2.0, 180],
    [0.012, 2.9, 165],
    [0.0116, 2.75, 150],
    [0.014, 3.2, 150],
    [0.0227, 4.42, 150],
    [0.0084, 2.19, 140],
    [0.012, 3.0, 120],
    [0.0044, 1.6, 100],
    [0.012, 2.4, 80],
  ];
  it.each(table.map((row, place) => [place + 1, ...row] as const))(
    "equation %d",
    (number, square, linear, constant) => {
      for (const nutrient of ["P2O5", "K2O"] as const) {
        const at = (index: number) =>
          need("NC", nutrient, "corn", 150, index, { group: equationKey(number) }).unroundedLbPerAc;
        expect(at(0)).toBe(constant);
        expect(at(25)).toBeCloseTo(Math.max(0, square * 625 - linear * 25 + constant), 9);
        expect(at(linear / (2 * square) + 1)).toBe(0);
      }
    },
  );
  it("asks for the equation and reads no ppm", () => {
    expect(faultOf(() => need("NC", "P2O5", "corn", 150, 40))).toMatchObject({
      argument: "group",
      accepted: "NC prints equation 1 to equation 20",
    });
    const ppm = { group: equationKey(14), testUnit: "ppm" } as const;
    expect(faultOf(() => need("NC", "P2O5", "corn", 150, 40, ppm))).toMatchObject({ argument: "testUnit" });
  });
});
