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
  type Stop,
} from "../browser/accessibility";
import { PanePages } from "./pane-page";
import { openFunction, screens } from "./screens";

jest.setTimeout(180_000);

let pages: PanePages;
/** Where pictures of every screen go, to be looked at. */
const folder = process.env["LOAMSHEET_SHOTS"];
const schemes = ["light", "dark"] as const;

beforeAll(async () => {
  pages = await PanePages.open();
});
afterAll(() => pages.close());

async function picture(page: Page, name: string, look: string): Promise<void> {
  if (folder === undefined) return;
  await page.screenshot({ path: path.join(folder, `${name.replace(/\W+/g, "-")}.${look}.png`), fullPage: true });
}

/** Opens each screen once, and looks at it in every way a person may have set the machine to. */
it.each(Object.entries(screens))("%s", async (name, { kind, come, escape }) => {
  const { page, complaints } = await pages.page({
    ...(kind && { kind }),
    ...{ colorScheme: "light", reducedMotion: "reduce", deviceScaleFactor: 2 },
  });
  await come(page);
  await prepare(page);
  await page.evaluate(() => scrollTo(0, 0));
  const found: Record<string, readonly string[]> = {
    "at 320 px": [...(await violations(page)), ...(await cutOff(page, "body"))],
    "headings that skip a step": await skippedHeadings(page, "body"),
    "small targets": await smallTargets(page, "body"),
  };
  await page.locator("button:visible").last().hover();
  found["moving where no motion is wanted"] = await motions(page, "body");
  await page.emulateMedia({ colorScheme: "dark" });
  found["dark"] = await violations(page, { rules: ["color-contrast"] });
  await picture(page, name, "dark");
  for (const colorScheme of schemes) {
    await page.emulateMedia({ forcedColors: "active", colorScheme });
    const faint = [...(await violations(page, { rules: ["color-contrast"] })), ...(await faintThings(page, "body"))];
    found[`in forced colors, ${colorScheme}`] = faint;
    await picture(page, name, `forced-${colorScheme}`);
  }
  await page.emulateMedia({ forcedColors: "none", colorScheme: "light" });
  // A pane of 400 px at twice its size, as the browser's own zoom has it.
  await page.setViewportSize({ width: 200, height: 350 });
  found["at 200 %"] = [...(await cutOff(page, "body")), ...(await violations(page, { rules: ["target-size"] }))];
  await picture(page, name, "zoomed");
  await page.setViewportSize({ width: 320, height: 700 });
  await page.evaluate(() => (document.documentElement.style.fontSize = "200%"));
  found["with letters of twice the size"] = await cutOff(page, "body");
  await page.evaluate(() => (document.documentElement.style.fontSize = ""));
  Object.assign(found, troubles(await tabThrough(page, "#pane")));
  const nothing = Object.fromEntries(Object.keys(found).map((way) => [way, []]));
  expect(found).toEqual(nothing);
  if (escape) {
    await page.locator(`${escape.closes} button`).first().focus();
    await page.keyboard.press("Escape");
    expect(await page.locator(escape.closes).count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe(escape.to);
  }
  expect(complaints).toEqual([]);
  await page.context().close();
});

/** What a person who goes from stop to stop would miss. */
function troubles(stops: readonly Stop[]): Record<string, readonly string[]> {
  return {
    "focus out of order": outOfOrder(stops),
    "focus unseen": stops.filter(({ unseen }) => unseen !== "").map(({ what, unseen }) => `${what}: ${unseen}`),
    "without a name": stops.filter((stop) => stop.name.trim() === "").map(({ what }) => what),
    "named otherwise than shown": stops
      .filter((stop) => !spoken(stop.name).includes(spoken(stop.shown)))
      .map(({ shown, name }) => `${shown}: ${name}`),
  };
}

/** Words without signs that nobody says. */
function spoken(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^a-z0-9$%]+/g, " ")
    .trim();
}

it.each(schemes)("shows the focus in forced colors, %s", async (colorScheme) => {
  const { page } = await pages.page({ colorScheme, forcedColors: "active" });
  await prepare(page);
  const stops = await tabThrough(page, "#pane");
  expect(stops.length).toBeGreaterThan(20);
  expect(troubles(stops)["focus unseen"]).toEqual([]);
  await page.context().close();
});

/** An order given to the pane, the part that is read aloud then, and something of what it says. */
interface Order {
  readonly come?: (page: Page) => Promise<unknown>;
  readonly order: string;
  readonly aloud: string;
  readonly says: string;
}

const orders: readonly Order[] = [
  { order: "Save as .xlsx", aloud: ".strip > [role=status]", says: "windmill-hollow.xlsx is saved" },
  {
    come: (page) => openFunction(page, "REMOVAL"),
    order: "Fill in the example",
    aloud: "#function-answer",
    says: "lb/ac",
  },
  {
    order: "Put the formula into the selected cell",
    aloud: ".arguments > .outcome",
    says: "The formula stands in the selected cell.",
  },
  {
    async come(page) {
      await open(page, "Show the working");
      await page.evaluate(() => {
        window.host.selected = "Fields!E2";
      });
    },
    order: "Read the selected cell",
    aloud: ".view > [role=status]",
    says: "41 lb/ac",
  },
  {
    come: (page) => open(page, "What if"),
    order: "Keep it beside the others",
    aloud: "[aria-labelledby=what-if-scenarios] > [role=status]",
    says: "Give it a name first.",
  },
  {
    async come(page) {
      await open(page, "Strip trials");
      await page.fill("#trial-treatments", "check\nfungicide");
      await page.click("#trial-make");
      await page.waitForSelector("#trial-map");
    },
    order: "Put it into the strips",
    aloud: ".field > [role=status]",
    says: "There is nothing to put in yet.",
  },
  {
    come: (page) => open(page, "Check this workbook"),
    order: "Look it over",
    aloud: ".check-status",
    says: "to ask about",
  },
  {
    come: (page) => open(page, "About"),
    order: "Empty all of it and forget it",
    aloud: "[aria-labelledby=about-data] > [role=status]",
    says: "nothing is remembered",
  },
  { order: "Check Loamsheet", aloud: "[aria-labelledby=about-check] > [role=status]", says: "Functions registered: " },
];

const open = (page: Page, name: string) => page.getByRole("button", { name, exact: true }).click();

it("says aloud what came of an order, in a part that was there before it", async () => {
  const { page } = await pages.page({ kind: "browser" });
  for (const { come, order, aloud, says } of orders) {
    await come?.(page);
    const part = page.locator(aloud);
    const before = await part.evaluateAll((parts) => parts.map((one) => one.checkVisibility() && one.role));
    expect([order, before]).toEqual([order, ["status"]]);
    await page.getByRole("button", { name: order }).click();
    await part.filter({ hasText: says }).waitFor();
  }
  await page.context().close();
});
