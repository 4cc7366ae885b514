import { source as axeSource } from "axe-core";
import { strFromU8, unzipSync } from "fflate";
import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Page } from "playwright-core";
import type { HostValue } from "../../src/hosts/port";
import { colorAt } from "../browser/color-at";
import { serveBuiltPages, until, type BuiltPages } from "../browser/page";

jest.setTimeout(300_000);

const folder = process.env["LOAMSHEET_SHOTS"] ?? mkdtempSync(path.join(tmpdir(), "loamsheet-shots-"));
let pages: BuiltPages;
let page: Page;
let troubles: readonly string[];

beforeAll(async () => {
  pages = await serveBuiltPages();
});
afterAll(() => pages.stop());
afterEach(() => page.context().close());

/** The page as a first visitor gets it, with the plan of the invented farm, and the part of the pane that draws. */
async function visit(options: Parameters<BuiltPages["open"]>[1]): Promise<void> {
  const opened = await pages.open("", options);
  ({ page, troubles } = opened);
  await until(() => page.evaluate(() => window.loamsheet !== undefined), "the workbook was open", 60);
  await page.waitForSelector(".finding", { timeout: 90_000 });
  await page.getByRole("button", { name: "What if", exact: true }).click();
  await page.getByRole("button", { name: "Draw them from the workbook" }).click();
  await page.waitForSelector("#drift-PotashLedger");
}

const read = (address: string) => page.evaluate((given) => window.loamsheet?.read(given), address);

/** The rows of a sheet by what stands first in them, from a heading on. */
async function rowsOf(sheet: string, heading?: string): Promise<(label: string | number) => readonly HostValue[]> {
  const { values = [] } = (await read(`'${sheet}'!A1:I60`)) ?? {};
  const rows = values.slice(heading === undefined ? 0 : values.findIndex(([first]) => first === heading));
  return (label) => rows.find(([first]) => first === label) ?? [];
}

const sheetsNow = () => page.evaluate(async () => (await window.loamsheet?.taken())?.sheets ?? []);
const shot = (name: string) => page.screenshot({ path: path.join(folder, `pictures-${name}.png`) });

/** Everything that stands on sheets with these names. */
const contentsOf = (names: readonly string[]) =>
  page.evaluate(async (wanted) => {
    const { sheets = [] } = (await window.loamsheet?.readSheets()) ?? {};
    return JSON.stringify(sheets.filter(({ name }) => wanted.includes(name)).map(({ formulas }) => formulas));
  }, names);

