import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { backgroundViews, mainViews } from "../../src/taskpane/pane/header/actions";
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

/** Each state of the pane that looks different from the others, and how to come there. */
const states: Readonly<Record<string, (page: Page) => Promise<unknown>>> = {
  "the fresh form": async () => undefined,
  "a refused form": async (page) => {
    await page.fill("#start-price-corn", "lots");
    await page.click("#start-fill");
    await page.waitForSelector("#start-summary");
  },
  "empty rows": (page) => page.check("#start-figures-empty"),
  "a filled workbook, asking about removal": async (page) => {
    await page.selectOption("#start-guide", "IN-MI-OH");
    await page.click("#start-fill");
    await page.waitForSelector("#start-done");
    await page.click("#start-ask");
  },
  "a refused fill": async (page) => {
    await page.evaluate(() => {
      window.host.refusal = { of: "fill", says: "The workbook is read-only. Save a copy of it first." };
    });
    await page.selectOption("#start-guide", "IN-MI-OH");
    await page.click("#start-fill");
    await page.waitForSelector("#start-refused");
  },
  "the list of functions, a family open": async (page) => {
    await page.getByRole("button", { name: "Find a function" }).click();
    await page.locator(".family-head button").first().click();
  },
  "functions found": async (page) => {
    await page.getByRole("button", { name: "Find a function" }).click();
    await page.fill("#find-query", "how much potash");
  },
  "the page of a function": async (page) => {
    await openFunction(page, "REMOVAL");
  },
  "the page of a function that fills a table": async (page) => {
    await openFunction(page, "PROFITGRID");
  },
  "the form of a function, one value from the sheet and one that does not fit": async (page) => {
    await openFunction(page, "REMOVAL");
    await page.getByRole("button", { name: "Fill in the example" }).click();
    await page.evaluate(() => {
      window.host.selected = "Fields!D2";
    });
    await page.click("#pick-yield");
    await page.waitForSelector(".picked");
    await page.fill("#argument-moisture", "150");
    await page.click("#function-insert");
    await page.waitForSelector("#argument-moisture-refusal");
  },
  "a working": async (page) => {
    await showWorking(page, "Fields!E2");
    await page.waitForSelector(".figures");
  },
  "a working to be copied by hand": async (page) => {
    await showWorking(page, "Fields!E2");
    await page.waitForSelector(".figures");
    await page.evaluate(() => Object.defineProperty(navigator, "clipboard", { value: undefined }));
    await page.getByRole("button", { name: "Copy as text" }).click();
    await page.waitForSelector("#working-text");
  },
  "a cell that shows an error": async (page) => {
    await showWorking(page, "Fields!E3");
    await page.waitForSelector(".is-waiting");
  },
  sources: (page) => page.getByRole("button", { name: "Sources" }).click(),
  about: (page) => page.getByRole("button", { name: "About" }).click(),
  "about, looked into": async (page) => {
    await page.getByRole("button", { name: "About" }).click();
    await page.check("#about-loads");
    await page.getByRole("button", { name: "Check Loamsheet" }).click();
    await page.waitForSelector(".about-found");
  },
  "a workbook looked over, asking about a formula": async (page) => {
    await page.getByRole("button", { name: "Check this workbook" }).click();
    await page.getByRole("button", { name: "Go to Plan C3" }).click();
    await page.getByRole("button", { name: "Put the formula back into Plan C3" }).click();
    await page.waitForSelector("#check-question");
  },
  "a workbook looked over, a formula put back": async (page) => {
    await page.getByRole("button", { name: "Check this workbook" }).click();
    await page.getByRole("button", { name: "Put the formula back into Plan C3" }).click();
    await page.getByRole("button", { name: "Write the formula" }).click();
    await page.getByRole("button", { name: "Undo what was written" }).waitFor();
  },
};

async function openFunction(page: Page, name: string): Promise<void> {
  await page.getByRole("button", { name: "Find a function" }).click();
  await page.fill("#find-query", name);
  await page.click(`#find-${name}`);
}

