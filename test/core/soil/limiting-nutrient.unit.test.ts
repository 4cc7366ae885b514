import { limitingNutrients, type LimitingQuestion, type NutrientTest } from "../../../src/core/soil/limiting-nutrient";
import { guides, type GuideKey } from "../../../src/reference/guides";
import type { NutrientKey } from "../../../src/reference/nutrients";
import { faultOf } from "../fault-of";

const test = (nutrient: NutrientKey, soilTest: number, extractant: NutrientTest["extractant"] = null) => ({
  nutrient,
  soilTest,
  extractant,
});
const rank = (guide: GuideKey, tests: readonly NutrientTest[], more: Partial<LimitingQuestion> = {}) =>
  limitingNutrients({ guide: guides[guide], crop: "corn", tests, cecMeq: 10, group: null, ...more });

describe("ranking by critical level", () => {
  it("puts the scarcest first: 15 / 20 is 75 %, 108 / 120 is 90 %", () => {
    const { by, ranked } = rank("IN-MI-OH", [test("K2O", 108), test("P2O5", 15)]);
    expect(by).toBe("criticalLevel");
    expect(ranked.map(({ nutrient, measure, criticalLevel }) => [nutrient, measure, criticalLevel])).toEqual([
      ["P2O5", 75, 20],
      ["K2O", 90, 120],
    ]);
  });
  it("keeps the order of the list where two are equally short, and goes above 100 %", () => {
    const { ranked } = rank("IN-MI-OH", [test("K2O", 240), test("P2O5", 40)]);
    expect(ranked.map(({ nutrient, measure }) => [nutrient, measure])).toEqual([
      ["K2O", 200],
      ["P2O5", 200],
    ]);
  });
  it("takes the extraction of each test: Iowa, Olsen 9 and dried K 120 against 9 and 160", () => {
    const { ranked } = rank("IA", [test("K2O", 120, "ammoniumAcetate"), test("P2O5", 9, "olsen")]);
    expect(ranked.map(({ measure }) => measure)).toEqual([75, 100]);
    expect(faultOf(() => rank("IA", [test("P2O5", 9)]))).toMatchObject({ kind: "waiting", argument: "method" });
  });
  it("lists last, with the reason, what no level is published for", () => {
    const { ranked } = rank("IN-MI-OH", [test("Zn", 1), test("P2O5", 30)]);
    expect(ranked[1]).toMatchObject({ measure: null, says: "IN-MI-OH publishes no Zn critical level" });
    for (const guide of ["NC", "SC", "MT", "NJ", "ON"] as const) {
      expect(rank(guide, [test("P2O5", 20)]).ranked[0]).toMatchObject({ measure: null });
    }
  });
  it("turns on the group where the guide does", () => {
    const tests = [test("P2O5", 30)];
    expect(faultOf(() => rank("IL", tests))).toMatchObject({ argument: "group" });
    expect(rank("IL", tests, { group: "lowSupply" }).ranked[0]?.measure).toBe(60);
  });
});

describe("ranking by Delaware's index", () => {
  it("sets four nutrients on one scale: K 140 / 2.8 = 50, Mg 55 / 2.2 = 25, Ca 1800 / 18 = 100, P 51", () => {
    const { by, ranked } = rank("DE", [test("P2O5", 51), test("K2O", 140), test("Ca", 1800), test("Mg", 55)]);
    expect(by).toBe("index");
    expect(ranked.map(({ nutrient, says }) => [nutrient, says])).toEqual([
      ["Mg", "low"],
      ["K2O", "medium"],
      ["P2O5", "optimum"],
      ["Ca", "optimum"],
    ]);
    const hand = [25, 50, 51, 100];
    ranked.forEach(({ measure }, place) => expect(measure).toBeCloseTo(hand[place] ?? Number.NaN, 9));
  });
  it.each([
    ["P2O5", [25, 50, 100]],
    ["K2O", [70, 140, 280]],
    ["Mg", [55, 110, 220]],
    ["Ca", [450, 900, 1800]],
  ] as const)("gives the printed class of %s at %j and one above", (nutrient, limits) => {
    const words = ["low", "medium", "optimum", "excessive"];
    limits.forEach((limit, place) => {
      expect(rank("DE", [test(nutrient, limit)]).ranked[0]?.says).toBe(words[place]);
      expect(rank("DE", [test(nutrient, limit + 1)]).ranked[0]?.says).toBe(words[place + 1]);
    });
  });
});
