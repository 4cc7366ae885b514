import type { Page } from "playwright-core";
import { serveBuiltPages, until, type BuiltPages } from "../../browser/page";
import { cell, plan, sheet } from "../plan-parts";

jest.setTimeout(90_000);

let pages: BuiltPages;

beforeAll(async () => {
  pages = await serveBuiltPages();
});
afterAll(() => pages.stop());

const opened = (page: Page) => () => page.evaluate(() => window.loamsheet !== undefined);

it("opens again without a network, calculates, and still holds what was there", async () => {
  const { page } = await pages.open("index.html", { serviceWorkers: "allow" });
  await until(opened(page), "the workbook was open");
  await page.evaluate(
    (given) => window.loamsheet?.fill(given, { protect: false }),
    plan([sheet("Offline", [cell(0, 0, 200), cell(1, 0, { formula: '=LOAM.REMOVAL("corn",A1,"K2O")' })])]),
  );
  await until(
    () => page.evaluate(async () => (await caches.match("offline.json")) !== undefined),
    "the page was kept for later",
    40,
  );
  await page.waitForTimeout(1500); // the workbook is saved a moment after a change

  await pages.unplug();
  await page.reload();
  await until(opened(page), "the workbook was open without a network");
  // By hand: 200 bu × 0.20 lb K2O.
  await until(
    async () => (await page.evaluate(() => window.loamsheet?.read("Offline!A2")))?.values[0]?.[0] === 40,
    "the need was calculated",
  );
  await page.goto(`${pages.address}help/functions.html`);
  expect(await page.locator("#REMOVAL, #removal").count()).toBeGreaterThan(0);
});
