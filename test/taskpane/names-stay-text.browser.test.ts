import type { Page } from "playwright-core";
import { openGrid } from "../browser/open-grid";
import { serveBuiltPages, until, type BuiltPages, type OpenedPage } from "../browser/page";

/**
 * What people call a farm, a field, a sheet, a trial or a client is text wherever it is shown. The page is opened without
 * its content policy, so that whatever became markup would run, and be noticed.
 */
jest.setTimeout(120_000);

const farm = `"><svg onload="ran=1"><img src=x onerror="ran=1">`;
const field = `<img src=x onerror="ran=1">`;
const otherField = `</text></svg><script>ran=1</script>`;
const sheet = "<img src=x onerror=ran=1>";
const said = `</title><script>ran=1</script><svg onload="ran=1">`;

let pages: BuiltPages;
let opened: OpenedPage;
let page: Page;
const { ready, read, value, type, select } = openGrid(() => page);

/** A button of ours: the grid has some of the same name. */
const press = (name: string) =>
  page.locator("#pane, .workbook-foot").getByRole("button", { name, exact: true }).click();
const show = (address: string) => page.evaluate((given) => window.loamsheet?.show(given), address);
const paneText = () => page.locator("#pane").innerText();
const paneSays = (text: string) => until(async () => (await paneText()).includes(text), `the pane said ${text}`);
const sheetsNow = async () => (await page.evaluate(() => window.loamsheet?.taken()))?.sheets ?? [];

beforeAll(async () => {
  pages = await serveBuiltPages();
  opened = await pages.open("index.html", { bypassCSP: true });
  page = opened.page;
  page.setDefaultTimeout(30_000);
  await ready();
  await page.evaluate(watch);
  await type("A1", field);
  await type("B1", "=LOAM.BUSHELWEIGHT(A1)");
  await page.selectOption("#start-guide", "IN-MI-OH");
  await page.fill("#start-farm", farm);
  await press("Fill the workbook");
  await page.waitForSelector("#start-done");
});
afterAll(() => pages.stop());

/** Notes every element that may run something, be it there for a moment only. */
function watch(): void {
  const risky = `[onload], [onerror], img[src="x"], script:not([src])`;
  const found: string[] = [];
  new MutationObserver((changes) => {
    for (const node of changes.flatMap(({ addedNodes }) => [...addedNodes])) {
      if (!(node instanceof Element)) continue;
      const all = [node, ...node.querySelectorAll("*")].filter((one) => one.matches(risky));
      found.push(...all.map(({ outerHTML }) => outerHTML));
    }
  }).observe(document, { childList: true, subtree: true });
  // Printing is a copy of a part of the page; this is what stood on it.
  const printed: string[] = [];
  window.print = () => {
    printed.push(document.querySelector(".print-page")?.textContent ?? "");
    dispatchEvent(new Event("afterprint"));
  };
  Object.assign(window, { found, printed });
}

const noted = (name: string): Promise<unknown> => page.evaluate((key) => Reflect.get(window, key), name);

afterEach(async () => {
  expect(await noted("found")).toEqual([]);
  expect(await noted("ran")).toBeUndefined();
  // The bar of tabs says this of a sheet renamed before sheets are added, and does no harm.
  expect(opened.troubles.filter((trouble) => !trouble.startsWith("Index out of bounds"))).toEqual([]);
});

it("in the cells, behind an apostrophe as well, on the tabs and beside a cell without a number", async () => {
  const rowOf = async (name: string, of: string) => 1 + (await read(`'${of}'!A1:A20`)).values.flat().indexOf(name);
  const millRoad = await rowOf("Mill Road", "Fields");
  await page.evaluate(([address, name]) => window.loamsheet?.write([{ address, rows: [[name]] }], "typedValues"), [
    `'Soil tests'!A${await rowOf("Mill Road", "Soil tests")}`,
    field,
  ] as const);
  await show("Fields!A1");
  await type("A6", "'=1+1");
  await type(`A${millRoad}`, field);
  await type("A7", otherField);
  expect((await read("Fields!A6:A7")).formulas.flat()).toEqual(["=1+1", otherField]);
  expect([await value("Fields!A6"), await value(`Fields!A${millRoad}`)]).toEqual(["=1+1", field]);

  await page.locator('[data-u-comp="slide-tab-item"]', { hasText: "Fields" }).first().dblclick();
  await page.keyboard.press("Control+a");
  await page.keyboard.type(sheet);
  await page.keyboard.press("Enter");
  await until(async () => (await sheetsNow()).includes(sheet), "the sheet was renamed");

  await show("Sheet1!A1");
  const note = page.getByText(`crop "${field}" is not known here`);
  for (let y = 100; (await note.count()) === 0; y = y > 300 ? 100 : y + 6) {
    await page.mouse.move(185, y);
    await page.waitForTimeout(100);
  }
});

