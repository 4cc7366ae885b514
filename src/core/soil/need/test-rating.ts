import { refuse } from "../../fault";
import { guideInWords, type ExtractantKey, type NeedSystem, type TestUnitKey } from "../../../reference/guides";
import type { Cited } from "../../../reference/table";
import { chooseRule, type RuleQuestion } from "./choose-rule";
import { rateParts } from "./read-rule";
import { readTest } from "./read-test";

export interface TestRatingInput extends Omit<RuleQuestion, "approach" | "rotationCrop" | "forRating"> {
  readonly soilTest: number;
  /** Unit of the test; null: the guide's own. */
  readonly testUnit?: TestUnitKey | null;
}

export interface TestRating {
  /** The guide's own word. */
  readonly zone: string;
  /** In the guide's unit. */
  readonly soilTest: number;
  readonly criticalLevel: number | null;
  readonly maintenanceLimit: number | null;
  readonly testUnit: NeedSystem["testUnit"];
  readonly extractants: readonly ExtractantKey[];
  readonly cited: readonly Cited[];
}

/** The class that a guide puts a soil test in, in the guide's words. */
export function testRating(input: TestRatingInput): TestRating {
  const { guide, nutrient, crop, cecMeq } = input;
  const { testUnit } = guide[nutrient];
  if (testUnit === "class") refuse({ kind: "notPublished", where: guideInWords(guide), what: "class limits" });
  const { test } = readTest(guide, nutrient, input.soilTest, input.testUnit ?? null);
  const { rule, extractants } = chooseRule({
    guide,
    nutrient,
    crop,
    cecMeq,
    extractant: input.extractant,
    group: input.group ?? null,
    approach: null,
    rotationCrop: null,
    forRating: true,
  });
  // Classes do not turn on yield: one unit of it, and no removal, leave them as they are.
  const { zone, criticalLevel, maintenanceLimit } = rateParts(rule, {
    test,
    reportClass: null,
    yieldPerAc: 1,
    crop,
    removalLbPerAc: 0,
    cecMeq,
    withBuildup: false,
    years: null,
  });
  return { zone, soilTest: test, criticalLevel, maintenanceLimit, testUnit, extractants, cited: [rule] };
}
