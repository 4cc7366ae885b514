import type { CropKey } from "../../../../src/reference/crops";
import type { ExtractantKey, GuideKey, NeedNutrient } from "../../../../src/reference/guides";
import { faultOf } from "../../fault-of";
import { need, zone } from "./ask-guide";

/** Class limits typed a second time from the publications. */
describe("one critical level that stands alone", () => {
  type Level = readonly [GuideKey, NeedNutrient, CropKey, ExtractantKey, number];
  const levels: readonly Level[] = [
    ["NE", "P2O5", "corn", "bray", 15],
    ["NE", "P2O5", "corn", "mehlich3", 18],
    ["NE", "P2O5", "corn", "olsen", 10],
    ["NE", "P2O5", "sorghum", "bray", 15],
    ["NE", "P2O5", "sorghum", "mehlich3", 18],
    ["NE", "P2O5", "sorghum", "olsen", 10],
    ["NE", "P2O5", "soybean", "bray", 12],
    ["NE", "P2O5", "soybean", "mehlich3", 14],
    ["NE", "P2O5", "soybean", "olsen", 8],
    ["NE", "P2O5", "wheat", "bray", 25],
    ["NE", "P2O5", "wheat", "mehlich3", 29],
    ["NE", "P2O5", "wheat", "olsen", 17],
    ["NE", "P2O5", "alfalfa", "bray", 25],
    ["NE", "P2O5", "alfalfa", "mehlich3", 29],
    ["NE", "P2O5", "alfalfa", "olsen", 17],
    ["NE", "K2O", "corn", "ammoniumAcetate", 125],
    ["NE", "K2O", "sorghum", "ammoniumAcetate", 125],
    ["NE", "K2O", "soybean", "ammoniumAcetate", 125],
    ["NE", "K2O", "wheat", "ammoniumAcetate", 125],
    ["NE", "K2O", "alfalfa", "ammoniumAcetate", 125],
    ["KS", "P2O5", "wheat", "bray", 20],
    ["KS", "P2O5", "soybean", "mehlich3", 20],
    ["KS", "K2O", "corn", "ammoniumAcetate", 130],
    ["MN", "K2O", "corn", "ammoniumAcetate", 200],
    ["MN", "K2O", "soybean", "ammoniumAcetate", 200],
  ];
  it.each(levels)("%s %s for %s by %s: %d", (guide, nutrient, crop, extractant, level) => {
    expect(zone(guide, nutrient, crop, level - 1, { extractant })).toBe("below critical");
    expect(zone(guide, nutrient, crop, level, { extractant })).toBe("at or above critical");
  });
  it.each([
    ["smectitic", 200],
    ["illitic", 150],
  ] as const)("ND K for corn on %s clay: %d", (group, level) => {
    expect(zone("ND", "K2O", "corn", level - 0.1, { group })).toBe("below critical");
    expect(zone("ND", "K2O", "corn", level, { group })).toBe("at or above critical");
    expect(faultOf(() => need("ND", "K2O", "corn", 150, level, { group }))).toMatchObject({ kind: "notPublished" });
  });
  it("Nebraska asks for nothing at or above a level, and holds no rate below it but corn's", () => {
    for (const [guide, nutrient, crop, extractant, level] of levels.filter(([guide]) => guide === "NE")) {
      expect(need(guide, nutrient, crop, 10, level, { extractant }).rateLbPerAc).toBe(0);
      const below = () => need(guide, nutrient, crop, 10, level - 1, { extractant });
      if (crop === "corn" && (extractant === "bray" || nutrient === "K2O"))
        expect(below().rateLbPerAc).toBeGreaterThan(0);
      else expect(faultOf(below)).toMatchObject({ kind: "notPublished" });
    }
  });
});

