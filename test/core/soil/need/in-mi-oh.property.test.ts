import fc from "fast-check";
import { nutrientNeed, type NutrientNeedInput } from "../../../../src/core/soil/need/nutrient-need";
import { guides } from "../../../../src/reference/guides";

const crops = ["corn", "cornSilage", "soybean", "wheat", "alfalfa"] as const;
/** Inside every crop's ceiling; nothing, or enough of it to be weighed. */
const yields = fc.oneof(fc.constant(0), fc.double({ min: 0.001, max: 25, noNaN: true }));
const cecs = fc.double({ min: 1, max: 60, noNaN: true });
const tests = fc.double({ min: 0, max: 500, noNaN: true });

type Question = NutrientNeedInput & { readonly soilTest: number };

const anyQuestion: fc.Arbitrary<Question> = fc.record({
  guide: fc.constant(guides["IN-MI-OH"]),
  nutrient: fc.constantFrom("P2O5", "K2O"),
  crop: fc.constantFrom(...crops),
  yieldGoalPerAc: yields,
  soilTest: tests,
  cecMeq: cecs,
  extractant: fc.constant(null),
  approach: fc.constantFrom("build", "sufficiency"),
  rotationCrop: fc.constantFrom(null, "wheat", "soybean"),
});

const lawHolds = (law: (question: Question, more: number) => void) =>
  fc.assert(fc.property(anyQuestion, fc.double({ min: 0, max: 100, noNaN: true }), law));

describe("IN-MI-OH laws", () => {
  it("a higher test never asks for more, at the same soil", () => {
    lawHolds((question, more) => {
      const soilTest = Math.min(500, question.soilTest + more);
      const higher = nutrientNeed({ ...question, soilTest }).unroundedLbPerAc;
      // 1e-9 is binary dust of the two sums.
      expect(higher).toBeLessThanOrEqual(nutrientNeed(question).unroundedLbPerAc + 1e-9);
    });
  });

  it("a higher yield goal never asks for less", () => {
    lawHolds((question, more) => {
      const yieldGoalPerAc = Math.min(25, question.yieldGoalPerAc + more / 10);
      expect(nutrientNeed({ ...question, yieldGoalPerAc }).rateLbPerAc).toBeGreaterThanOrEqual(
        nutrientNeed(question).rateLbPerAc,
      );
    });
  });

  it("nothing at or above the limit, something below it when a crop takes some off", () => {
    lawHolds((question) => {
      const { maintenanceLimit, rateLbPerAc, unroundedLbPerAc } = nutrientNeed(question);
      if (maintenanceLimit === null) throw new Error("this guide has a limit");
      if (question.soilTest >= maintenanceLimit) expect(rateLbPerAc).toBe(0);
      else if (question.yieldGoalPerAc > 0) expect(unroundedLbPerAc).toBeGreaterThan(0);
    });
  });

  it("is a multiple of 5 within 2.5 lb of the sum of its parts", () => {
    lawHolds((question) => {
      const need = nutrientNeed(question);
      expect(need.rateLbPerAc % 5).toBe(0);
      expect(Math.abs(need.rateLbPerAc - need.unroundedLbPerAc)).toBeLessThanOrEqual(2.5 + 1e-6);
      expect(need.unroundedLbPerAc).toBeCloseTo(need.buildupLbPerAc + need.maintenanceLbPerAc, 9);
    });
  });

  it("sufficiency is build less its build-up, and the zone is the same", () => {
    lawHolds((question) => {
      const build = nutrientNeed({ ...question, approach: "build" });
      const lean = nutrientNeed({ ...question, approach: "sufficiency" });
      expect(lean.unroundedLbPerAc).toBeCloseTo(build.unroundedLbPerAc - build.buildupLbPerAc, 9);
      expect(lean.zone).toBe(build.zone);
    });
  });

  it("runs on without a step at the critical level, and drops the whole maintenance at the limit", () => {
    lawHolds((question) => {
      const { criticalLevel, maintenanceLimit } = nutrientNeed(question);
      if (criticalLevel === null || maintenanceLimit === null) throw new Error("this guide has both levels");
      const at = (soilTest: number) => nutrientNeed({ ...question, soilTest }).unroundedLbPerAc;
      // Build-up is at most 5 lb P2O5 or 1 + 0.05 × 60 = 4 lb K2O per ppm.
      expect(at(criticalLevel - 1e-6) - at(criticalLevel)).toBeLessThanOrEqual(5e-6 + 1e-9);
      expect(at(maintenanceLimit - 1e-6)).toBeCloseTo(at(criticalLevel), 9);
      expect(at(maintenanceLimit)).toBe(0);
    });
  });

  it("potash build-up grows with CEC above 5", () => {
    fc.assert(
      fc.property(fc.double({ min: 5.01, max: 59, noNaN: true }), (cecMeq) => {
        const at = (cec: number) =>
          nutrientNeed({
            guide: guides["IN-MI-OH"],
            nutrient: "K2O",
            crop: "corn",
            yieldGoalPerAc: 180,
            soilTest: 80,
            cecMeq: cec,
            extractant: null,
            approach: null,
            rotationCrop: null,
          }).buildupLbPerAc;
        expect(at(cecMeq + 1)).toBeGreaterThan(at(cecMeq));
      }),
    );
  });
});
