import { excelHost } from "../../../src/hosts/excel/excel-host";
import type { FillProgress, WorkbookHost } from "../../../src/hosts/port";
import { cell, plan, sheet } from "../plan-parts";
import { excelInTest } from "./excel-in-test";
import type { MemoryWorkbook } from "./memory/memory-workbook";
import { richPlan } from "./rich-plan";

const excel = excelInTest();
let workbook: MemoryWorkbook;
let host: WorkbookHost;
beforeEach(() => {
  ({ workbook, host } = excel.open());
});

const contentAt = (name: string, row: number, column: number) => workbook.sheet(name).cells.at(row, column)?.content;
const requests = () => workbook.asked;

describe("filling a workbook", () => {
  it("adds the sheets after those that are there and shows the first of them", async () => {
    const receipt = await host.fill(richPlan, { protect: false });
    expect(receipt).toEqual({ starter: "trial", sheets: ["Fields", "Prices list"], names: ["Price_factor"] });
    expect(workbook.sheets.map(({ Name }) => Name)).toEqual(["Sheet1", "Fields", "Prices list"]);
    expect(workbook.active.Name).toBe("Fields");
    expect(workbook.selected).toMatchObject({ address: "A1" });
  });

  it("touches nothing that was there", async () => {
    workbook.sheet("Sheet1").GetRange("A1:B1").Formulas = [["mine", "=1+1"]];
    const before = JSON.stringify([...workbook.sheet("Sheet1").cells.byPlace]);
    await host.fill(richPlan, { protect: true });
    const { cells, formats, tables, protectedWith } = workbook.sheet("Sheet1");
    expect(JSON.stringify([...cells.byPlace])).toBe(before);
    expect([formats.byAddress.size, tables.length, protectedWith]).toEqual([0, 0, undefined]);
  });

  it("writes constants and formulas as the plan has them; grades stay text", async () => {
    await host.fill(richPlan, { protect: false });
    const formula = "=Fields[[#This Row],[Acres]]*'Prices list'!$B$2*Price_factor";
    expect([0, 1, 2, 3].map((column) => contentAt("Fields", 4, column))).toEqual([
      "Creek Bend",
      96,
      "6-24-24",
      formula,
    ]);
    expect(contentAt("Fields", 6, 1)).toBe("=SUM(Fields[Acres])");
    expect(contentAt("Prices list", 2, 0)).toBe("0-0-60");
    expect(contentAt("Fields", 9, 0)).toBe("=LOAM.UNITLIST()");
    expect(workbook.sheet("Fields").cells.at(4, 3)?.numberFormat).toBe("$#,##0.00");
  });

  it("leaves a totals row as planned and pushes nothing down", async () => {
    await host.fill(richPlan, { protect: false });
    expect(workbook.sheet("Fields").tables.map(({ Name, address }) => [Name, address])).toEqual([["Fields", "A4:D7"]]);
    expect([0, 1, 2, 3].map((column) => contentAt("Fields", 6, column))).toEqual([
      "All",
      "=SUM(Fields[Acres])",
      "without the last",
      "",
    ]);
    expect(contentAt("Fields", 8, 0)).toBe("Stands below the table");
  });

  it("gives cells their look, links their target, columns their width", async () => {
    await host.fill(richPlan, { protect: false });
    const { formats, borders, links, frozen, TabColor, Gridlines } = workbook.sheet("Fields");
    expect(formats.for("A4:D4")).toMatchObject({ Fill: { Color: "#5a4636" }, HorizontalAlignment: "Center" });
    expect(formats.for("B5:B6")).toMatchObject({ Font: { Color: "#1f4e8c" }, Fill: { Color: "#fdf6e3" } });
    expect(borders.for("B5:B6 InsideHorizontal")).toMatchObject({ Style: "Continuous" });
    expect(links.get("A2")).toMatchObject({ documentReference: "'Prices list'!A1", textToDisplay: "Prices" });
    // 24 characters of 7 pixels and 5 pixels around them, at 96 pixels an inch: 173 × 0.75 points
    expect(formats.for("A:A")).toMatchObject({ ColumnWidth: 129.75 });
    expect(formats.for("1:1")).toMatchObject({ RowHeight: 28 });
    expect([frozen, TabColor, Gridlines]).toEqual(["A1:A4", "#5a4636", false]);
  });

  it("says what may be typed", async () => {
    await host.fill(richPlan, { protect: false });
    const { validations } = workbook.sheet("Fields");
    expect(validations.for("B5:B6")).toMatchObject({
      Rule: { decimal: { formula1: 0, formula2: 5000, operator: "Between" } },
      Prompt: { showPrompt: true, message: "Acres of the field" },
      ErrorAlert: { style: "Stop", message: "Acres are between 0 and 5,000." },
    });
    expect(validations.for("C5:C6")).toMatchObject({ Rule: { list: { source: "='Prices list'!$A$2:$A$3" } } });
    expect(workbook.sheet("Prices list").validations.for("A2:A3")).toMatchObject({
      Rule: { list: { source: "6-24-24,0-0-60" } },
    });
  });

  it("adds conditional formats", async () => {
    await host.fill(richPlan, { protect: false });
    expect(workbook.sheet("Fields").conditionalFormats).toMatchObject([
      { Type: "CellValue", On: "D5:D6", CellValue: { Rule: { formula1: "500", operator: "GreaterThan" } } },
      { Type: "Custom", On: "A5:D6", Custom: { Rule: { Formula: "=$B5>90" }, Format: { Font: { Color: "#2c6e5a" } } } },
      { Type: "DataBar", On: "B5:B6", DataBar: { PositiveFormat: { FillColor: "#2f4f6f", GradientFill: false } } },
      { Type: "ColorScale", ColorScale: { Criteria: { midpoint: { type: "Number", formula: "0" } } } },
    ]);
  });

  it("draws the charts from the ranges of the plan", async () => {
    await host.fill(richPlan, { protect: false });
    expect(workbook.sheet("Prices list").charts).toMatchObject([
      {
        Type: "BarClustered",
        position: "A6:G21",
        Title: { Text: "Acres and cost by field" },
        Legend: { Visible: true },
        all: [
          { Name: "Acres", values: "Fields!B5:B6", categories: "Fields!A5:A6", Format: { Fill: { Color: "#5a4636" } } },
          { Name: "Cost", values: "Fields!D5:D6", categories: "Fields!A5:A6", Format: { Fill: { Color: "#2f4f6f" } } },
        ],
        Axes: {
          ValueAxis: { NumberFormat: "$#,##0", Title: { Text: "$" } },
          CategoryAxis: { ReversePlotOrder: true, Title: { Text: "Field" } },
        },
      },
      {
        Type: "LineMarkers",
        By: "Columns",
        Legend: { Visible: false },
        all: [{ MarkerStyle: "Circle", Format: { Line: { Color: "#5a4636" } } }],
      },
      // One series a row, points without a line, a line without markers.
      {
        By: "Rows",
        all: [
          { values: "Fields!B5:D5", MarkerStyle: "Circle", Format: { Line: { LineStyle: "None" } } },
          { values: "Fields!B6:D6", MarkerStyle: "None", Format: { Line: { LineStyle: "Dash" } } },
        ],
      },
    ]);
  });

  it("sets up the print", async () => {
    await host.fill(richPlan, { protect: false });
    expect(workbook.sheet("Fields").PageLayout).toMatchObject({
      Orientation: "Landscape",
      Zoom: { horizontalFitToPages: 1 },
      titleRows: "$4:$4",
      area: "A1:D12",
      HeadersFooters: { DefaultForAllPages: { LeftFooter: "Trial farm", CenterFooter: "Page &P of &N" } },
    });
  });

  it("locks computed cells only when asked to, and without a password", async () => {
    await host.fill(richPlan, { protect: false });
    expect(workbook.sheet("Fields").protectedWith).toBeUndefined();

    ({ workbook, host } = excel.open());
    await host.fill(richPlan, { protect: true });
    const { protectedWith, formats } = workbook.sheet("Fields");
    expect(protectedWith).toMatchObject({ allowFormatColumns: true });
    expect(formats.for("B5:B6")).toMatchObject({ Protection: { Locked: false } });
    expect(JSON.stringify(formats.for("D5:D6"))).not.toContain("Locked");
    expect(JSON.stringify(workbook.requests)).not.toMatch(/password/i);
  });
});

