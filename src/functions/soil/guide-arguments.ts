import { limits } from "../../core/limits";
import { choice, optional, quantity, type WorkingLine, line } from "../frame";
import { poundsPerPpm } from "../../core/soil/need/read-test";
import { extractants, testUnits, type ExtractantKey, type TestUnitKey } from "../../reference/guides";
import { extractantWords, guideWords } from "../words";
import { groupWords, testUnitWords } from "./guide-words";

/** Arguments that every function read against a guide shares. */
export const guideArgument = choice(guideWords, {
  says: "published recommendation system, by the postal codes of its region",
});
export const methodArgument = optional(
  choice(extractantWords, { says: "extraction the laboratory used" }),
  null,
  "the guide's own, where its numbers do not turn on it",
);
export const groupArgument = optional(
  choice(groupWords, {
    says: "soil group, region or equation that the guide splits its numbers by (IL, MO, NC, ND, WI)",
  }),
  null,
  "waited for where the guide splits its numbers",
);
export const testUnitArgument = optional(
  choice(testUnitWords, { says: "unit of the test, ppm or lb/ac, where it is not the guide's own" }),
  null,
  "the guide's own unit",
);
export const yearsArgument = optional(
  quantity({ min: 1, max: 20, unit: "years" }, { says: "years over which the test is raised" }),
  null,
  "the guide's own; waited for where it leaves the choice (KS build, MO)",
);

/** The unit that guides are read in, said once. */
export const ownUnit = "in the guide's unit: ppm, but lb/ac in IL, MO and NJ and the index in NC";

/** The step from the unit a test was typed in to the guide's own. */
export function unitLines(typed: number | string, given: TestUnitKey | null, testUnit: string): WorkingLine[] {
  if (given === null || testUnits[given].label === testUnit) return [];
  return [
    line("Soil test as typed", typed, testUnits[given].label),
    line("1 ppm is, in a slice of 6 to 7 in", poundsPerPpm, "lb/ac"),
  ];
}

/** The test as the guide reads it. */
export function testLine(
  soilTest: number | string,
  testUnit: string,
  methods: readonly ExtractantKey[],
  depthIn: number | null,
): WorkingLine {
  const method = methods.map((key) => extractants[key].label).join(" or ");
  const unit = testUnit === "class" ? "by the report" : testUnit;
  const parts = [`${soilTest} ${unit}`, method, depthIn === null ? "" : `${depthIn} in`];
  return line("Soil test", parts.filter((part) => part !== "").join(", "));
}

export const anyTest = limits.soilTestAny;