describe("printed classes", () => {
  it("Iowa FW32: Olsen 12 is optimum", () => {
    expect(zone("IA", "P2O5", "corn", 12, { extractant: "olsen" })).toBe("optimum");
  });

  it.each([
    ["DE", "P2O5", [25, 50, 100], ["low", "medium", "optimum", "excessive"]],
    ["DE", "K2O", [70, 140, 280], ["low", "medium", "optimum", "excessive"]],
    ["NJ", "P2O5", [24, 45, 71, 137], ["very low", "low", "medium", "high", "very high"]],
    ["NJ", "K2O", [40, 81, 145, 277], ["very low", "low", "medium", "high", "very high"]],
  ] as const)("%s %s at %j", (guide, nutrient, upTo, words) => {
    upTo.forEach((limit, place) => {
      expect(zone(guide, nutrient, null, limit)).toBe(words[place]);
      expect(zone(guide, nutrient, null, limit + 1)).toBe(words[place + 1]);
    });
    expect(faultOf(() => need(guide, nutrient, "corn", 150, 10))).toMatchObject({
      kind: "notPublished",
      where: `${guide}, as far as we hold it,`,
    });
  });

  it("Minnesota to 2018, potassium for corn", () => {
    const words = [40, 41, 80, 81, 120, 121, 160, 161].map((test) => zone("MN-2018", "K2O", "corn", test));
    expect(words).toEqual(["very low", "low", "low", "medium", "medium", "high", "high", "very high"]);
  });

  it("North Dakota asks for P under soybean at Olsen 7 or less, and for nothing above", () => {
    expect(zone("ND", "P2O5", "soybean", 7)).toBe("P recommended");
    expect(faultOf(() => need("ND", "P2O5", "soybean", 40, 7))).toMatchObject({ kind: "notPublished" });
    expect(need("ND", "P2O5", "soybean", 40, 8)).toMatchObject({ rateLbPerAc: 0, zone: "none" });
  });

  it("Ontario's target", () => {
    expect([11, 12, 18, 19].map((test) => zone("ON", "P2O5", "wheat", test))).toEqual([
      "below target",
      "target",
      "target",
      "above target",
    ]);
    expect([99, 100, 130, 131].map((test) => zone("ON", "K2O", "corn", test))).toEqual([
      "below target",
      "target",
      "target",
      "above target",
    ]);
  });

  it.each(["NC", "MT"] as const)("%s names no classes", (guide) => {
    expect(faultOf(() => zone(guide, "P2O5", "fieldPea", 10))).toMatchObject({
      kind: "notPublished",
      what: "P2O5 classes",
    });
  });
  it("South Carolina's limits are not held", () => {
    expect(faultOf(() => zone("SC", "P2O5", "wheat", 10))).toMatchObject({ what: "class limits" });
  });
});

/** Low from, low to, optimum to, high to; null where the last class is open. */
describe("Wisconsin", () => {
  const table = [
    ["P2O5", "soybean", "loamy", 10, 15, 20, 30],
    ["P2O5", "soybean", "sandy", 12, 22, 32, 42],
    ["P2O5", "alfalfa", "loamy", 12, 17, 25, 35],
    ["P2O5", "alfalfa", "sandy", 18, 25, 37, 55],
    ["P2O5", "potato", "loamy", 100, 160, 200, null],
    ["P2O5", "potato", "sandy", 30, 60, 90, 120],
    ["K2O", "soybean", "loamy", 70, 100, 130, 160],
    ["K2O", "soybean", "sandy", 45, 65, 90, 130],
    ["K2O", "alfalfa", "loamy", 90, 110, 140, 170],
    ["K2O", "alfalfa", "sandy", 50, 80, 120, 160],
    ["K2O", "potato", "loamy", 80, 120, 170, 190],
    ["K2O", "potato", "sandy", 70, 100, 130, 160],
  ] as const;
  it.each(table)("%s for %s, %s", (nutrient, crop, group, from, low, optimum, high) => {
    const at = (test: number) => zone("WI", nutrient, crop, test, { group });
    expect([from - 1, from, low, low + 1, optimum, optimum + 1].map(at)).toEqual([
      "very low",
      "low",
      "low",
      "optimum",
      "optimum",
      "high",
    ]);
    if (high === null) expect(at(499)).toBe("high");
    else expect([high, high + 1].map(at)).toEqual(["high", "excessively high"]);
  });
  it("recommends nothing when excessively high; its removal and build-up numbers are not held", () => {
    const at = (test: number) => need("WI", "P2O5", "soybean", 50, test, { group: "loamy" });
    expect(at(31).rateLbPerAc).toBe(0);
    for (const test of [5, 12, 18, 25]) expect(faultOf(() => at(test))).toMatchObject({ kind: "notPublished" });
    expect(faultOf(() => need("WI", "P2O5", "soybean", 50, 31))).toMatchObject({ argument: "group" });
  });
});
