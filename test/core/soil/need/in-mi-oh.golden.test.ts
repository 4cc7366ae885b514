import { nutrientNeed, type NutrientNeedInput } from "../../../../src/core/soil/need/nutrient-need";
import { testRating } from "../../../../src/core/soil/need/test-rating";
import { guides } from "../../../../src/reference/guides";
import { faultOf } from "../../fault-of";

const guide = guides["IN-MI-OH"];
const phosphate: NutrientNeedInput = {
  guide,
  nutrient: "P2O5",
  crop: "corn",
  yieldGoalPerAc: 180,
  soilTest: 12,
  cecMeq: null,
  extractant: null,
  approach: null,
  rotationCrop: null,
};
const potash: NutrientNeedInput = { ...phosphate, nutrient: "K2O", soilTest: 100, cecMeq: 10 };

/** Worked by hand from the published rule: (20 or 30 − test) × 5 + yield × removal; rounded to 5. */
describe("IN-MI-OH phosphate", () => {
  it.each([
    ["corn", 180, 12, 40, 63, 105],
    ["corn", 205, 22, 0, 71.75, 70],
    ["corn", 180, 20, 0, 63, 65],
    ["corn", 180, 39.9, 0, 63, 65],
    ["corn", 180, 40, 0, 0, 0],
    ["corn", 180, 0, 100, 63, 165],
    ["soybean", 60, 11, 45, 48, 95],
    ["soybean", 57, 13, 35, 45.6, 80],
    ["wheat", 88, 26, 20, 44, 65],
    ["wheat", 88, 30, 0, 44, 45],
    ["wheat", 88, 50, 0, 0, 0],
    ["alfalfa", 6, 25, 25, 72, 95],
    ["cornSilage", 22, 15, 25, 68.2, 95],
  ] as const)(
    "%s, %d, test %d: build-up %d, maintenance %d, rate %d",
    (crop, yieldGoalPerAc, soilTest, buildup, maintenance, rate) => {
      const result = nutrientNeed({ ...phosphate, crop, yieldGoalPerAc, soilTest });
      expect(result.buildupLbPerAc).toBeCloseTo(buildup, 9);
      expect(result.maintenanceLbPerAc).toBeCloseTo(maintenance, 9);
      expect(result.rateLbPerAc).toBe(rate);
    },
  );

  it("takes wheat's level for corn where wheat stands in the rotation: (30 − 26) × 5 + 63 = 83", () => {
    const result = nutrientNeed({ ...phosphate, soilTest: 26, rotationCrop: "wheat" });
    expect(result.criticalLevel).toBe(30);
    expect(result.rateLbPerAc).toBe(85);
    expect(nutrientNeed({ ...phosphate, soilTest: 26 }).rateLbPerAc).toBe(65);
  });

  it("keeps wheat's own level where corn is the partner", () => {
    const wheat = { ...phosphate, crop: "wheat", yieldGoalPerAc: 88, soilTest: 26 } as const;
    expect(nutrientNeed({ ...wheat, rotationCrop: "corn" }).criticalLevel).toBe(30);
  });

  it("leaves the build-up out by sufficiency and says how much that was", () => {
    const result = nutrientNeed({ ...phosphate, approach: "sufficiency" });
    expect(result).toMatchObject({ rateLbPerAc: 65, buildupLbPerAc: 0, droppedBuildupLbPerAc: 40, zone: "deficient" });
  });
});