async function violations(): Promise<string[]> {
  await page.evaluate(axeSource);
  return page.evaluate(async () => {
    const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
    const { violations: found } = await window.axe.run(document.querySelector("#pane") ?? document, { runOnly: tags });
    return found.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(" ")}`));
  });
}

async function put(name: string, sheet: string): Promise<void> {
  await page.getByRole("button", { name: `Put into the workbook: ${name}` }).click();
  await until(async () => (await sheetsNow()).includes(sheet), `the sheet ${sheet} was added`, 90);
  await page.getByText(`It stands on the new sheet ${sheet},`).waitFor();
}

it("a grower puts the potash ledger on a sheet of its own, sees it follow the plan, and takes it away again", async () => {
  await visit({ viewport: { width: 1366, height: 1000 } });
  const before = await sheetsNow();
  const contents = await contentsOf(before);
  await put("potash balance by field, lb/ac a year", "Potash by field");
  expect(await sheetsNow()).toEqual([...before, "Potash by field"]);
  expect(await contentsOf(before)).toBe(contents);

  await page.waitForSelector(".loam-chart svg");
  const chart = page.locator(".loam-chart svg");
  expect(await chart.locator("title").textContent()).toBe("Potash by field, lb/ac a year");
  expect(await chart.locator("desc").textContent()).toContain("a bar for each field");
  await until(async () => (await chart.locator("rect").count()) > 10, "the chart was drawn with its ten bars");
  await shot("ledger-sheet");

  const rows = await read("'Potash by field'!A8:C17");
  const ledger = await read("PotashLedger[A year lb/ac]");
  const mine = rows?.values.map(([field, perYear]) => [field, perYear]);
  const names = (await read("PotashLedger[Field]"))?.values.map(([field]) => field) ?? [];
  expect(mine).toEqual(names.map((field, row) => [field, ledger?.values[row]?.[0]]));
  expect(rows?.values.find(([field]) => field === "Mill Road")?.[2]).toBe("▼ draws potash down by 31 lb/ac a year");

  // Home Quarter's yield goal up by 10 bu of soybean takes 11.5 lb K2O more over both crops, 5.75 a year.
  const home = Number(rows?.values.find(([field]) => field === "Home Quarter")?.[1]);
  await page.evaluate(() => window.loamsheet?.write([{ address: "Fields!F6", rows: [[72]] }], "typedValues"));
  await until(async () => {
    const now = await read("'Potash by field'!A8:B17");
    return Math.abs(Number(now?.values.find(([field]) => field === "Home Quarter")?.[1]) - (home - 5.75)) < 1e-6;
  }, "the picture followed the plan");

  const [download] = await Promise.all([page.waitForEvent("download"), page.getByText("Save as .xlsx").click()]);
  const files = unzipSync(readFileSync(await download.path()));
  const charts = Object.keys(files).filter((name) => /charts\/chart\d+\.xml$/.test(name));
  const drawn = charts.map((name) => strFromU8(files[name] ?? new Uint8Array()));
  expect(drawn.filter((xml) => xml.includes("'Potash by field'!"))).toHaveLength(1);

  await page.getByRole("button", { name: "Take it away again: the sheet Potash by field" }).click();
  expect(await violations()).toEqual([]);
  await page.getByRole("button", { name: "Take it away", exact: true }).click();
  await page.getByText("The sheet Potash by field is taken away.").waitFor();
  expect(await sheetsNow()).toEqual(before);
  expect(troubles).toEqual([]);
});

it("puts the profit grid and what moves profit there, tied to the sheet of the plan, from a dark narrow page", async () => {
  await visit({ viewport: { width: 400, height: 900 }, colorScheme: "dark" });
  const pane = await page.evaluate(
    () => getComputedStyle(document.querySelector("#pane .notebook") ?? document.body).backgroundColor,
  );
  const box = await page.locator("#ledger-PotashLedger svg").evaluate((svg) => {
    svg.scrollIntoView({ block: "center" });
    const { right, top } = svg.getBoundingClientRect();
    return { x: right - 2, y: top + 2 };
  });
  const ground = await colorAt(page, box.x, box.y);
  expect(pane).toBe(rgb(ground));
  await shot("ledger-dark");

  await put("profit grid", "Profit grid");
  await until(async () => Number((await rowsOf("Profit grid"))("Yield")[1]) > 0, "the sheet was worked out");
  const grid = await rowsOf("Profit grid");
  const tried = ["Yield", "Price", "Costs before hauling", "Hauling and drying", "Other income"];
  const [yields = 0, price = 0, cost = 0, perBushel = 0, other = 0] = tried.map((label) => Number(grid(label)[1]));
  expect(tried.map((label) => grid(label)[3])).toEqual(tried.map(() => "Live: follows your workbook."));
  expect(Number(grid(yields)[4])).toBeCloseTo(yields * (price - perBushel) + other - cost, 6);
  await shot("grid-sheet");

  await page.fill("#what-if-yield-low", "40");
  await page.fill("#what-if-yield-high", "70");
  await page.waitForSelector("#tornado");
  await put("what moves profit most", "What moves profit");
  await page.waitForSelector(".loam-chart svg");
  const swing = async () => (await rowsOf("What moves profit", "Figure"))("Yield");
  await until(async () => typeof (await swing())[8] === "number", "its swings were worked out");
  const row = await swing();
  const each = price - perBushel;
  expect(row.slice(0, 5)).toEqual(["Yield", "bu/ac", 40, yields, 70]);
  expect(Number(row[7])).toBeCloseTo((40 - yields) * each, 6);
  expect(Number(row[8])).toBeCloseTo((70 - yields) * each, 6);
  expect(troubles).toEqual([]);
});

function rgb(color: string): string {
  const parts = [1, 3, 5].map((from) => parseInt(color.slice(from, from + 2), 16));
  return `rgb(${parts.join(", ")})`;
}
