import path from "node:path";
import type { Page } from "playwright-core";
import {
  cutOff,
  faintThings,
  motions,
  outOfOrder,
  prepare,
  skippedHeadings,
  smallTargets,
  tabThrough,
  violations,
} from "../../browser/accessibility";
import { serveBuiltPages, type BuiltPages } from "../../browser/page";

jest.setTimeout(180_000);

let pages: BuiltPages;
/** Where pictures of the page go, to be looked at. */
const folder = process.env["LOAMSHEET_SHOTS"];
/** The drawn grid, with the hints it shows beside itself, is another's work; the table beside it is the way in. */
const without = ["#grid", "body > [class*=univer]"];
const focused = (page: Page) => page.evaluate(() => document.activeElement?.id);

beforeAll(async () => {
  pages = await serveBuiltPages();
});
afterAll(() => pages.stop());

async function picture(page: Page, look: string): Promise<void> {
  if (folder !== undefined) await page.screenshot({ path: path.join(folder, `page.${look}.png`), fullPage: true });
}

const sideways = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

it("shows an overview that everyone can read and go through", async () => {
  const { page, context, troubles } = await pages.open("", {
    viewport: { width: 1366, height: 820 },
    ...{ colorScheme: "light", reducedMotion: "reduce", deviceScaleFactor: 2 },
  });
  await page.waitForSelector(".finding", { timeout: 90_000 });
  await prepare(page);
  const found: Record<string, readonly unknown[]> = {
    light: await violations(page, { without }),
    "headings that skip a step": await skippedHeadings(page, "#pane"),
    "small targets": [...(await smallTargets(page, "#pane")), ...(await smallTargets(page, ".workbook-foot"))],
    "moving where no motion is wanted": await motions(page, "#pane"),
  };
  const stops = await tabThrough(page, "#pane");
  found["focus out of order"] = outOfOrder(stops);
  found["focus unseen"] = stops.filter(({ unseen }) => unseen !== "");
  found["without a name"] = stops.filter(({ name }) => name === "");
  await page.emulateMedia({ colorScheme: "dark" });
  found["dark"] = await violations(page, { without, rules: ["color-contrast"] });
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme, forcedColors: "active" });
    const faint = await violations(page, { without, rules: ["color-contrast"] });
    found[`in forced colors, ${colorScheme}`] = [...faint, ...(await faintThings(page, "#pane"))];
    await picture(page, `forced-${colorScheme}`);
  }
  await page.emulateMedia({ colorScheme: "dark", forcedColors: "none" });
  // 1366 px at twice its size, and the narrowest page.
  for (const [width, height] of [
    [683, 410],
    [320, 700],
  ] as const) {
    await page.setViewportSize({ width, height });
    found[`at ${width} px`] = [
      ...(await violations(page, { without })),
      ...(await cutOff(page, "#pane")),
      ...(await cutOff(page, ".workbook-foot")),
    ];
    expect(await sideways(page)).toBe(0);
    await picture(page, String(width));
  }
  expect(found).toEqual(Object.fromEntries(Object.keys(found).map((way) => [way, []])));
  // Tab moves from cell to cell in the grid, so the way out of it is said wherever there are keys.
  expect(await page.getByText("F6: from the grid to the tools and back").isVisible()).toBe(true);
  expect(troubles).toEqual([]);
  await context.close();
});

it("has a way past the grid, and the sheet as a table, for those who use keys only", async () => {
  const { page, context } = await pages.open("index.html", { forcedColors: "active", reducedMotion: "reduce" });
  await page.waitForSelector("#pane .notebook");
  await page.waitForSelector("#grid canvas");
  await prepare(page);
  // The grid takes the keys as soon as it is drawn; nothing on the page may come before the link all the same.
  const first = await page.evaluate(() => {
    const stops = [...document.querySelectorAll<HTMLElement>("a[href], button, input, [tabindex]")];
    return (stops.find(({ tabIndex }) => tabIndex > 0) ?? stops[0])?.className;
  });
  expect(first).toBe("skip");
  await page.locator(".skip").focus();
  expect(await page.locator(".skip").evaluate((link) => link.getBoundingClientRect().top)).toBeGreaterThanOrEqual(0);
  await page.keyboard.press("Enter");
  expect(await focused(page)).toBe("pane");
  await page.evaluate(async () => {
    await window.loamsheet?.write(
      [
        {
          address: "Sheet1!A1:B2",
          rows: [
            ["Field", "Acres"],
            ["Mill Road", 80],
          ],
        },
      ],
      "nothing",
    );
  });
  await page.locator("#read-as-table").focus();
  await page.keyboard.press("Enter");
  expect(await focused(page)).toBe("sheet-table");
  expect(await violations(page)).toEqual([]);
  const stops = await tabThrough(page, ".workbook");
  expect(stops.map(({ what }) => what.slice(0, 24))).toEqual(["div#sheet-table", "button#read-as-table"]);
  expect(stops.map(({ unseen }) => unseen)).toEqual(["", ""]);
  await picture(page, "table-forced");
  await page.locator("#sheet-table").focus();
  await page.keyboard.press("Escape");
  expect(await focused(page)).toBe("read-as-table");
  await context.close();
});
