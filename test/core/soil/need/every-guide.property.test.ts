import fc from "fast-check";
import { FormulaError } from "../../../../src/core/fault";
import { nutrientNeed, type NutrientNeed, type NutrientNeedInput } from "../../../../src/core/soil/need/nutrient-need";
import { crops, type CropKey } from "../../../../src/reference/crops";
import { guides, type GroupKey, type Guide, type GuideKey } from "../../../../src/reference/guides";

const keysOf = <Key extends string>(record: Readonly<Record<Key, unknown>>): Key[] => Object.keys(record) as Key[]; // keys of a closed record
const numbered = keysOf<GuideKey>(guides).filter((key) => guides[key].P2O5.testUnit !== "class");

type Question = NutrientNeedInput & { readonly soilTest: number };

const cropKeys = keysOf<CropKey>(crops);
const halves = numbered.flatMap((key) => (["P2O5", "K2O"] as const).map((nutrient) => ({ key, nutrient })));

/** What one half of a guide may be asked, with crops, groups and methods it knows; the yields lie inside every ceiling. */
function questionOf({ key, nutrient }: (typeof halves)[number]): fc.Arbitrary<Question> {
  const guide: Guide = guides[key];
  const system = guide[nutrient];
  const groupsKnown: readonly (GroupKey | null)[] = system.rules.flatMap(({ group }) => group ?? []);
  return fc.record({
    guide: fc.constant(guide),
    nutrient: fc.constant(nutrient),
    // Most of the range where guides give something, some of it far above.
    soilTest: fc.double({ min: 0, max: 1, noNaN: true }).map((share) => share ** 3 * system.highestTest),
    crop: fc.constantFrom(...system.rules.flatMap((rule) => (rule.crops === "all" ? cropKeys : rule.crops))),
    yieldGoalPerAc: fc.double({ min: 0, max: 6, noNaN: true }),
    cecMeq: fc.double({ min: 1, max: 60, noNaN: true }),
    extractant: fc.constantFrom(null, ...system.extractants),
    group: fc.constantFrom(...(groupsKnown.length > 0 ? groupsKnown : [null])),
    approach: fc.constantFrom(null, "build" as const, "sufficiency" as const, "removal" as const),
    years: fc.constantFrom(null, 4, 8),
    rotationCrop: fc.constantFrom<CropKey | null>(null, "corn", "wheat"),
  });
}

const anyQuestion = fc.constantFrom(...halves).chain(questionOf);

/** The answer, or nothing where the guide refuses or waits. Anything else is thrown on. */
function answered(question: Question): NutrientNeed | undefined {
  try {
    return nutrientNeed(question);
  } catch (thrown) {
    if (thrown instanceof FormulaError) return undefined;
    throw thrown;
  }
}

let answers = 0;
const lawHolds = (law: (need: NutrientNeed, question: Question, more: number) => void) =>
  fc.assert(
    fc.property(anyQuestion, fc.double({ min: 0, max: 1, noNaN: true }), (question, more) => {
      const need = answered(question);
      if (!need) return;
      answers += 1;
      law(need, question, more);
    }),
    { numRuns: 4000 },
  );

describe("every guide", () => {
  afterAll(() => expect(answers).toBeGreaterThan(3000));

  it("does not ask for more at a higher test of the same zone", () => {
    lawHolds((need, question, more) => {
      const highest = question.guide[question.nutrient].highestTest;
      const soilTest = Math.min(highest, question.soilTest * (1 + more) + more);
      const higher = answered({ ...question, soilTest });
      if (higher?.zone === need.zone && need.guide.label !== "MT") {
        expect(higher.unroundedLbPerAc).toBeLessThanOrEqual(need.unroundedLbPerAc + 1e-9);
      }
    });
  });

  it("asks for more with yield wherever the crop's removal is part of the rate, and never for less", () => {
    lawHolds((need, question, more) => {
      const higher = answered({ ...question, yieldGoalPerAc: question.yieldGoalPerAc + more });
      if (!higher) return;
      expect(higher.unroundedLbPerAc).toBeGreaterThanOrEqual(need.unroundedLbPerAc - 1e-9);
      if (need.removalNumber && more > 0.01 && need.maintenanceLimit !== null && need.zone !== "drawdown") {
        expect(higher.unroundedLbPerAc).toBeGreaterThan(need.unroundedLbPerAc);
      }
    });
  });

  it("asks for nothing from its limit up", () => {
    lawHolds((need, question) => {
      if (need.maintenanceLimit === null) return;
      const { highestTest } = question.guide[question.nutrient];
      for (const soilTest of [need.maintenanceLimit, need.maintenanceLimit + 1, highestTest]) {
        expect(answered({ ...question, soilTest })?.rateLbPerAc).toBe(0);
      }
    });
  });

  it("rounds once to the guide's step and shows parts that add up", () => {
    lawHolds((need) => {
      expect(need.rateLbPerAc % need.roundedTo).toBe(0);
      expect(Math.abs(need.rateLbPerAc - need.unroundedLbPerAc)).toBeLessThanOrEqual(need.roundedTo / 2 + 1e-6);
      expect(need.unroundedLbPerAc).toBeCloseTo(need.buildupLbPerAc + need.maintenanceLbPerAc, 6);
    });
  });

  it("says who stands behind every number", () => {
    lawHolds((need) => {
      expect(need.cited.length).toBeGreaterThan(0);
      expect(need.extractants.length).toBeGreaterThan(0);
    });
  });

  it("reads lb/ac and ppm as the same soil", () => {
    lawHolds((need, question) => {
      if (need.testUnit === "index") return;
      const isPpm = need.testUnit === "ppm";
      const other = answered({
        ...question,
        soilTest: isPpm ? question.soilTest * 2 : question.soilTest / 2,
        testUnit: isPpm ? "lbPerAc" : "ppm",
      });
      expect(other?.unroundedLbPerAc).toBe(need.unroundedLbPerAc);
    });
  });
});

describe("slips", () => {
  it.each(numbered)("%s asks about a test above its highest", (key) => {
    const { highestTest } = guides[key].P2O5;
    const ask = () =>
      nutrientNeed({
        guide: guides[key],
        nutrient: "P2O5",
        crop: "corn",
        yieldGoalPerAc: 100,
        soilTest: highestTest * 1.5,
        cecMeq: null,
        extractant: null,
        approach: null,
        rotationCrop: null,
      });
    expect(ask).toThrow(new RegExp(`"max":${highestTest}.*"suggestion":"${highestTest * 0.75}"`));
  });
});
