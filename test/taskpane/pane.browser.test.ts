import type { Page } from "playwright-core";
import { views } from "../../src/taskpane/pane/state";
import { words } from "../../src/taskpane/words";
import { PanePages, type WatchedPage } from "./pane-page";

jest.setTimeout(120_000);

let pages: PanePages;
const open: WatchedPage[] = [];

beforeAll(async () => {
  pages = await PanePages.open();
});

afterAll(async () => {
  await pages.close();
});

/** The browser itself has nothing to complain about: no refused script, style or sound of alarm. */
afterEach(async () => {
  const complaints = open.flatMap((watched) => watched.complaints);
  await Promise.all(open.splice(0).map(({ page }) => page.context().close()));
  expect(complaints).toEqual([]);
});

async function pane(options: Parameters<PanePages["page"]>[0] = {}): Promise<Page> {
  const watched = await pages.page(options);
  open.push(watched);
  return watched.page;
}

describe("by keyboard", () => {
  /** Presses Tab until the focus leaves the page, and names what it met. */
  async function walk(page: Page, key: "Tab" | "Shift+Tab"): Promise<string[]> {
    const met: string[] = [];
    for (let step = 0; step < 200; step++) {
      await page.keyboard.press(key);
      const here = await page.evaluate(() => {
        const at = document.activeElement;
        return at === null || at === document.body ? "" : at.id || (at.textContent ?? "");
      });
      if (here === "") return met;
      met.push(here);
    }
    throw new Error(`The focus goes round in circles: ${met.slice(-8).join(", ")}`);
  }

  it("goes through everything and out again, forwards and backwards", async () => {
    const page = await pane();
    const forwards = await walk(page, "Tab");
    const parts = views.map((view) => words.pane.views[view]);
    expect(forwards.slice(0, parts.length)).toEqual(parts);
    expect(forwards.at(-1)).toBe("start-fill");
    const backwards = await walk(page, "Shift+Tab");
    expect(backwards.at(-1)).toBe("Overview");
  });

  it("starts a workbook without a mouse", async () => {
    const page = await pane();
    await page.focus("#start-guide");
    await page.keyboard.type("Ind");
    await page.focus("#start-farm");
    await page.keyboard.press("Enter");
    await page.waitForSelector("#start-done");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("start-done");
    expect(await page.evaluate(() => window.host.fills.length)).toBe(1);
  });

  it("works a function out and puts it into the sheet without a mouse", async () => {
    const page = await pane();
    await page.getByRole("button", { name: "Find a function" }).focus();
    await page.keyboard.press("Enter");
    await page.keyboard.press("Tab");
    await page.keyboard.type("what do my crops cary off");
    await page.focus("#find-REMOVAL");
    await page.keyboard.press("Enter");
    await page.focus("#argument-crop");
    await page.keyboard.type("corn");
    await page.evaluate(() => {
      window.host.selected = "Fields!D2";
    });
    await page.focus("#pick-yield");
    await page.keyboard.press("Enter");
    await page.waitForSelector(".picked");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("pick-yield");
    await page.focus("#argument-nutrient");
    await page.keyboard.type("K2O");
    // 205 bu × 0.20 lb/bu = 41 lb.
    expect(await page.textContent("#function-answer .big-number")).toBe("41 lb/ac");
    await page.evaluate(() => {
      window.host.selected = "Fields!H2";
    });
    await page.focus("#function-insert");
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => window.host.inserted.length === 1);
    expect(await page.evaluate(() => window.host.inserted)).toEqual(['=LOAM.REMOVAL("corn", Fields!D2, "K2O")']);
  });

  it("keeps the caret where it is while one types in the middle of a name", async () => {
    const page = await pane();
    await page.focus("#start-farm");
    await page.keyboard.press("Home");
    await page.keyboard.type("Old ");
    expect(await page.inputValue("#start-farm")).toBe("Old Windmill Hollow Farm");
  });
});

describe("its place in the window", () => {
  it("leaves 34 by 32 px free at the top right", async () => {
    const page = await pane();
    const inTheCorner = await page.evaluate(() => {
      const { clientWidth } = document.documentElement;
      return [...document.querySelectorAll(".notebook h1, .notebook button, .notebook li")].filter((part) => {
        const { right, top } = part.getBoundingClientRect();
        return right > clientWidth - 34 && top < 32;
      }).length;
    });
    expect(inTheCorner).toBe(0);
  });

  it("keeps the scroll bar's place, so that nothing jumps sideways", async () => {
    const page = await pane();
    expect(await page.evaluate(() => getComputedStyle(document.body).overflowY)).toBe("scroll");
  });
});

describe("beside a grid", () => {
  it("moves the focus to what it asks about a kept workbook", async () => {
    const page = await pane({ kind: "browser", viewport: { width: 372, height: 600 } });
    await page.getByRole("button", { name: "Workbooks" }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("shelf-heading");
    await page.getByRole("button", { name: "Remove A landlord's half of Mill Road" }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("shelf-question");
  });
});