describe("what is asked of Excel", () => {
  it("is at most six requests, the names that are taken included", async () => {
    await host.taken();
    await host.fill(richPlan, { protect: true });
    expect(requests().length).toBeLessThanOrEqual(6);
  });

  it("holds back the calculation in every request that writes", async () => {
    await host.fill(richPlan, { protect: false });
    const writing = requests().filter(({ Actions }) => Actions.some(({ ActionType }) => ActionType === 4));
    expect(writing.length).toBeGreaterThan(1);
    for (const { Actions } of writing) {
      expect(Actions.map(({ Name }) => Name)).toContain("SuspendApiCalculationUntilNextSync");
    }
  });

  it("is split where it would be more than 5 MB", async () => {
    const text = "silt loam over clay, tiled, mapped and sampled on a grid";
    const rows = Array.from({ length: 12_000 }, (_, row) => row);
    const long = sheet(
      "Long",
      rows.flatMap((row) => Array.from({ length: 8 }, (_, column) => cell(row, column, text))),
    );
    await host.fill(plan([long]), { protect: false });
    const sizes = requests().map((request) => JSON.stringify(request).length);
    expect(Math.max(...sizes)).toBeLessThan(5_000_000);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBeGreaterThan(5_000_000);
    expect(contentAt("Long", 11_999, 7)).toBe(text);
  });

  it("is one step of Undo where Excel offers that and nothing is locked", async () => {
    const run = jest.spyOn(excel.office.window.Excel, "run");
    await host.fill(richPlan, { protect: false });
    expect(run.mock.calls[0]?.[0]).toMatchObject({ mergeUndoGroup: true, delayForCellEdit: true });
    await host.remove({ starter: "trial", sheets: ["Fields", "Prices list"], names: ["Price_factor"] });
    run.mockClear();
    await host.fill(richPlan, { protect: true });
    await excelHost((level) => level !== "1.20").taken();
    for (const [options] of run.mock.calls) expect(options).not.toHaveProperty("mergeUndoGroup");
    run.mockRestore();
  });

  it("is told to the person as it goes on", async () => {
    const told: FillProgress[] = [];
    await host.fill(richPlan, { protect: false, onProgress: (progress) => told.push(progress) });
    const shares = told.map(({ share }) => share);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect([shares[0], shares.at(-1)]).toEqual([0, 1]);
    expect(told.every(({ doing }) => doing !== "")).toBe(true);
  });
});
