import { randomBytes } from "node:crypto";
import { readFile } from "node:fs/promises";
import type { CDPSession, Page } from "playwright-core";
import { openGrid } from "../../browser/open-grid";
import { serveBuiltPages, until, type BuiltPages, type OpenedPage } from "../../browser/page";
import { samplePlan } from "../sample-plan";

jest.setTimeout(60_000);

let pages: BuiltPages;
let opened: OpenedPage;
let page: Page;
const { ready, fill, read, value, select, type, status, kept } = openGrid(() => page);

beforeAll(async () => {
  pages = await serveBuiltPages();
  opened = await pages.open("index.html");
});
afterAll(() => pages.stop());

beforeEach(async () => {
  page = opened.page;
  await pages.renew(opened);
  await ready();
});

/** Puts a value into the store behind the page's back. */
async function keepInstead(key: string, what: unknown): Promise<void> {
  await page.evaluate(
    async ([at, given]) => {
      const opening = indexedDB.open("keyval-store");
      const db = await new Promise<IDBDatabase>((resolve) => {
        opening.onsuccess = () => resolve(opening.result);
      });
      const writing = db.transaction("keyval", "readwrite");
      writing.objectStore("keyval").put(given, at);
      await new Promise((resolve) => {
        writing.oncomplete = resolve;
      });
      db.close();
    },
    [key, what] as const,
  );
}

const openShelf = () => page.getByRole("button", { name: "Workbooks" }).click();

describe("where this browser has no room left", () => {
  let devTools: CDPSession;
  const allow = (bytes?: number) =>
    devTools.send("Storage.overrideQuotaForOrigin", {
      origin: pages.address,
      ...(bytes !== undefined && { quotaSize: bytes }),
    });

  beforeEach(async () => {
    devTools = await opened.context.newCDPSession(page);
  });
  afterEach(() => allow());

  it("work goes on, a sentence tells what to do, and all is kept once there is room", async () => {
    await allow(300_000);
    await type("A1", "kept before");
    await kept();
    // A megabyte that cannot be packed smaller.
    const long = Array.from({ length: 50 }, () => [randomBytes(15_000).toString("base64")]);
    await page.evaluate((rows) => window.loamsheet?.write([{ address: "Sheet1!C1", rows }], "nothing"), long);
    await until(async () => (await status()).includes("save a file before you leave"), "the page said so");
    await type("A2", "typed without room");
    await type("A3", "=21*2");
    await until(async () => (await value("A3")) === 42, "it still calculated");

    // Another workbook would take the place of one that stands nowhere else.
    await openShelf();
    await page.getByRole("button", { name: "New workbook" }).click();
    await page.getByText("Save it as .xlsx first, then try again.").waitFor();
    expect((await read("A1:A3")).values.flat()).toEqual(["kept before", "typed without room", 42]);

    await allow();
    await type("A4", "typed with room");
    await kept();
    await page.reload();
    await ready();
    expect((await read("A1:A4")).values.flat()).toEqual(["kept before", "typed without room", 42, "typed with room"]);
    expect((await read("C1:C50")).values).toEqual(long);
    expect(opened.troubles).toEqual([]);
  });
});

it.each<[string, unknown]>([
  ["is no list", "rubbish"],
  ["lists what is no workbook", { nothing: null, "": { title: 7 } }],
])("finds every workbook again when the list of them %s", async (_what, list) => {
  await fill(samplePlan());
  await kept();
  await openShelf();
  await page.getByRole("button", { name: "New workbook" }).click();
  await page.getByText("An empty workbook is open.").waitFor();
  await type("A1", "open last");
  await kept();
  await keepInstead("loamsheet-workbooks", list);

  await page.reload();
  await ready();
  expect(await value("A1")).toBe("open last");
  await openShelf();
  expect(await page.locator(".shelf-title").allInnerTexts()).toEqual(expect.arrayContaining(["Trial", "Workbook"]));
  expect(await page.locator(".shelf-title").count()).toBe(2);
  await type("A2", "goes on");
  await kept();
  await page.getByRole("button", { name: "Open Trial" }).click();
  await page.getByText("Trial is open.").waitFor();
  expect(await value("Fields!E4")).toBe(31570);
  expect(opened.troubles).toEqual([]);
});