async function showWorking(page: Page, address: string): Promise<void> {
  await page.evaluate((cell) => {
    window.host.selected = cell;
  }, address);
  await page.getByRole("button", { name: "Show the working" }).click();
}

/** Violations of the rules of WCAG 2.2 AA that a program can see, with the places. */
async function violations(page: Page): Promise<string[]> {
  await page.evaluate(readFileSync(require.resolve("axe-core/axe.min.js"), "utf8"));
  return page.evaluate(async () => {
    const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
    const { violations: found } = await window.axe.run(document, { runOnly: tags });
    return found.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(" ")}`));
  });
}

async function sidewaysScroll(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

describe.each(Object.entries(states))("%s", (_name, come) => {
  it.each(["light", "dark"] as const)("has no violation that axe finds, %s", async (colorScheme) => {
    const page = await pane({ colorScheme });
    await come(page);
    expect(await violations(page)).toEqual([]);
  });

  it("fits 320 and 400 px, and 320 px with text at twice its size", async () => {
    const page = await pane({ viewport: { width: 320, height: 600 } });
    await come(page);
    const sideways = [await sidewaysScroll(page)];
    await page.setViewportSize({ width: 400, height: 600 });
    sideways.push(await sidewaysScroll(page));
    await page.setViewportSize({ width: 320, height: 600 });
    await page.evaluate(() => (document.documentElement.style.fontSize = "200%"));
    sideways.push(await sidewaysScroll(page));
    expect(sideways).toEqual([0, 0, 0]);
  });

  it("shows its controls in forced colors", async () => {
    const page = await pane({ forcedColors: "active" });
    await come(page);
    const faint = await page.evaluate(
      () =>
        [...document.querySelectorAll("button.button-plain, button.button-main, input[type=text]")].filter(
          (control) => {
            const { borderTopColor, borderTopWidth, backgroundColor } = getComputedStyle(control);
            return borderTopWidth === "0px" || borderTopColor === backgroundColor;
          },
        ).length,
    );
    expect(faint).toBe(0);
  });
});

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
    const parts = [...mainViews, ...backgroundViews].map((view) => words.pane.views[view]);
    expect(forwards.slice(0, parts.length)).toEqual(parts);
    expect(forwards.at(-1)).toBe("start-fill");
    const backwards = await walk(page, "Shift+Tab");
    expect(backwards.at(-1)).toBe("Overview");
  });

  it("shows where the focus is, on every stop", async () => {
    const page = await pane();
    await page.getByRole("button", { name: "Find a function" }).focus();
    await page.keyboard.press("Enter");
    for (let stop = 0; stop < 8; stop++) {
      await page.keyboard.press("Tab");
      const outline = await page.evaluate(() => getComputedStyle(document.activeElement ?? document.body).outlineWidth);
      expect(parseFloat(outline)).toBeGreaterThanOrEqual(2);
    }
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

  it("moves nothing for those who want no motion", async () => {
    const page = await pane({ reducedMotion: "reduce" });
    expect(
      await page.evaluate(
        () => getComputedStyle(document.querySelector("#start-fill") ?? document.body).transitionDuration,
      ),
    ).toBe("0s");
  });

  it("has targets of at least 24 px", async () => {
    const page = await pane();
    const small = await page.evaluate(() =>
      [...document.querySelectorAll("button, input[type=text]")]
        .filter((control) => control.getBoundingClientRect().height < 24)
        .map((control) => control.textContent),
    );
    expect(small).toEqual([]);
  });
});

describe("beside a grid", () => {
  it("has no violation that axe finds while it asks about a kept workbook", async () => {
    const page = await pane({ kind: "browser", viewport: { width: 372, height: 600 } });
    await page.getByRole("button", { name: "Workbooks" }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("shelf-heading");
    await page.getByRole("button", { name: "Remove A landlord's half of Mill Road" }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("shelf-question");
    // The page around the pane brings its landmarks; here there is none.
    const found = await violations(page);
    expect(
      found.filter((violation) => !violation.startsWith("landmark-one-main") && !violation.startsWith("region")),
    ).toEqual([]);
  });
});
