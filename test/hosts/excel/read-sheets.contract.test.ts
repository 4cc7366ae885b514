import { excelHost } from "../../../src/hosts/excel/excel-host";
import type { WorkbookHost } from "../../../src/hosts/port";
import { excelInTest } from "./excel-in-test";
import type { MemoryWorkbook } from "./memory/memory-workbook";

const excel = excelInTest();
let workbook: MemoryWorkbook;
let host: WorkbookHost;
beforeEach(() => {
  ({ workbook, host } = excel.open());
});

const requests = () => workbook.asked.length;

describe("reading the whole workbook", () => {
  it("gives cells, tables and names of every sheet in sight, with three requests", async () => {
    const plan = workbook.Worksheets.Add("Potash plan");
    plan.GetRange("B2:C4").Formulas = [
      ["Field", "Rate"],
      ["Mill Road", '=LOAM.NEED("x")'],
      ["Creek Bend", '=""'],
    ];
    plan.shown.set("2,2", "#N/A").set("3,2", "");
    plan.Tables.Add("B2:C4", true).Name = "Plan";
    workbook.Names.Add("first_rate", plan.GetRange("C3"), "");
    const hidden = workbook.Worksheets.Add("Hidden");
    hidden.GetRange("A1").Formulas = [["not for looking"]];
    hidden.Visibility = "Hidden";

    const area = { top: 1, left: 1, bottom: 3, right: 2 };
    expect(await host.readSheets()).toEqual({
      sheets: [
        {
          name: "Potash plan",
          top: 1,
          left: 1,
          formulas: [
            ["Field", "Rate"],
            ["Mill Road", '=LOAM.NEED("x")'],
            ["Creek Bend", '=""'],
          ],
          values: [
            ["Field", "Rate"],
            ["Mill Road", "#N/A"],
            ["Creek Bend", ""],
          ],
          tables: [{ name: "Plan", sheet: "Potash plan", area, totals: false }],
          messages: new Map(),
        },
      ],
      names: [{ name: "first_rate", sheet: "Potash plan", area: { top: 2, left: 2, bottom: 2, right: 2 } }],
      cutShort: [],
    });
    expect(requests()).toBe(3);
  });

  it("reads a tall sheet in bands that can be handed over, and gives it back whole", async () => {
    const sheet = workbook.Worksheets.Add("Yield map");
    // 45,000 cells: bands of 20,000, 20,000 and 5,000.
    sheet.GetRange("A1:A45000").Formulas = Array.from({ length: 45_000 }, (_, row) => [row]);
    const [read] = (await host.readSheets()).sheets;
    expect(read?.formulas).toHaveLength(45_000);
    expect([read?.values[0], read?.values[44_999]]).toEqual([[0], [44_999]]);
    expect(requests()).toBe(5);
  });

  it("says which sheet is too large to be read to its end", async () => {
    const sheet = workbook.Worksheets.Add("Everything");
    // Two corners span 2 columns of 300,000 rows: 400,000 cells are the first 200,000 rows.
    sheet.GetRange("A1").Formulas = [["first"]];
    sheet.GetRange("B300000").Formulas = [["last"]];
    const reading = await host.readSheets();
    expect(reading.cutShort).toEqual(["Everything"]);
    expect(reading.sheets[0]?.formulas).toHaveLength(200_000);
  });

  it("gives nothing of an empty workbook", async () => {
    expect(await host.readSheets()).toEqual({ sheets: [], names: [], cutShort: [] });
  });
});

describe("writing formulas once more", () => {
  it("puts a formula over a formula only where it may", async () => {
    const sheet = workbook.Worksheets.Add("Plan");
    sheet.GetRange("A1").Formulas = [["=1+1"]];
    const blocks = [{ address: "Plan!A1", rows: [[{ formula: "=2+2" }]] }];
    await expect(host.write(blocks, "typedValues")).rejects.toMatchObject({ code: "FormulaThere" });
    await host.write(blocks, "formulas");
    expect(sheet.cells.at(0, 0)?.content).toBe("=2+2");
  });
});

describe("what this Excel is", () => {
  it("is told with its version and what it lacks", async () => {
    expect(await host.facts()).toMatchObject({ program: "Excel 16.0.18025, desktop on Windows", missing: [] });
    const older = await excelHost((level) => Number(level.split(".")[1]) <= 9).facts();
    expect(older.missing).toEqual([
      "Starters come without notes on cells: this Excel takes none.",
      "What Loamsheet writes may take several steps of Undo to take back.",
    ]);
  });
});
