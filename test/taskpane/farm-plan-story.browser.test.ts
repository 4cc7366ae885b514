import { Workbook, type Cell } from "exceljs";
import type { Page } from "playwright-core";
import type { HostRange } from "../../src/hosts/port";
import { serveBuiltPages, until, type BuiltPages } from "../browser/page";

jest.setTimeout(120_000);

let pages: BuiltPages;
let page: Page;

beforeAll(async () => {
  pages = await serveBuiltPages();
});
afterAll(() => pages.stop());

function read(address: string): Promise<HostRange> {
  return page.evaluate((given) => {
    if (!window.loamsheet) throw new Error("no workbook");
    return window.loamsheet.read(given);
  }, address);
}

const value = async (address: string) => (await read(address)).values[0]?.[0];

async function type(sheet: string, address: string, text: string): Promise<void> {
  await page.locator('[data-u-comp="slide-tab-item"]', { hasText: sheet }).click();
  const box = page.locator('#grid [data-u-comp="defined-name"] input');
  await box.click();
  await box.fill(address);
  await box.press("Enter");
  await page.waitForTimeout(200);
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
}

/** Errors that a range shows; a #N/A by which a chart leaves a point out is none. */
function errorsOf({ values, formulas }: HostRange): string[] {
  const asked = formulas.flat();
  return values
    .flat()
    .map((shown, at) => (String(asked[at]).endsWith(",NA())") ? "" : String(shown)))
    .filter((shown) => /^#[A-Z/0!?]+$/.test(shown));
}

/** The number a spreadsheet keeps a date as: days from 30 December 1899. */
function serial(date: Date): number {
  return (date.getTime() - Date.UTC(1899, 11, 30)) / 86_400_000;
}

/** The number or text a second library finds stored in a cell; behind a formula it is the result. */
function stored(cell: Cell | undefined): unknown {
  if (!cell || cell.value === null) return "";
  if (cell.value instanceof Date) return serial(cell.value);
  if (cell.result instanceof Date) return serial(cell.result);
  // Its types know no result that is an error.
  const result: unknown = cell.result;
  if (cell.formula)
    return typeof result === "object" && result !== null && "error" in result ? result.error : (result ?? "");
  return typeof cell.value === "object" && "text" in cell.value ? cell.value.text : cell.value;
}

it("a grower fills the farm plan, changes a yield, sees the needs follow and takes the file along", async () => {
  const opened = await pages.open("index.html");
  page = opened.page;
  await until(() => page.evaluate(() => window.loamsheet !== undefined), "the workbook was open");
  await page.selectOption("#start-guide", "IN-MI-OH");
  await page.getByRole("button", { name: "Fill the workbook" }).click();
  await page.waitForSelector("#start-done");

  const { sheets } = await page.evaluate(async () => (await window.loamsheet?.taken()) ?? { sheets: [] });
  expect(sheets).toContain("Fertility plan");
  for (const sheet of sheets) {
    expect([sheet, errorsOf(await read(`'${sheet}'!A1:T80`))]).toEqual([sheet, []]);
  }

  // Home Quarter, soybean, Mehlich-3 P 34 and K 138 in the maintenance zone: 62 × 0.8 = 49.6 and 62 × 1.15 + 20 =
  // 91.3, to the nearest 5.
  expect([await value("'Fertility plan'!H6"), await value("'Fertility plan'!J6")]).toEqual([50, 90]);
  await type("Fields", "F6", "75");
  // 75 × 0.8 = 60; 75 × 1.15 + 20 = 106.25.
  await until(async () => (await value("'Fertility plan'!J6")) === 105, "the potash need followed the yield");
  expect(await value("'Fertility plan'!H6")).toBe(60);

  const [download] = await Promise.all([page.waitForEvent("download"), page.getByText("Save as .xlsx").click()]);
  const book = new Workbook();
  await book.xlsx.readFile(await download.path());
  expect(book.worksheets.map(({ name }) => name)).toEqual(sheets);
  for (const sheet of sheets) {
    const shown = (await read(`'${sheet}'!A1:T80`)).values;
    shown.forEach((row, r) =>
      row.forEach((cell, c) => {
        const kept = stored(book.getWorksheet(sheet)?.getCell(r + 1, c + 1));
        expect([sheet, r + 1, c + 1, kept]).toEqual([sheet, r + 1, c + 1, cell ?? ""]);
      }),
    );
  }
  expect(opened.troubles).toEqual([]);
  expect(opened.foreign).toEqual([]);
  await opened.context.close();
});
