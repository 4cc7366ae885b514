import { refuseArgument } from "../../fault";
import { within } from "../../limit";
import {
  guideInWords,
  reportClasses,
  testUnits,
  type Guide,
  type NeedNutrient,
  type ReportClassKey,
  type TestUnitKey,
} from "../../../reference/guides";

/** lb/ac that 1 ppm makes in the 6 to 7 inches that 2,000,000 lb of soil fill. */
export const poundsPerPpm = 2;

/** A number, or the class that a laboratory printed in its place. */
export type SoilTest = number | ReportClassKey;

export interface GuideTest {
  /** In the guide's unit; NaN where it is read at a class. */
  readonly test: number;
  readonly reportClass: ReportClassKey | null;
}

/**
 * A soil test in the unit of a guide.
 *
 * @param given unit the test is in; null: the guide's own
 */
export function readTest(
  guide: Guide,
  nutrient: NeedNutrient,
  soilTest: SoilTest,
  given: TestUnitKey | null,
): GuideTest {
  const { testUnit, highestTest } = guide[nutrient];
  if (testUnit === "class") return { test: Number.NaN, reportClass: classOf(guide, soilTest) };
  if (typeof soilTest === "string") {
    refuseArgument(
      "soilTest",
      `${guide.label} is read at a number (${testUnit}); got the class ${reportClasses[soilTest].label}.`,
    );
  }
  const times = given === null ? 1 : timesTo(guide, testUnit, given);
  within("soilTest", soilTest, { min: 0, max: highestTest / times, unit: unitOf(testUnit, given), slip: 2 });
  return { test: soilTest * times, reportClass: null };
}

function unitOf(testUnit: string, given: TestUnitKey | null): string {
  return given === null ? testUnit : testUnits[given].label;
}

function timesTo(guide: Guide, testUnit: "ppm" | "lb/ac" | "index", given: TestUnitKey): number {
  if (testUnits[given].label === testUnit) return 1;
  if (testUnit === "ppm") return 1 / poundsPerPpm;
  if (testUnit === "lb/ac") return poundsPerPpm;
  return refuseArgument(
    "testUnit",
    `${guide.label} is read at the index its laboratory prints, not at ${testUnits[given].label}.`,
  );
}

function classOf(guide: Guide, soilTest: SoilTest): ReportClassKey {
  if (typeof soilTest === "string") return soilTest;
  const words = Object.values(reportClasses).map(({ label }) => label);
  return refuseArgument(
    "soilTest",
    `${guideInWords(guide)} prints no class limits: type the class on the report (${words.join(", ")}); got ${soilTest}.`,
  );
}
