import { allFunctions } from "../../../src/functions";
import { calculate } from "../../../src/hosts/engine";
import { findingsIn } from "../../../src/workbook/findings";
import type { WorkbookPlan } from "../../../src/workbook/plan";
import { starters } from "../../../src/workbook/starters";
import { clientListPlan } from "../../../src/workbook/starters/client-list";
import { nothingTaken } from "../../../src/workbook/taken-names";
import { retyped } from "../retyped";
import { headOf } from "../starters/practice-cells";
import { emptied, planOf, typed } from "../starters/shown-sheet";
import { readingOfPlan } from "./reading-of-plan";

jest.setTimeout(60_000);

async function found(plan: WorkbookPlan) {
  const reading = readingOfPlan(plan, await calculate(plan, allFunctions));
  return findingsIn(reading, [], { year: 2027, serial: 46_451 });
}

/** A fresh starter is in order: whatever is asked about it would be asked of everyone. */
it.each(starters.map(({ key }) => key))("nothing is asked about a fresh %s", async (key) => {
  expect(await found(planOf(key))).toEqual([]);
});

it.each([
  ["the farm plan", planOf("farm-plan"), "Soil tests", "Sand Knob"],
  [
    "the list of clients",
    clientListPlan({ withDemo: true }, nothingTaken),
    "Client list",
    "Windmill Hollow, home side",
  ],
])("%s knows when its fields were sampled, and asks once a sample is old", async (_what, plan, sheet, row) => {
  const of = async (year: number, serial: number) => {
    const reading = readingOfPlan(plan, await calculate(plan, allFunctions));
    return findingsIn(reading, [], { year, serial }).filter(({ kind }) => kind === "oldSoilTest");
  };
  // 47,070 is 13 November 2028: the samples of 6 November 2024 are four years and seven days old, those of 2025 are not.
  const old = await of(2028, 47_070);
  expect(old).toHaveLength(5);
  expect(old).toContainEqual(expect.objectContaining({ row, year: 2024, at: expect.objectContaining({ sheet }) }));
  // 47,058 is 1 November 2028.
  expect(await of(2028, 47_058)).toEqual([]);
});

/** The plan with a number over the formula in the first row of a computed column. */
function typedOnFormula(plan: WorkbookPlan, sheetName: string, heading: string, content: number): WorkbookPlan {
  const { row, column } = headOf(plan, sheetName, heading);
  return retyped(plan, sheetName, { row: row + 1, column }, content);
}

it("a farm plan with a slip in four places is asked about those four", async () => {
  const unasked = emptied(planOf("farm-plan"), [["Soil tests", "Sand Knob", "Buffer pH"]]);
  const slips = typed(unasked, [
    [["Assumptions", "corn", "Price $/bu"], 450],
    [["Fields", "Creek Bend", "Yield goal bu/ac"], 2050],
  ]);
  const asked = (await found(typedOnFormula(slips, "Lime plan", "Cost $/ac", 12))).map(({ kind, at }) => [
    kind,
    at.sheet,
  ]);
  // A yield of 2,050 is refused by the functions as well: their cells follow.
  expect(asked.filter(([kind]) => kind !== "errorCells")).toEqual([
    ["implausibleFigure", "Assumptions"],
    ["implausibleFigure", "Fields"],
    ["typedOver", "Lime plan"],
    ["missingBuffer", "Soil tests"],
  ]);
  expect(asked.map(([kind]) => kind)).toContain("errorCells");
});
