import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import type { WrittenBlock } from "../../../src/hosts/port";
import { serveBuiltPages, until, type BuiltPages } from "../../browser/page";

jest.setTimeout(120_000);

let pages: BuiltPages;
let page: Page;

beforeAll(async () => {
  pages = await serveBuiltPages();
});
afterAll(() => pages.stop());

async function write(blocks: WrittenBlock[]): Promise<void> {
  await page.evaluate(async (given) => {
    await window.loamsheet?.write(given, "formulas");
  }, blocks);
}

/** The address of the first cell whose row starts with this word, under this heading. */
async function cellOf(sheet: string, row: string, head: string): Promise<string> {
  const address = await page.evaluate(
    async ([name, word, heading]) => {
      const read = (await window.loamsheet?.readSheets())?.sheets.find((one) => one.name === name);
      if (!read) return undefined;
      const column = read.values.flatMap((cells) => cells.flatMap((cell, at) => (cell === heading ? [at] : [])))[0];
      const down = read.values.findIndex((cells) => cells[0] === word && typeof cells[column ?? 0] !== "string");
      return column === undefined || down < 0 ? undefined : `${String.fromCharCode(65 + column)}${down + 1}`;
    },
    [sheet, row, head] as const,
  );
  if (address === undefined) throw new Error(`no ${row}, ${head} on ${sheet}`);
  return address;
}

const selected = () => page.evaluate(async () => (await window.loamsheet?.readSelection())?.address);
const sentences = () => page.locator(".check-list > li > p").allTextContents();

it("a grower is led from the check to the cell, mends it, and takes it back", async () => {
  const opened = await pages.open("index.html");
  page = opened.page;
  await until(() => page.evaluate(() => window.loamsheet !== undefined), "the workbook was open");
  await page.getByRole("button", { name: "Start a workbook" }).click();
  await page.selectOption("#start-guide", "IN-MI-OH");
  await page.getByRole("button", { name: "Fill the workbook" }).click();
  await page.waitForSelector("#start-done");

  await page.getByRole("button", { name: "Check this workbook" }).click();
  // The invented farm has three passes that lean on one herbicide group; nothing else is asked about.
  await page.getByText("3 things to ask about.").waitFor();
  expect(await page.locator(".view h3").allTextContents()).toEqual(["One herbicide group alone"]);

  const price = await cellOf("Assumptions", "corn", "Price $/bu");
  const cost = await cellOf("Lime plan", "Sand Knob", "Cost $/ac");
  const before = await page.evaluate(
    async (cell) => (await window.loamsheet?.read(`'Lime plan'!${cell}`))?.values,
    cost,
  );
  await write([
    { address: `Assumptions!${price}`, rows: [[450]] },
    { address: `'Lime plan'!${cost}`, rows: [[12]] },
  ]);
  await page.getByRole("button", { name: "Look it over" }).click();
  await page.getByText("5 things to ask about.").waitFor();
  expect((await sentences()).slice(0, 2)).toEqual([
    "▲ Price $/bu, corn: 450. A price is usually between 0.5 and 60 $/bu.",
    "▲ Sand Knob: Cost $/ac is 12, typed by hand.",
  ]);

  await page.getByRole("button", { name: `Go to Assumptions ${price}` }).click();
  await until(async () => (await selected()) === `Assumptions!${price}`, "the price was selected");
  await page.getByRole("button", { name: `Put the formula back into Lime plan ${cost}` }).click();
  await page.getByRole("button", { name: "Write the formula" }).click();
  await page.getByText(`The formula stands in Lime plan ${cost} again.`).waitFor();
  const value = () =>
    page.evaluate(async (cell) => (await window.loamsheet?.read(`'Lime plan'!${cell}`))?.values, cost);
  await until(async () => String(await value()) === String(before), "the formula answered as before");

  await page.evaluate(readFileSync(require.resolve("axe-core/axe.min.js"), "utf8"));
  const violations = await page.evaluate(async () => {
    const pane = document.getElementById("pane");
    const { violations: found } = await window.axe.run(pane ?? document, {
      runOnly: ["wcag2a", "wcag2aa", "wcag22aa"],
    });
    return found.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(" ")}`));
  });
  expect(violations).toEqual([]);

  await page.getByRole("button", { name: "Undo what was written" }).click();
  await page.getByText("It is as it was before.").waitFor();
  expect(await value()).toEqual([[12]]);
  expect(opened.foreign).toEqual([]);
});
