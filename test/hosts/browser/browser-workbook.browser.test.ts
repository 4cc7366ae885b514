import { source as axeSource } from "axe-core";
import { Workbook } from "exceljs";
import type { Page } from "playwright-core";
import { colorAt } from "../../browser/color-at";
import { openGrid } from "../../browser/open-grid";
import { serveBuiltPages, until, type BuiltPages, type OpenedPage } from "../../browser/page";
import { samplePlan } from "../sample-plan";
import { cell, plan, sheet } from "../plan-parts";

jest.setTimeout(60_000);

let pages: BuiltPages;
let opened: OpenedPage;
let page: Page;
const { ready, fill, read, value, select, type, kept } = openGrid(() => page);

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

/** What the host said when it refused. */
async function refusal(work: Promise<unknown>): Promise<string> {
  return work.then(
    () => "nothing was refused",
    (thrown: Error) => thrown.message,
  );
}

describe("the workbook in the page", () => {
  it("fills in a plan, calculates it and shows its first sheet", async () => {
    const receipt = await fill(samplePlan());
    expect(receipt).toEqual({ starter: "trial", sheets: ["Fields", "Price list"], names: ["corn_price"] });
    // 154 × 205 and 61 × 165 bushels; corn at $4: 31,570 × 4; soybean at $10: 96 × 54 × 10.
    expect((await read("Fields!E4:F6")).values).toEqual([
      [31570, 126280],
      [10065, 40260],
      [5184, 51840],
    ]);
    expect((await read("Fields!A10:A12")).values.flat()).toEqual([154, 96, 61]);
    const selection = await page.evaluate(() => window.loamsheet?.readSelection());
    expect(selection?.address).toBe("Fields!A1");
    const taken = await page.evaluate(() => window.loamsheet?.taken());
    expect(taken).toEqual({ sheets: ["Fields", "Price list"], names: ["corn_price"], tables: ["Fields"] });
  });

  it("recalculates when a person types, and undoes it", async () => {
    await fill(samplePlan());
    await type("B4", "100");
    await until(async () => (await value("Fields!E4")) === 20500, "the bushels followed");
    await page.keyboard.press("Control+z");
    await until(async () => (await value("Fields!E4")) === 31570, "the change was undone");
  });

  it("refuses an entry outside the limits of a cell", async () => {
    await fill(samplePlan());
    await type("B4", "9999");
    await page.waitForTimeout(500);
    expect(await page.locator("body").innerText()).toContain("Acres must be between 0 and 5,000.");
    expect(await value("Fields!B4")).toBe(154);
  });

  it("cannot undo a fill half-way: undo after a fill changes nothing", async () => {
    await type("A1", "mine");
    await fill(samplePlan());
    await page.keyboard.press("Control+z");
    await page.waitForTimeout(400);
    expect(await value("Sheet1!A1")).toBe("mine");
    expect(await value("Fields!A1")).toBe("What each field brings in");
  });

  it("takes a fill away again and leaves the person's own sheet", async () => {
    await type("A1", "mine");
    const receipt = await fill(samplePlan());
    await page.evaluate((given) => window.loamsheet?.remove(given), receipt);
    const taken = await page.evaluate(() => window.loamsheet?.taken());
    expect(taken).toEqual({ sheets: ["Sheet1"], names: [], tables: [] });
    expect(await value("Sheet1!A1")).toBe("mine");
    await type("B2", "7");
    await until(async () => (await value("Sheet1!B2")) === 7, "typing still works");
    await fill(samplePlan());
    expect(await value("Fields!B7")).toBe(311);
  });

  it("refuses a plan whose sheets are already there, and changes nothing", async () => {
    await fill(samplePlan());
    expect(await refusal(fill(samplePlan()))).toContain("A sheet named Fields is already here");
    expect((await page.evaluate(() => window.loamsheet?.taken()))?.sheets).toEqual(["Fields", "Price list"]);
  });

  it("puts the workbook back as it was when a plan cannot be shown", async () => {
    await type("A1", "mine");
    const broken = plan([sheet("Good", [cell(0, 0, 1)]), sheet("Broken", [cell(0, 0, 1, "head")])]);
    const said = await page.evaluate((given) => {
      // A look that there is not: the type checker would not let it through.
      for (const one of given.sheets[1]?.cells ?? []) Object.assign(one, { style: "nosuch" });
      return window.loamsheet?.fill(given, { protect: false }).then(
        () => "filled",
        (thrown: Error) => thrown.message,
      );
    }, broken);
    expect(said).toContain("the workbook is as it was");
    expect(await value("Sheet1!A1")).toBe("mine");
    expect((await page.evaluate(() => window.loamsheet?.taken()))?.sheets).toEqual(["Sheet1"]);
  });

  it("writes a formula into an empty cell only", async () => {
    await fill(samplePlan());
    await select("B4");
    const insert = (text: string) => page.evaluate((given) => window.loamsheet?.insertFormula(given), text);
    expect(await refusal(insert("=1+1"))).toContain("B4 is not empty");
    await select("A11");
    expect(await refusal(insert("=1+1"))).toContain("A11 is not empty");
    await select("H2");
    await insert("=SUM(B4:B6)*2");
    expect(await value("Fields!H2")).toBe(622);
    expect((await read("Fields!H2")).formulas).toEqual([["=SUM(B4:B6)*2"]]);
  });

  it("reads names and table columns, and says what is not there", async () => {
    await fill(samplePlan());
    expect(await read("corn_price")).toMatchObject({ address: "'Price list'!B3", values: [[4]] });
    expect(await read("fields[acres]")).toMatchObject({ address: "Fields!B4:B6", values: [[154], [61], [96]] });
    expect(await refusal(read("Fields[Nothing]"))).toContain("The table Fields has no column named Nothing.");
    expect(await refusal(read("Elsewhere!A1"))).toContain("There is no sheet named Elsewhere.");
    expect(await refusal(read("no_such_name"))).toContain("neither an address");
  });

  it("tells of a changed selection", async () => {
    await page.evaluate(() => {
      Object.assign(window, { heard: 0 });
      return window.loamsheet?.onSelectionChange(() =>
        Object.assign(window, { heard: Number(Reflect.get(window, "heard")) + 1 }),
      );
    });
    await select("C3");
    await until(() => page.evaluate(() => Number(Reflect.get(window, "heard")) > 0), "the page heard of it");
    expect((await page.evaluate(() => window.loamsheet?.readSelection()))?.address).toBe("Sheet1!C3");
  });

  it("locks computed cells when asked, and leaves inputs open", async () => {
    await fill(samplePlan(), true);
    await type("E4", "1");
    await page.waitForTimeout(400);
    expect(await value("Fields!E4")).toBe(31570);
    await page.keyboard.press("Escape");
    await kept();
    await page.reload();
    await ready();
    await type("E4", "2");
    await page.waitForTimeout(400);
    expect(await value("Fields!E4")).toBe(31570);
  });

  it("draws the charts of a sheet and redraws them when numbers change", async () => {
    await fill(samplePlan());
    const chart = page.locator("svg[role=img]");
    await chart.waitFor();
    expect(await chart.locator("title").first().textContent()).toBe("Income by field");
    const before = await chart.innerHTML();
    await type("B4", "10");
    await until(async () => (await chart.innerHTML()) !== before, "the chart followed");
  });

  it("colours cells that another cell's formula fills", async () => {
    await fill(samplePlan());
    // The largest of 154, 96 and 61 has the high colour, the smallest the low one.
    const shown = async () => [await colorAt(page, 60, 348), await colorAt(page, 60, 397)];
    await until(async () => (await shown()).join() === "#e3f0ea,#f7e4e6", "largest and smallest had their colours");
    await type("B6", "200");
    await type("B4", "20");
    await until(async () => (await read("Fields!A12")).values[0]?.[0] === 20, "the order was worked out anew");
    await until(async () => (await shown()).join() === "#e3f0ea,#f7e4e6", "the colours followed");
  });

  it("keeps several workbooks: a new one, back to the first, and each after a reload", async () => {
    await fill(samplePlan());
    await type("B4", "100");
    await page.getByRole("button", { name: "Workbooks" }).click();
    await page.getByRole("button", { name: "New workbook" }).click();
    await until(
      async () => (await page.evaluate(() => window.loamsheet?.taken()))?.tables.length === 0,
      "an empty workbook was open",
    );
    await type("A1", "another plan");
    await kept();
    await page.reload();
    await ready();
    expect(await value("A1")).toBe("another plan");
    await page.getByRole("button", { name: "Workbooks" }).click();
    await page.getByRole("button", { name: "Open Trial" }).click();
    await until(async () => (await page.locator(".strip .outcome").innerText()).endsWith("is open."), "it was open");
    expect((await read("Fields!A10:A12")).values.flat()).toEqual([100, 96, 61]);
    await page.getByRole("button", { name: /^Remove / }).click();
    await page.getByRole("button", { name: "Remove it" }).click();
    await until(async () => (await page.locator(".shelf-list li").count()) === 1, "one was left");
    expect(opened.troubles).toEqual([]);
  });

  it("opens an empty workbook when the one kept cannot be read, and leaves that as it is", async () => {
    await page.evaluate(async () => {
      const opening = indexedDB.open("keyval-store");
      const db = await new Promise<IDBDatabase>((resolve) => {
        opening.onsuccess = () => resolve(opening.result);
      });
      const store = db.transaction("keyval", "readwrite").objectStore("keyval");
      store.put({ damaged: { title: "Damaged", changed: 1 } }, "loamsheet-workbooks");
      await new Promise((resolve) => {
        store.put({ version: 1, workbook: { sheetOrder: "not a list" } }, "loamsheet-workbook:damaged").onsuccess =
          resolve;
      });
    });
    await page.reload();
    await ready();
    expect(await page.locator("#page-status").innerText()).toContain("could not be read");
    await type("A1", "goes on");
    await page.getByRole("button", { name: "Workbooks" }).click();
    await until(async () => (await page.locator(".shelf-list").innerText()).includes("Damaged"), "it was still listed");
  });

  it("says why a function of ours has no number: to the tools, beside the cell, and in the readable table", async () => {
    await fill(samplePlan());
    await type("H4", "=LOAM.BUSHELWEIGHT(A4)");
    await until(async () => (await value("Fields!H4")) === "#VALUE!", "the cell had no number");
    await select("H4");
    const { message } = (await page.evaluate(() => window.loamsheet?.readSelection())) ?? {};
    expect(message).toContain('crop "Home Quarter" is not known here');
    await page.mouse.move(770, 300);
    await page.mouse.move(770, 205);
    await page.getByText(message ?? "nothing").waitFor();
    await page.mouse.move(770, 500);
    await page.locator("#read-as-table").click();
    expect(await page.locator("#sheet-table").innerText()).toContain(`#VALUE!: ${message}`);
  });

  it("offers our functions while a formula is typed, with hints about their arguments", async () => {
    await select("B2");
    await page.keyboard.type("=LOAM.LIMEN");
    await page.getByText("LOAM.LIMENEED").or(page.getByText("MENEED")).first().waitFor();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Escape");
  });

  it("has a page around the grid without accessibility problems", async () => {
    await fill(samplePlan());
    await page.evaluate(axeSource);
    const problems = () =>
      page.evaluate(async () => {
        // Put there by the line above.
        const axe = Reflect.get(window, "axe") as { run(what: object): Promise<{ violations: { id: string }[] }> };
        return (await axe.run({ exclude: ["#grid"] })).violations.map(({ id }) => id);
      });
    expect(await problems()).toEqual([]);
    await page.locator("#read-as-table").click();
    expect(await problems()).toEqual([]);
  });

  it("shows the sheet as a table that can be reached by keyboard", async () => {
    await fill(samplePlan());
    await page.locator("#read-as-table").focus();
    await page.keyboard.press("Enter");
    const table = page.locator("#sheet-table table");
    expect(await table.locator("caption").innerText()).toBe("Fields");
    expect(await table.locator("tbody tr").nth(3).innerText()).toMatch(
      /Home Quarter\s+154\s+205.0\s+corn\s+31,570\s+\$126,280/,
    );
    await page.keyboard.press("Escape");
    expect(await page.locator("#sheet-table").isHidden()).toBe(true);
  });

  it("leads from the grid to the tools and back with F6", async () => {
    await select("B2");
    await page.keyboard.press("F6");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("pane");
    await page.keyboard.press("F6");
    await page.keyboard.type("12");
    await page.keyboard.press("Enter");
    await until(async () => (await value("Sheet1!B2")) === 12, "the grid had the keyboard again");
  });

  it("keeps the workbook and brings it back after a reload", async () => {
    await fill(samplePlan());
    await type("B4", "100");
    await until(
      async () => (await page.locator("#page-status").innerText()) === "Kept in this browser.",
      "it was kept",
    );
    await page.waitForTimeout(1000);
    await page.reload();
    await ready();
    expect(await value("Fields!E4")).toBe(20500);
    expect((await read("Fields!A10:A12")).values.flat()).toEqual([100, 96, 61]);
    await page.locator("svg[role=img]").waitFor();
  });

  it("says so when another tab keeps the same workbook", async () => {
    const first = page;
    await type("A2", "kept by the first tab");
    await kept();
    const second = await opened.context.newPage();
    await second.goto(`${pages.address}index.html`);
    await second.bringToFront();
    page = second;
    await ready();
    await type("A1", "from the second tab");
    await kept();
    page = first;
    await first.bringToFront();
    await type("A1", "from the first tab");
    await until(
      async () => (await page.locator("#page-status").innerText()).startsWith("Another tab keeps its own changes"),
      "the first tab said so",
    );
    await second.reload();
    page = second;
    await ready();
    expect(await value("A1")).toBe("from the second tab");
  });

  it("says so when the browser cannot keep the workbook, and goes on working", async () => {
    const blocked = await pages.open("index.html");
    page = blocked.page;
    await page.addInitScript(() => {
      Object.defineProperty(window, "indexedDB", {
        get() {
          throw new Error("blocked");
        },
      });
    });
    await page.reload();
    await ready();
    await type("A1", "5");
    await until(async () => (await value("Sheet1!A1")) === 5, "typing works");
    await until(
      async () => (await page.locator("#page-status").innerText()).includes("save a file before you leave"),
      "the page said so",
    );
    await blocked.context.close();
  });

  it("lets charts follow rows that are put in, and a renamed sheet", async () => {
    await fill(samplePlan());
    const bars = page.locator("svg[role=img] rect");
    await bars.first().waitFor();
    // The ground and one column a field.
    expect(await bars.count()).toBe(4);
    await page.mouse.click(20, 228);
    await page.mouse.click(20, 228, { button: "right" });
    await page.getByText("rows above").click({ position: { x: 8, y: 8 } });
    await page.waitForTimeout(300);
    await type("A5", "Long Eighty");
    await type("F5", "90000");
    await until(async () => (await bars.count()) === 5, "the new row had a column");
    expect(await page.locator("svg[role=img]").textContent()).toContain("Long Eighty");
    await page.locator('[data-u-comp="slide-tab-item"]', { hasText: "Fields" }).dblclick();
    await page.keyboard.press("Control+a");
    await page.keyboard.type("My fields");
    await page.keyboard.press("Enter");
    await until(async () => (await value("'My fields'!A5")) === "Long Eighty", "the sheet was renamed");
    await type("F5", "");
    await type("F5", "80000");
    expect(await bars.count()).toBe(5);
  });

  it("follows a cell that leads to another sheet", async () => {
    await fill(samplePlan());
    await page.mouse.click(470, 138);
    await until(
      async () =>
        (await page.evaluate(() => window.loamsheet?.readSelection()))?.address.startsWith("'Price list'!") ?? false,
      "the other sheet was shown",
    );
  });

  it("opens a file that it saved, in a workbook of its own", async () => {
    await fill(samplePlan());
    await type("B4", "100");
    const [download] = await Promise.all([page.waitForEvent("download"), page.getByText("Save as .xlsx").click()]);
    const file = await download.path();
    await page.getByRole("button", { name: "Workbooks" }).click();
    await page.locator("#shelf-file").setInputFiles({
      name: "not-ours.xlsx",
      mimeType: "application/octet-stream",
      buffer: Buffer.from("Field,Acres"),
    });
    await page.getByText("This file is not an .xlsx workbook.").waitFor();
    expect(await value("Fields!E4")).toBe(20500);
    await page.locator("#shelf-file").setInputFiles(file);
    await until(async () => (await page.locator(".strip .outcome").innerText()).endsWith("is open."), "it was open");
    expect(await value("Fields!E4")).toBe(20500);
    expect((await read("Fields!A10:A12")).values.flat()).toEqual([100, 96, 61]);
    await type("B4", "154");
    await until(async () => (await value("Fields!E4")) === 31570, "it calculated");
    await page.locator("svg[role=img]").waitFor();
    expect(await page.locator(".shelf-list li").count()).toBe(2);
  });

  it("saves a file with everything a person typed, and its numbers", async () => {
    await fill(samplePlan());
    await type("B4", "100");
    await type("H2", "=B7*2");
    await until(async () => (await value("Fields!H2")) === 514, "the new formula was calculated");
    const [download] = await Promise.all([page.waitForEvent("download"), page.getByText("Save as .xlsx").click()]);
    expect(download.suggestedFilename()).toBe("Trial.xlsx");
    const book = new Workbook();
    await book.xlsx.readFile(await download.path());
    const fields = book.getWorksheet("Fields");
    expect(book.worksheets.map(({ name }) => name)).toEqual(["Fields", "Price list"]);
    expect(fields?.getCell("B4").value).toBe(100);
    expect(fields?.getCell("E4").value).toMatchObject({ result: 20500 });
    // 100 + 61 + 96 acres, twice.
    expect(fields?.getCell("H2").value).toEqual({ formula: "B7*2", result: 514 });
    expect(fields?.getCell("F4").numFmt).toBe("$#,##0");
    expect(fields?.getCell("B4").dataValidation).toMatchObject({
      type: "decimal",
      error: "Acres must be between 0 and 5,000.",
    });
    expect(Object.keys(Reflect.get(fields ?? {}, "tables"))).toEqual(["Fields"]);
  });

  it("asks nothing of any other server, and reports no trouble", async () => {
    await fill(samplePlan());
    await type("B4", "100");
    await until(async () => (await value("Fields!E4")) === 20500, "the bushels followed");
    expect(opened.foreign).toEqual([]);
    expect(opened.troubles).toEqual([]);
  });
});
