import { allFunctions } from "../../../src/functions";
import { calculate } from "../../../src/hosts/engine";
import { lookOver } from "../../../src/taskpane/pane/check/look-over";
import type { Finding, WorkbookReading } from "../../../src/workbook/findings";
import { starters } from "../../../src/workbook/starters";
import { readingOfPlan } from "../../workbook/findings/reading-of-plan";
import { planOf } from "../../workbook/starters/shown-sheet";
import { FakeHost } from "../fake-host";

jest.setTimeout(60_000);

class ReadHost extends FakeHost {
  constructor(private readonly reading: WorkbookReading) {
    super();
  }

  override async readSheets(): Promise<WorkbookReading> {
    return this.reading;
  }
}

/**
 * What the invented farm itself leaves to ask about. Of its early passes one herbicide controls the driver weed:
 * mesotrione (group 27) in corn, fomesafen (14) in soybean, and in wheat, which has no other pass, 2,4-D (4). The
 * sheet says so as well.
 */
const asked: Readonly<Record<string, readonly string[]>> = {
  "farm-plan": [
    "loneHerbicideGroup, early post, 27",
    "loneHerbicideGroup, early post, 14",
    "loneHerbicideGroup, whole season, 4",
  ],
};

const told = (finding: Finding) =>
  finding.kind === "loneHerbicideGroup"
    ? `${finding.kind}, ${finding.pass ?? "whole season"}, ${finding.group}`
    : finding.kind;

it.each(starters.map(({ key }) => key))("asks of a fresh %s only what its own sheets ask as well", async (key) => {
  const plan = planOf(key);
  const reading = readingOfPlan(plan, await calculate(plan, allFunctions));
  const { findings, cutShort } = await lookOver(new ReadHost(reading), { year: 2027, serial: 46_451 });
  expect(findings.map(told)).toEqual(asked[key] ?? []);
  expect(cutShort).toEqual([]);
});
