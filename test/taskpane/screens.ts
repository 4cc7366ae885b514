import type { Page } from "playwright-core";

/** A state of the pane that looks different from the others, and how to come there. */
export interface Screen {
  /** In a spreadsheet unless said otherwise. */
  readonly kind?: "browser";
  readonly come: (page: Page) => Promise<unknown>;
  /** What Escape closes, and the id of what has the focus then. */
  readonly escape?: { readonly closes: string; readonly to: string };
}

const part = (page: Page, name: string) => page.getByRole("button", { name, exact: true }).click();
const press = (page: Page, name: string | RegExp) => page.getByRole("button", { name }).click();

/** Every screen of the pane. The overview of a farm stands on the page with a grid: a plan has to be worked out for it. */
export const screens: Readonly<Record<string, Screen>> = {
  "the fresh form": { come: async () => undefined },
  "a refused form": {
    async come(page) {
      await page.fill("#start-price-corn", "lots");
      await page.click("#start-fill");
      await page.waitForSelector("#start-summary");
    },
  },
  "empty rows": { come: (page) => page.check("#start-figures-empty") },
  "a filled workbook, asking about removal": {
    async come(page) {
      await page.selectOption("#start-guide", "IN-MI-OH");
      await page.click("#start-fill");
      await page.waitForSelector("#start-done");
      await page.click("#start-ask");
    },
    escape: { closes: ".question", to: "start-done" },
  },
  "a refused fill": {
    async come(page) {
      await page.evaluate(() => {
        window.host.refusal = { of: "fill", says: "The workbook is read-only. Save a copy of it first." };
      });
      await page.selectOption("#start-guide", "IN-MI-OH");
      await page.click("#start-fill");
      await page.waitForSelector("#start-refused");
    },
  },
  "what nobody foresaw": {
    async come(page) {
      await page.evaluate(() => {
        window.host.readSelection = () => Promise.reject(new Error("the cable is out"));
      });
      await part(page, "Show the working");
      await page.waitForSelector("#trouble");
    },
  },
  "the list of functions, a family open": {
    async come(page) {
      await part(page, "Find a function");
      await page.locator(".family-head button").first().click();
    },
  },
  "functions found": {
    async come(page) {
      await part(page, "Find a function");
      await page.fill("#find-query", "how much potash");
    },
  },
  "functions opened lately": {
    async come(page) {
      await openFunction(page, "REMOVAL");
      await press(page, "All functions");
      await page.fill("#find-query", "");
    },
  },
  "the page of a function": { come: (page) => openFunction(page, "REMOVAL") },
  "the page of a function that fills a table": {
    async come(page) {
      await openFunction(page, "PROFITGRID");
      await press(page, "Fill in the example");
    },
  },
  "the form of a function, one value from the sheet and one that does not fit": {
    async come(page) {
      await openFunction(page, "REMOVAL");
      await press(page, "Fill in the example");
      await page.evaluate(() => {
        window.host.selected = "Fields!D2";
      });
      await page.click("#pick-yield");
      await page.waitForSelector(".picked");
      await page.fill("#argument-moisture", "150");
      await page.click("#function-insert");
      await page.waitForSelector("#argument-moisture-refusal");
    },
  },
  "the longest form of a function, all of it": {
    async come(page) {
      await openFunction(page, "PASSCOST");
      await page.locator("[aria-expanded=false]").click();
    },
  },
  "a working": {
    async come(page) {
      await showWorking(page, "Fields!E2");
      await page.waitForSelector(".figures");
    },
  },
  "a working to be copied by hand": {
    async come(page) {
      await showWorking(page, "Fields!E2");
      await page.waitForSelector(".figures");
      await page.evaluate(() => Object.defineProperty(navigator, "clipboard", { value: undefined }));
      await press(page, "Copy as text");
      await page.waitForSelector("#working-text");
    },
  },
  "a cell that shows an error": {
    async come(page) {
      await showWorking(page, "Fields!E3");
      await page.waitForSelector(".is-waiting");
    },
  },
  "what if, a scenario, ranges and pictures, asking about the sheet": {
    async come(page) {
      await part(page, "What if");
      await page.fill("#what-if-yield", "60");
      await page.fill("#what-if-name", "Good year");
      await press(page, "Keep it beside the others");
      await page.fill("#what-if-name", "A wet spring and a late, cold start");
      await press(page, "Keep it beside the others");
      const ends = { "yield-low": "48", "yield-high": "68", "price-low": "9.2", "price-high": "12" };
      for (const [id, text] of Object.entries(ends)) await page.fill(`#what-if-${id}`, text);
      await page.click("#what-if-add-line");
      await page.waitForSelector("#tornado");
      await press(page, "Draw them from the workbook");
      await page.waitForSelector("#drift-PotashLedger");
      await page.click("#what-if-put");
      await page.waitForSelector("#what-if-question");
    },
    escape: { closes: ".question", to: "what-if-put" },
  },
  "a picture put into the workbook, asking about its removal": {
    async come(page) {
      await part(page, "What if");
      await press(page, "Put into the workbook: profit grid");
      await page.click("#take-grid");
      await page.waitForSelector("#picture-question");
    },
    escape: { closes: ".question", to: "take-grid" },
  },
  "what if, a figure that does not fit": {
    async come(page) {
      await part(page, "What if");
      await page.fill("#what-if-price", "many");
      await page.fill("#what-if-yield-low", "900");
      await page.waitForSelector("#what-if-price-refusal");
    },
  },
  "a strip trial with its result, asking about the sheet": {
    async come(page) {
      await layOut(page, { blocks: "6", width: "20", length: "600", seed: "9", gainToSee: "4", stripSd: "3" });
      await page.fill("#trial-paste", "180\n187.1\n176\n179.4\n180.8\n171\n188.2\n183\n190\n188.5\n174\n180.6");
      await press(page, "Put it into the strips");
      await page.fill("#trial-price", "10.60");
      await page.fill("#trial-cost-1", "21");
      await page.waitForSelector("#differences");
      await page.click("#trial-insert");
      await page.waitForSelector("#trial-question");
    },
    escape: { closes: ".question", to: "trial-insert" },
  },
  "a strip trial weighed, one strip unreadable": {
    async come(page) {
      await layOut(page, { blocks: "4", width: "30", length: "800", seed: "2" });
      await page.check("#trial-entry-weights");
      await page.fill("#trial-weight-0", "heavy");
      await page.fill("#trial-moisture-0", "15");
    },
  },
  "a strip trial refused": {
    async come(page) {
      await part(page, "Strip trials");
      await page.fill("#trial-blocks", "0");
      await page.click("#trial-make");
      await page.locator(".refusal").first().waitFor();
    },
  },
  "a workbook looked over, asking about a formula": {
    async come(page) {
      await part(page, "Check this workbook");
      await press(page, "Go to Plan C3");
      await press(page, "Put the formula back into Plan C3");
      await page.waitForSelector("#check-question");
    },
    escape: { closes: ".question", to: "check-mend-0" },
  },
  "a workbook looked over, a formula put back": {
    async come(page) {
      await part(page, "Check this workbook");
      await press(page, "Put the formula back into Plan C3");
      await press(page, "Write the formula");
      await page.getByRole("button", { name: "Undo what was written" }).waitFor();
    },
  },
  "no list of clients": {
    async come(page) {
      await part(page, "Many clients");
      await page.getByRole("button", { name: "Put an example list here" }).waitFor();
    },
  },
  "a date that is none for clients": {
    kind: "browser",
    async come(page) {
      await part(page, "Many clients");
      await page.selectOption("#clients-guide", "IN-MI-OH");
      await page.fill("#clients-date", "soon");
      await press(page, /^Make \d/);
      await page.waitForSelector("#clients-date-refusal");
    },
  },
  "budgets made for clients, asking about removal": {
    kind: "browser",
    async come(page) {
      await part(page, "Many clients");
      await page.selectOption("#clients-guide", "IN-MI-OH");
      await press(page, /^Make \d/);
      await page.waitForSelector("#clients-outcome");
      await press(page, "Remove what was added");
      await page.waitForSelector("#clients-question");
    },
    escape: { closes: ".question", to: "clients-outcome" },
  },
  sources: { come: (page) => part(page, "Sources") },
  about: { come: (page) => part(page, "About") },
  "about, looked into": {
    async come(page) {
      await part(page, "About");
      await page.check("#about-loads");
      await press(page, "Check Loamsheet");
      await page.waitForSelector(".about-found");
    },
  },
  "the overview of a workbook without a plan": { kind: "browser", come: (page) => part(page, "Overview") },
  "the kept workbooks": {
    kind: "browser",
    async come(page) {
      await press(page, "Workbooks");
      await page.waitForSelector("#shelf");
    },
    escape: { closes: "#shelf", to: "strip-shelf" },
  },
  "the kept workbooks, asking about removal": {
    kind: "browser",
    async come(page) {
      await press(page, "Workbooks");
      await press(page, "Remove A landlord's half of Mill Road");
      await page.waitForSelector("#shelf-question");
    },
    escape: { closes: ".question", to: "shelf-heading" },
  },
};

export async function openFunction(page: Page, name: string): Promise<void> {
  await part(page, "Find a function");
  await page.fill("#find-query", name);
  await page.click(`#find-${name}`);
}

async function showWorking(page: Page, address: string): Promise<void> {
  await page.evaluate((cell) => {
    window.host.selected = cell;
  }, address);
  await part(page, "Show the working");
}

async function layOut(page: Page, form: Readonly<Record<string, string>>): Promise<void> {
  await part(page, "Strip trials");
  await page.fill("#trial-name", "fungicide in Home Quarter");
  await page.fill("#trial-treatments", "check\nfungicide");
  for (const [id, text] of Object.entries(form)) await page.fill(`#trial-${id}`, text);
  await page.click("#trial-make");
  await page.waitForSelector("#trial-map");
}
