import { within } from "../../limit";
import type { ExtractantKey, NeedSystem } from "../../../reference/guides";
import type { Cited } from "../../../reference/table";
import { chooseRule, type RuleQuestion } from "./choose-rule";
import { rateParts } from "./nutrient-need";

export interface TestRatingInput extends RuleQuestion {
  /** In the guide's own unit. */
  readonly soilTest: number;
}

export interface TestRating {
  /** The guide's own word. */
  readonly zone: string;
  readonly criticalLevel: number | null;
  readonly maintenanceLimit: number | null;
  readonly testUnit: NeedSystem["testUnit"];
  readonly extractant: ExtractantKey;
  readonly cited: readonly Cited[];
}

/** The class that a guide puts a soil test in, in the guide's words. */
export function testRating(input: TestRatingInput): TestRating {
  const system = input.guide[input.nutrient];
  within("soilTest", input.soilTest, { min: 0, max: system.highestTest, unit: system.testUnit, slip: 2 });
  const { rule, extractant } = chooseRule(input);
  // Classes do not turn on yield: one unit of it, and no removal, leave them as they are.
  const { zone, criticalLevel, maintenanceLimit } = rateParts(rule, {
    test: input.soilTest,
    yieldPerAc: 1,
    crop: input.crop,
    removalLbPerAc: 0,
    removalTimes: undefined,
    cecMeq: input.cecMeq,
    withBuildup: true,
  });
  return { zone, criticalLevel, maintenanceLimit, testUnit: system.testUnit, extractant, cited: [rule] };
}
