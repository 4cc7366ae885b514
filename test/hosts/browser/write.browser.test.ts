import type { Page } from "playwright-core";
import type { MayReplace, WrittenBlock } from "../../../src/hosts/port";
import { defaultChoices, starters } from "../../../src/workbook/starters";
import { makePlan } from "../../../src/workbook/starters/make-plan";
import { serveBuiltPages, until, type BuiltPages } from "../../browser/page";

jest.setTimeout(120_000);

let pages: BuiltPages;
let page: Page;

beforeAll(async () => {
  pages = await serveBuiltPages();
  page = (await pages.open("index.html")).page;
  await until(() => page.evaluate(() => window.loamsheet !== undefined), "the workbook was open");
  const starter = starters.find(({ key }) => key === "quick-what-if");
  if (!starter) throw new Error("no quick what-if");
  const plan = makePlan(starter, defaultChoices);
  await page.evaluate((given) => window.loamsheet?.fill(given, { protect: false }), plan);
});
afterAll(() => pages.stop());

const value = (reference: string) =>
  page.evaluate(async (given) => (await window.loamsheet?.read(given))?.values[0]?.[0], reference);

const addressOf = (name: string) =>
  page.evaluate(async (given) => (await window.loamsheet?.read(given))?.address ?? "", name);

/** What the host said when it refused, or nothing. */
function write(blocks: readonly WrittenBlock[], mayReplace: MayReplace): Promise<string> {
  return page.evaluate(
    async ([given, may]) =>
      window.loamsheet?.write(given, may).then(
        () => "",
        (thrown: Error) => thrown.message,
      ) ?? "no workbook",
    [blocks, mayReplace] as const,
  );
}

it("types numbers over inputs; the sheet follows, and one Undo takes both back", async () => {
  const blocks = [
    { address: await addressOf("quick_yield"), rows: [[200]] },
    { address: await addressOf("quick_price"), rows: [[5]] },
  ];
  const before = [await value("quick_yield"), await value("quick_price")];
  expect(await write(blocks, "typedValues")).toBe("");
  expect([await value("quick_yield"), await value("quick_price")]).toEqual([200, 5]);
  const box = page.locator('#grid [data-u-comp="defined-name"] input');
  await box.click();
  await box.fill("H20");
  await box.press("Enter");
  await page.waitForTimeout(200);
  await page.keyboard.press("Control+z");
  await until(async () => (await value("quick_yield")) === before[0], "the yield was back");
  expect(await value("quick_price")).toBe(before[1]);
});

it("leaves formulas and filled cells alone, and then writes nothing at all", async () => {
  const yieldBefore = await value("quick_yield");
  const answer = await page.evaluate(async () => {
    const range = await window.loamsheet?.read("'Quick what if'!A1:B30");
    const row = range?.formulas.findIndex(([label]) => label === "An acre leaves") ?? -1;
    return `'Quick what if'!B${row + 1}`;
  });
  const blocks = [
    { address: await addressOf("quick_yield"), rows: [[300]] },
    { address: answer, rows: [[1]] },
  ];
  expect(await write(blocks, "typedValues")).toBe(`${answer} holds a formula, which stays. Nothing was written.`);
  expect(await write([{ address: await addressOf("quick_yield"), rows: [[1]] }], "nothing")).toMatch(
    /B\d is not empty/,
  );
  expect(await value("quick_yield")).toBe(yieldBefore);
});

it("fills empty cells with words, numbers and formulas of ours that spill", async () => {
  const rows = [
    ["check", 1, 180],
    ["fungicide", 1, 187],
    ["check", 2, 176],
    ["fungicide", 2, 181],
    ["check", 3, 171],
    ["fungicide", 3, 180],
    [{ formula: "=LOAM.TRIALBLOCKS(K3:K8,L3:L8,M3:M8)" }, null, null],
  ];
  expect(await write([{ address: "'Quick what if'!K3", rows }], "nothing")).toBe("");
  // Differences 7, 5 and 9: mean 7.
  await until(async () => (await value("'Quick what if'!K10")) === "fungicide", "the result spilled");
  expect(await value("'Quick what if'!O10")).toBeCloseTo(7, 9);
});