it("in the readable table and in the drawings of a sheet", async () => {
  await show("'Potash ledger'!A1");
  const drawn = page.locator("#grid svg[role=img]");
  await until(async () => (await drawn.allTextContents()).join().includes("<img"), "the chart was drawn");
  await press("Read this sheet as a table");
  const table = page.locator("#sheet-table");
  expect(await table.locator("table").innerText()).toContain(field);
  expect(await table.locator("table").innerText()).toContain(otherField);
  expect((await table.locator("svg").allTextContents()).join()).toContain("<img");
  await press("Back to the grid");
  await show("Sheet1!A1");
  await press("Read this sheet as a table");
  expect(await table.innerText()).toContain(`crop "${field}" is not known here`);
  await press("Back to the grid");
});

it("in the overview and in the summary that is printed from it", async () => {
  await press("Overview");
  await paneSays(`${farm}: what its plan says`);
  await paneSays(`${field} is drawing potash down`);
  await page.fill("#print-by", said);
  await page.fill("#print-note", farm);
  await press("Print the summary");
  const [paper = ""] = (await noted("printed")) as string[];
  expect(paper).toContain(`Prepared by: ${said}`);
  expect(paper).toContain(`Note: ${farm}`);
  expect(paper).toContain(field);
});

it("in the working of a cell and in what is found in the workbook", async () => {
  await show("Sheet1!A1");
  await select("B1");
  await press("Show the working");
  await paneSays(`"${field}" is not known here`);
  await press("Check this workbook");
  await paneSays(`"${field}" is not known here`);
});

it("in a scenario and in the pictures of what if", async () => {
  await press("What if");
  await until(async () => (await page.inputValue("#what-if-yield")) !== "", "the plan was read");
  await page.fill("#what-if-name", said);
  await press("Keep it beside the others");
  expect(await page.locator(".side-by-side-table thead").innerText()).toContain(said);
  await press("Draw them from the workbook");
  await page.waitForSelector("#drift-PotashLedger");
  expect(await page.locator("#drift-PotashLedger svg").textContent()).toContain(field);
});

it("in a strip trial, its map and the map on paper", async () => {
  await press("Strip trials");
  await page.fill("#trial-name", said);
  await page.fill("#trial-treatments", `${field}\n${otherField}`);
  for (const [id, text] of Object.entries({ blocks: "4", width: "20", length: "600" })) {
    await page.fill(`#trial-${id}`, text);
  }
  await page.click("#trial-make");
  await page.waitForSelector("#trial-map");
  expect(await page.locator("#trial-map svg").textContent()).toContain(`Strips of ${said}`);
  expect(await page.locator("#trial-map").innerText()).toContain(otherField);
  await press("Print the map");
  const papers = (await noted("printed")) as string[];
  expect(papers.at(-1)).toContain(`Strips of ${said}`);
  expect(papers.at(-1)).toContain(otherField);
});

it("in a list of clients, and in the list of workbooks", async () => {
  await press("Many clients");
  await press("Put an example list here");
  await page.waitForSelector("#clients-guide");
  const list = (await sheetsNow()).at(-1) ?? "";
  const rows = (await read(`'${list}'!A1:J12`)).values;
  const head = rows.findIndex((row) => row.includes("Acres"));
  await show(`'${list}'!A1`);
  await type(`A${head + 2}`, field);
  await select(`${"ABCDEFGHIJ"[rows[head]?.indexOf("Crop") ?? 0]}${head + 2}`);
  await page.keyboard.press("Delete");
  await press("Read the list again");
  await paneSays(field);

  await press("Workbooks");
  await page.fill("#shelf-title", said);
  await press("Rename");
  await paneSays(`The workbook is now called ${said}.`);
  expect(await page.locator(".shelf-title").allInnerTexts()).toEqual([said]);
});
