import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { execFileSync } from "node:child_process";
import type { Page } from "playwright-core";
import { PanePages, type WatchedPage } from "./pane-page";

jest.setTimeout(180_000);

let pages: PanePages;
const open: WatchedPage[] = [];
const folder = process.env["LOAMSHEET_SHOTS"] ?? mkdtempSync(path.join(tmpdir(), "loamsheet-shots-"));

beforeAll(async () => {
  pages = await PanePages.open();
});
afterAll(async () => {
  await pages.close();
  if (process.env["LOAMSHEET_SHOTS"] === undefined) rmSync(folder, { recursive: true, force: true });
});
afterEach(async () => {
  const complaints = open.flatMap((watched) => watched.complaints);
  await Promise.all(open.splice(0).map(({ page }) => page.context().close()));
  expect(complaints).toEqual([]);
});

async function pane(options: Parameters<PanePages["page"]>[0]): Promise<Page> {
  const watched = await pages.page(options);
  open.push(watched);
  return watched.page;
}

async function violations(page: Page): Promise<string[]> {
  await page.evaluate(readFileSync(require.resolve("axe-core/axe.min.js"), "utf8"));
  return page.evaluate(async () => {
    const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
    const { violations: found } = await window.axe.run(document, { runOnly: tags });
    return found.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(" ")}`));
  });
}

/** How far the page can be pushed sideways at 320 px, at 400 px, and at 320 px with text at twice its size. */
async function sideways(page: Page): Promise<number[]> {
  const scroll = () => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  const found: number[] = [];
  for (const width of [400, 320]) {
    await page.setViewportSize({ width, height: 700 });
    found.push(await scroll());
  }
  await page.evaluate(() => (document.documentElement.style.fontSize = "200%"));
  found.push(await scroll());
  await page.evaluate(() => (document.documentElement.style.fontSize = ""));
  return found;
}

const looks = [
  { width: 320, colorScheme: "light" },
  { width: 400, colorScheme: "dark" },
] as const;

it.each(looks)(
  "a grower tries another yield and price by keyboard, $width px, $colorScheme",
  async ({ width, colorScheme }) => {
    const page = await pane({ viewport: { width, height: 700 }, colorScheme });
    await page.getByRole("button", { name: "What if" }).click();
    // 58 × 10.48 − 620 = −12.16
    await page.getByText("An acre falls short by $12.16.").waitFor();
    await page.focus("#what-if-yield-slider");
    for (let step = 0; step < 4; step++) await page.keyboard.press("ArrowRight");
    // Four steps of half a bushel: 60 × 10.48 − 620 = 8.80
    await page.getByText("An acre leaves $8.80.").waitFor();
    expect(await page.inputValue("#what-if-yield")).toBe("60");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("what-if-yield-slider");
    await page.fill("#what-if-name", "Good year");
    await page.getByRole("button", { name: "Keep it beside the others" }).click();
    const ranges = {
      "yield-low": "48",
      "yield-high": "68",
      "price-low": "9.2",
      "price-high": "12",
      "cost-low": "590",
      "cost-high": "650",
    };
    for (const [id, text] of Object.entries(ranges)) await page.fill(`#what-if-${id}`, text);
    await page.waitForSelector("#tornado");
    await page.getByRole("button", { name: "Draw them from the workbook" }).click();
    await page.waitForSelector("#drift-PotashLedger");
    await page.getByRole("button", { name: "Put these figures into the sheet" }).click();
    await page.screenshot({ path: path.join(folder, `what-if-${width}-${colorScheme}.png`), fullPage: true });
    expect(await violations(page)).toEqual([]);
    await page.getByRole("button", { name: "Write it" }).click();
    await page.getByText("Written. Everything on the sheet follows.").waitFor();
    expect(await page.evaluate(() => window.host.written.map(({ blocks }) => blocks))).toEqual([
      [{ address: "'Quick what if'!B2", rows: [[60]] }],
    ]);
    expect(await sideways(page)).toEqual([0, 0, 0]);
  },
);

it.each(looks)(
  "a grower lays out a trial, pastes yields and reads what came of it, $width px, $colorScheme",
  async ({ width, colorScheme }) => {
    const page = await pane({ viewport: { width, height: 700 }, colorScheme });
    await page.getByRole("button", { name: "Strip trials" }).click();
    await page.fill("#trial-name", "fungicide in Home Quarter");
    await page.fill("#trial-treatments", "check\nfungicide");
    await page.check("#trial-design-pairs");
    const form = { blocks: "6", width: "20", length: "600", seed: "9", gainToSee: "4", stripSd: "3" };
    for (const [id, text] of Object.entries(form)) await page.fill(`#trial-${id}`, text);
    await page.focus("#trial-seed");
    await page.keyboard.press("Enter");
    await page.waitForSelector("#trial-map");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("trial-map-head");
    await page.fill("#trial-paste", "180\n187.1\n176\n179.4\n180.8\n171\n188.2\n183\n190\n188.5\n174\n180.6");
    await page.getByRole("button", { name: "Put it into the strips" }).click();
    await page.fill("#trial-price", "10.60");
    await page.fill("#trial-cost-1", "21");
    await page.waitForSelector("#differences");
    await page.getByRole("button", { name: "Put the trial into the sheet" }).click();
    await page.waitForSelector("#trial-question");
    await page.screenshot({ path: path.join(folder, `trial-${width}-${colorScheme}.png`), fullPage: true });
    expect(await violations(page)).toEqual([]);
    expect(await sideways(page)).toEqual([0, 0, 0]);
  },
);

it("prints the map alone, in black on white, from a dark pane", async () => {
  const page = await pane({ viewport: { width: 320, height: 700 }, colorScheme: "dark" });
  await page.getByRole("button", { name: "Strip trials" }).click();
  await page.fill("#trial-treatments", "check\nfungicide\npotash");
  await page.fill("#trial-width", "30");
  await page.fill("#trial-length", "800");
  await page.click("#trial-make");
  await page.waitForSelector("#trial-map");
  await page.evaluate(() => (window.print = () => undefined));
  await page.getByRole("button", { name: "Print the map" }).click();
  expect(await page.evaluate(() => document.querySelector(".print-page")?.clientHeight)).toBe(0);
  const file = path.join(folder, "map.pdf");
  await page.pdf({ path: file, format: "Letter", printBackground: false });
  const printed = execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" });
  expect(printed).toContain("Strips of the trial");
  expect(printed).toContain("12 strips, 360 ft across, 6.61 ac in all.");
  expect(printed).not.toContain("Start a workbook");
  expect(printed).not.toContain("Print the map");
});