/** By hand: (100 or 120 − test) × (1 + 0.05 × CEC) + yield × removal + 20; rounded to 5. */
describe("IN-MI-OH potash", () => {
  it.each([
    ["corn", 180, 100, 10, 30, 56, 85],
    ["soybean", 60, 100, 10, 30, 89, 120],
    ["soybean", 57, 88, 10, 48, 85.55, 135],
    ["corn", 165, 74, 5, 32.5, 53, 85],
    ["corn", 165, 100, 5, 0, 53, 55],
    ["corn", 165, 129, 5, 0, 53, 55],
    ["corn", 165, 130, 5, 0, 0, 0],
    ["corn", 165, 130, 5.1, 0, 53, 55],
    ["corn", 205, 120, 16, 0, 61, 60],
    ["corn", 205, 169, 16, 0, 61, 60],
    ["corn", 205, 170, 16, 0, 0, 0],
    ["soybean", 54, 96, 11, 37.2, 82.1, 120],
    ["wheat", 88, 132, 13, 0, 42, 40],
    ["alfalfa", 6, 110, 20, 20, 314, 335],
    ["cornSilage", 22, 90, 12, 48, 180.6, 230],
  ] as const)(
    "%s, %d, test %d, CEC %d: build-up %d, maintenance %d, rate %d",
    (crop, yieldGoalPerAc, soilTest, cecMeq, buildup, maintenance, rate) => {
      const result = nutrientNeed({ ...potash, crop, yieldGoalPerAc, soilTest, cecMeq });
      expect(result.buildupLbPerAc).toBeCloseTo(buildup, 9);
      expect(result.maintenanceLbPerAc).toBeCloseTo(maintenance, 9);
      expect(result.rateLbPerAc).toBe(rate);
    },
  );

  it("waits for the CEC", () => {
    expect(faultOf(() => nutrientNeed({ ...potash, cecMeq: null }))).toEqual({ kind: "waiting", argument: "cec" });
  });

  it("has no rate for a crop whose removal the guide does not print", () => {
    const oat = { ...potash, crop: "oat", yieldGoalPerAc: 80 } as const;
    expect(faultOf(() => nutrientNeed(oat))).toMatchObject({ kind: "notPublished" });
  });

  it("needs no removal number to say that nothing is due above the limit, which holds for every crop", () => {
    const oat = { ...potash, crop: "oat", yieldGoalPerAc: 80 } as const;
    expect(nutrientNeed({ ...oat, soilTest: 300 }).rateLbPerAc).toBe(0);
  });
});

describe("IN-MI-OH, what it refuses", () => {
  it("takes Mehlich-3 and says so when another method is named", () => {
    expect(nutrientNeed({ ...phosphate, extractant: "mehlich3" }).rateLbPerAc).toBe(105);
    expect(faultOf(() => nutrientNeed({ ...phosphate, extractant: "bray" }))).toMatchObject({
      argument: "method",
      because: expect.stringMatching(/Mehlich-3, Mehlich-3 ICP; got Bray P1/),
    });
  });

  it("names the crops it has a phosphate rate for", () => {
    expect(faultOf(() => nutrientNeed({ ...phosphate, crop: "potato", yieldGoalPerAc: 400 }))).toMatchObject({
      kind: "notPublished",
      instead: "Crops it prints: corn, corn silage, soybean, wheat, alfalfa.",
    });
  });

  it("asks about a P test of 600 and a K test of 2,400: lb/ac are twice the ppm", () => {
    expect(faultOf(() => nutrientNeed({ ...phosphate, soilTest: 600 }))).toMatchObject({ max: 500, suggestion: "300" });
    expect(faultOf(() => nutrientNeed({ ...potash, soilTest: 2400 }))).toMatchObject({ suggestion: "1200" });
  });

  it("refuses a yield goal above published records", () => {
    expect(faultOf(() => nutrientNeed({ ...phosphate, yieldGoalPerAc: 1800 }))).toMatchObject({
      argument: "yieldGoal",
      max: 650,
      unit: "bu/ac",
    });
  });
});

describe("IN-MI-OH classes", () => {
  const rate = (nutrient: "P2O5" | "K2O", soilTest: number, crop: "corn" | "wheat" | null, cecMeq: number | null) =>
    testRating({ guide, nutrient, soilTest, crop, cecMeq, extractant: null }).zone;

  it.each([
    ["P2O5", 19.9, "corn", null, "deficient"],
    ["P2O5", 20, "corn", null, "maintenance"],
    ["P2O5", 39.9, "corn", null, "maintenance"],
    ["P2O5", 40, "corn", null, "sufficient"],
    ["P2O5", 29.9, "wheat", null, "deficient"],
    ["P2O5", 49.9, "wheat", null, "maintenance"],
    ["P2O5", 50, "wheat", null, "sufficient"],
    ["K2O", 99.9, null, 5, "deficient"],
    ["K2O", 129.9, null, 5, "maintenance"],
    ["K2O", 130, null, 5, "sufficient"],
    ["K2O", 119.9, null, 5.1, "deficient"],
    ["K2O", 169.9, null, 20, "maintenance"],
    ["K2O", 170, null, 20, "sufficient"],
  ] as const)("%s at %d for %s, CEC %s: %s", (nutrient, soilTest, crop, cecMeq, zone) => {
    expect(rate(nutrient, soilTest, crop, cecMeq)).toBe(zone);
  });

  it("waits for the crop that P classes turn on and the CEC that K classes turn on", () => {
    expect(faultOf(() => rate("P2O5", 25, null, null))).toEqual({ kind: "waiting", argument: "crop" });
    expect(faultOf(() => rate("K2O", 110, "corn", null))).toEqual({ kind: "waiting", argument: "cec" });
  });
});