it("refuses a paste of fifty megabytes with a sentence, and takes a small one after it", async () => {
  await opened.context.grantPermissions(["clipboard-read", "clipboard-write"]);
  await page.evaluate(() => navigator.clipboard.writeText("North Forty\t80\t190\n".repeat(2_600_000)));
  await type("A1", "as it was");
  await select("A1");
  await page.keyboard.press("Control+v");
  await until(async () => (await status()).includes("nothing was pasted"), "the page refused");
  // What was typed is being kept meanwhile, and must not take the place of the sentence.
  await page.waitForTimeout(1000);
  expect(await status()).toContain("Paste it in parts");
  expect((await read("A1:C2")).values.flat()).toEqual(["as it was", null, null, null, null, null]);

  await page.evaluate(() => navigator.clipboard.writeText("South Forty\t75"));
  await select("A2");
  await page.keyboard.press("Control+v");
  await until(async () => (await value("B2")) === 75, "the small one was pasted");
  expect(await value("A1")).toBe("as it was");
  expect(opened.troubles).toEqual([]);
});

it("says that a file is damaged, and leaves the open workbook as it is", async () => {
  await fill(samplePlan());
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByText("Save as .xlsx").click()]);
  const whole = await readFile(await download.path());
  await openShelf();
  await page.locator("#shelf-file").setInputFiles({
    name: "damaged.xlsx",
    mimeType: "application/octet-stream",
    buffer: whole.subarray(0, Math.floor(whole.length / 2)),
  });
  await page.getByText("This .xlsx file is damaged and could not be read.").waitFor();
  await type("B4", "100");
  await until(async () => (await value("Fields!E4")) === 20500, "it still calculated");
  await kept();
  expect(await page.locator(".shelf-list li").count()).toBe(1);
  expect(opened.troubles).toEqual([]);
});

/** What the page does for ever from a moment of the fill on, so that the tab ends there. */
const ends = {
  "before the sheets are shown": () => {
    void window.loamsheet?.fill(window.planToFill, {
      protect: false,
      onProgress({ share }) {
        if (share < 0.4) return;
        console.log("stopped");
        for (;;);
      },
    });
  },
  "while they are calculated": () => {
    let isFilled = false;
    const look = async () => {
      const { sheets = [] } = (await window.loamsheet?.taken()) ?? {};
      if (isFilled) throw new Error("too late");
      if (sheets.length < 3) return void setTimeout(look);
      console.log("stopped");
      for (;;);
    };
    void look();
    void window.loamsheet?.fill(window.planToFill, { protect: false }).then(() => (isFilled = true));
  },
  "while they are written down": () => {
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, what, key) {
      const request = put.call(this, what, key);
      const { workbook } = what as { workbook?: { sheetOrder: readonly string[] } };
      if ((workbook?.sheetOrder.length ?? 0) < 3) return request;
      console.log("stopped");
      for (;;);
    };
    void window.loamsheet?.fill(window.planToFill, { protect: false });
  },
};

declare global {
  interface Window {
    planToFill: ReturnType<typeof samplePlan>;
  }
}

/** The page as the next one to open it in the same browser finds it. */
async function reopened(): Promise<void> {
  const { context, troubles } = opened;
  const next = await context.newPage();
  next.on("pageerror", (error) => troubles.push(error.message));
  opened = { ...opened, page: next };
  page = next;
  await page.goto(`${pages.address}index.html`);
  await ready();
}

describe("a tab that ends in the middle of a fill", () => {
  it.each(Object.entries(ends))("%s leaves the workbook as before or as after", async (_moment, toTheEnd) => {
    await type("A1", "mine");
    await kept();
    await page.evaluate((plan) => {
      window.planToFill = plan;
    }, samplePlan());
    const devTools = await opened.context.newCDPSession(page);
    const [stopped, crashed] = [page.waitForEvent("console"), page.waitForEvent("crash")];
    void page.evaluate(toTheEnd).catch(() => undefined);
    await stopped;
    void devTools.send("Page.crash").catch(() => undefined);
    await crashed;

    await reopened();
    expect(await value("Sheet1!A1")).toBe("mine");
    const taken = await page.evaluate(() => window.loamsheet?.taken());
    const before = { sheets: ["Sheet1"], names: [], tables: [] };
    const after = { sheets: ["Sheet1", "Fields", "Price list"], names: ["corn_price"], tables: ["Fields"] };
    expect([before, after]).toContainEqual(taken);
    if (taken?.tables.length === 1) {
      expect((await read("Fields!E4:F6")).values).toEqual([
        [31570, 126280],
        [10065, 40260],
        [5184, 51840],
      ]);
    }
    await type("A2", "goes on");
    await kept();
    expect(opened.troubles).toEqual([]);
  });
});
