import type { WorkbookHost } from "../../../src/hosts/port";
import { excelInTest } from "./excel-in-test";
import type { MemoryWorkbook } from "./memory/memory-workbook";

const excel = excelInTest();
let workbook: MemoryWorkbook;
let host: WorkbookHost;
beforeEach(() => {
  ({ workbook, host } = excel.open());
  workbook.Worksheets.Add("Quick what if").GetRange("A1:B4").Formulas = [
    ["Yield", 190],
    ["Price", 4.35],
    ["Gross", "=B1*B2"],
    ["Nothing", '=""'],
  ];
});

const at = (row: number, column: number) => workbook.sheet("Quick what if").cells.at(row, column)?.content;

describe("writing over typed values", () => {
  it("puts each value into its cell, with two requests for all of them", async () => {
    await host.write(
      [
        { address: "'Quick what if'!B1", rows: [[205]] },
        { address: "'Quick what if'!B2", rows: [[4.6]] },
        { address: "'Quick what if'!B9", rows: [[null]] },
      ],
      "typedValues",
    );
    expect([at(0, 1), at(1, 1), at(2, 1)]).toEqual([205, 4.6, "=B1*B2"]);
    expect(workbook.asked).toHaveLength(2);
  });

  it.each(["B3", "B4"])("leaves all as it was when %s holds a formula", async (cell) => {
    const before = workbook.picture();
    const blocks = [
      { address: "'Quick what if'!B1", rows: [[205]] },
      { address: `'Quick what if'!${cell}`, rows: [[900]] },
    ];
    await expect(host.write(blocks, "typedValues")).rejects.toMatchObject({
      code: "FormulaThere",
      message: `'Quick what if'!${cell} holds a formula, which stays. Nothing was written.`,
    });
    expect(workbook.picture()).toBe(before);
  });
});

describe("writing into empty cells", () => {
  it("fills a block from one cell on; text that looks like a date stays text", async () => {
    const rows = [
      ["Strip", "Treatment", null],
      [1, "6-24-24", { formula: "=D2*2" }],
    ];
    await host.write([{ address: "'Quick what if'!D1", rows }], "nothing");
    expect([at(0, 3), at(0, 4), at(1, 3), at(1, 4), at(1, 5)]).toEqual(["Strip", "Treatment", 1, "6-24-24", "=D2*2"]);
    expect(at(0, 5) ?? "").toBe("");
  });

  it("names the first cell that is in the way and writes nothing", async () => {
    const before = workbook.picture();
    const rows = [
      [1, 2],
      [3, 4],
    ];
    await expect(host.write([{ address: "'Quick what if'!A4", rows }], "nothing")).rejects.toMatchObject({
      code: "CellNotEmpty",
      message: expect.stringMatching(/^'Quick what if'!A4 is not empty\. /),
    });
    expect(workbook.picture()).toBe(before);
  });
});
