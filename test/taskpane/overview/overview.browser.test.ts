import { source as axeSource } from "axe-core";
import { strFromU8, unzipSync } from "fflate";
import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { execFileSync } from "node:child_process";
import { Workbook } from "exceljs";
import type { Page } from "playwright-core";
import { serveBuiltPages, until, type BuiltPages, type OpenedPage } from "../../browser/page";
import { clientRows, head } from "../clients/client-rows";

jest.setTimeout(300_000);

let pages: BuiltPages;
let opened: OpenedPage;
let page: Page;

beforeAll(async () => {
  pages = await serveBuiltPages();
});
afterAll(() => pages.stop());
afterEach(() => opened.context.close());

async function visit(file: string, options?: Parameters<BuiltPages["open"]>[1]): Promise<void> {
  opened = await pages.open(file, options);
  page = opened.page;
  await until(() => page.evaluate(() => window.loamsheet !== undefined), "the workbook was open", 60);
}

const sheetsNow = () => page.evaluate(async () => (await window.loamsheet?.taken())?.sheets ?? []);

async function violations(): Promise<string[]> {
  await page.evaluate(axeSource);
  return page.evaluate(async () => {
    const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
    const { violations: found } = await window.axe.run(document.querySelector("#pane") ?? document, { runOnly: tags });
    return found.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(" ")}`));
  });
}

async function type(address: string, text: string): Promise<void> {
  const box = page.locator('#grid [data-u-comp="defined-name"] input');
  await box.click();
  await box.fill(address);
  await box.press("Enter");
  await page.waitForTimeout(200);
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
}

it("shows a first visitor what the invented farm's plan says, leads to the cell, and makes room for one's own", async () => {
  await visit("");
  expect(await page.locator("h2").first().innerText()).toBe("Overview");
  await page.waitForSelector(".finding", { timeout: 60_000 });
  expect(await page.locator(".overview").innerText()).toContain(
    "Windmill Hollow Farm is an invented farm of 1,480 acres.",
  );
  expect(await page.locator(".finding").count()).toBe(3);
  expect(await sheetsNow()).toContain("Summary");

  await page.getByRole("button", { name: "Go to the sheet Potash ledger" }).click();
  await until(async () => {
    const selection = await page.evaluate(() => window.loamsheet?.readSelection());
    return selection?.address.startsWith("'Potash ledger'!") === true && Number(selection.values[0]?.[0]) < -30;
  }, "the cell of Mill Road was selected");

  // Nothing was typed, so nothing is kept: the next visit begins the same way.
  await page.reload();
  await page.waitForSelector(".finding", { timeout: 60_000 });
  await page.getByRole("button", { name: "Make it mine" }).click();
  await page.waitForSelector("#start-heading");
  expect(await sheetsNow()).toEqual([]);
  expect(opened.foreign).toEqual([]);
});

it("keeps an example that was typed into, and opens to kept work with the overview one click away", async () => {
  await visit("");
  await page.waitForSelector(".finding", { timeout: 60_000 });
  await page.evaluate(() => window.loamsheet?.show("Fields!F6"));
  await type("F6", "75");
  await until(async () => (await page.locator("#page-status").innerText()) === "Kept in this browser.", "it was kept");
  await page.reload();
  await until(() => page.evaluate(() => window.loamsheet !== undefined), "the workbook was open", 60);
  expect(await page.locator("h2").first().innerText()).toBe("Start a workbook");
  const kept = await page.evaluate(() => window.loamsheet?.read("Fields!F6"));
  expect(kept?.values).toEqual([[75]]);
  await page.getByRole("button", { name: "Overview" }).click();
  await page.waitForSelector(".finding");
});

it.each(["light", "dark"] as const)(
  "has no violation that axe finds at 320 px, the overview first, %s",
  async (scheme) => {
    await visit("", { viewport: { width: 320, height: 700 }, colorScheme: scheme });
    await page.waitForSelector(".finding", { timeout: 60_000 });
    expect(await violations()).toEqual([]);
    const top = (part: string) => page.locator(part).evaluate((element) => element.getBoundingClientRect().top);
    expect(await top("#pane")).toBeLessThan(await top("#grid"));
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    await page.getByRole("button", { name: "Many clients" }).click();
    await page.waitForSelector("#clients-list");
    expect(await violations()).toEqual([]);
  },
);

it("prints the summary on one page with name, date, note, numbers and described charts", async () => {
  await visit("");
  await page.waitForSelector(".finding", { timeout: 60_000 });
  await page.fill("#print-by", "A. Adviser");
  await page.fill("#print-date", "2027-01-15");
  await page.fill("#print-note", "For the talk on Friday.");
  // The program's own print window would take the page away before it can be looked at.
  await page.evaluate(() => {
    window.print = () => undefined;
  });
  await page.getByRole("button", { name: "Print the summary" }).click();
  const drawings = page.locator(".print-summary svg");
  expect(await drawings.count()).toBeGreaterThanOrEqual(2);
  for (const text of await drawings.locator("desc").allTextContents()) expect(text.length).toBeGreaterThan(20);
  const folder = mkdtempSync(path.join(tmpdir(), "loamsheet-print-"));
  const file = path.join(process.env["LOAMSHEET_PRINTED"] ?? folder, "summary.pdf");
  await page.pdf({
    path: file,
    format: "Letter",
    margin: { top: "1cm", bottom: "1cm", left: "1.2cm", right: "1.2cm" },
  });
  const text = execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" });
  for (const words of [
    "Windmill Hollow Farm, next season",
    "A. Adviser",
    "January 15, 2027",
    "For the talk on Friday.",
  ]) {
    expect(text).toContain(words);
  }
  expect(text).toMatch(/Left over all costs.*\$37,919/);
  expect(text).toContain("drawing potash down by 31 lb/ac a year");
  expect(text).not.toContain("Make it mine");
  // A form feed ends each page.
  expect(text.split("\f").length - 1).toBe(1);
});

it("makes fifty clients' workbooks into one zip from a list typed into the grid", async () => {
  await visit("index.html", { acceptDownloads: true });
  await page.evaluate(
    async (rows) => {
      await window.loamsheet?.write([{ address: `Sheet1!A1:J${rows.length}`, rows }], "nothing");
    },
    [head, ...clientRows(50)],
  );
  await page.getByRole("button", { name: "Many clients" }).click();
  await page.getByText("Sheet1: 50 clients, 100 fields.").waitFor();
  await page.selectOption("#clients-guide", "IN-MI-OH");
  await page.fill("#clients-by", "A. Adviser");
  await page.fill("#clients-date", "2027-01-15");
  await page.check("#clients-as-files");
  const [download] = await Promise.all([
    page.waitForEvent("download", { timeout: 240_000 }),
    page.getByRole("button", { name: "Make 50 budgets" }).click(),
  ]);
  expect(download.suggestedFilename()).toBe("Client budgets 2027-01-15.zip");
  const files = unzipSync(new Uint8Array(readFileSync(await download.path())));
  expect(Object.keys(files)).toHaveLength(50);
  const bytes = files["Client 7 client budget.xlsx"];
  if (!bytes) throw new Error(`The zip holds ${Object.keys(files).join(", ")}.`);
  expect(strFromU8(bytes.slice(0, 2))).toBe("PK");
  const book = new Workbook();
  await book.xlsx.load(Buffer.from(bytes).buffer);
  const today = book.getWorksheet("Fields today");
  const south = today?.getRows(1, 12)?.find((row) => row.getCell(1).value === "South");
  expect(south?.getCell(2).value).toBe(47);
  const report = book.getWorksheet("Client report");
  expect(report?.getCell("A1").result).toBe("Client 7, next season");
  expect([report?.getCell("B4").result, report?.getCell("B5").result]).toEqual(["A. Adviser", "January 15, 2027"]);
  expect(opened.foreign).toEqual([]);
});
