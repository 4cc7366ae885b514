import { allFunctions } from "../../../src/functions";
import { isCellError } from "../../../src/functions/frame/cell";
import { areaAddress, sheetAddress } from "../../../src/hosts/address";
import { calculate } from "../../../src/hosts/engine";
import type { SheetPlan, WorkbookPlan } from "../../../src/workbook/plan";
import { defaultChoices, starters, type Starter } from "../../../src/workbook/starters";
import { makePlan } from "../../../src/workbook/starters/make-plan";
import { isMeantForChart } from "../../../src/build/samples/problems";
import { serveBuiltPages, until, type BuiltPages, type OpenedPage } from "../../browser/page";

jest.setTimeout(120_000);

let pages: BuiltPages;
let opened: OpenedPage;

beforeAll(async () => {
  pages = await serveBuiltPages();
  opened = await pages.open("index.html");
});
afterAll(() => pages.stop());

async function openWorkbook(): Promise<void> {
  await pages.renew(opened);
  await until(() => opened.page.evaluate(() => window.loamsheet !== undefined), "the workbook was open");
}

function fill(plan: WorkbookPlan): Promise<void> {
  return opened.page.evaluate(async (given) => {
    await window.loamsheet?.fill(given, { protect: false });
  }, plan);
}

function valuesOf(sheet: SheetPlan) {
  const bottom = Math.max(...sheet.cells.map(({ row }) => row));
  const right = Math.max(...sheet.cells.map(({ column }) => column));
  const address = sheetAddress(sheet.name, { top: 0, left: 0, bottom, right });
  return opened.page.evaluate((given) => window.loamsheet?.read(given), address);
}

/** Exponentials differ in their last digit between the program that runs the page and the one that runs the test. */
function same(wanted: unknown, value: unknown): boolean {
  if (typeof wanted !== "number" || typeof value !== "number") return wanted === value;
  return Math.abs(wanted - value) <= 1e-12 * Math.max(1, Math.abs(wanted));
}

/** Cells whose value in the page differs from the one calculated without a page, "Fields!B4: 3 for 4". */
async function differences(plan: WorkbookPlan): Promise<string[]> {
  const expected = await calculate(plan, allFunctions);
  const found: string[] = [];
  for (const sheet of plan.sheets) {
    const shown = await valuesOf(sheet);
    for (const cell of sheet.cells.filter((each) => !isMeantForChart(each))) {
      const { row, column } = cell;
      const wanted = expected.valueAt(sheet.name, row, column) ?? null;
      const value = shown?.values[row]?.[column] ?? null;
      const place = `${sheet.name}!${areaAddress({ top: row, left: column, bottom: row, right: column })}`;
      if (isCellError(wanted)) found.push(`${place}: ${wanted.code} ${wanted.message ?? ""}`);
      else if (!same(wanted, value)) found.push(`${place}: ${String(value)} for ${String(wanted)}`);
    }
  }
  return found;
}

describe("starters in the page", () => {
  it.each(starters.map((starter): [string, Starter] => [starter.title, starter]))(
    "%s shows in every cell what is calculated without a page, and no error",
    async (_title, starter) => {
      await openWorkbook();
      const plan = makePlan(starter, defaultChoices);
      await fill(plan);
      expect(await differences(plan)).toEqual([]);
      expect(opened.troubles).toEqual([]);
      expect(opened.foreign).toEqual([]);
    },
  );

  it("puts one starter behind another, each with names of its own", async () => {
    await openWorkbook();
    const made: WorkbookPlan[] = [];
    for (const starter of starters) {
      const taken = await opened.page.evaluate(() => window.loamsheet?.taken());
      const plan = makePlan(starter, defaultChoices, taken);
      await fill(plan);
      made.push(plan);
    }
    for (const plan of made) expect(await differences(plan)).toEqual([]);
  });
});
