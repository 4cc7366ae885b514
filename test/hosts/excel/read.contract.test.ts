import { HostError, type WorkbookHost } from "../../../src/hosts/port";
import { excelInTest } from "./excel-in-test";
import type { MemoryWorkbook } from "./memory/memory-workbook";

const excel = excelInTest();
let workbook: MemoryWorkbook;
let host: WorkbookHost;
beforeEach(() => {
  ({ workbook, host } = excel.open());
  const sheet = workbook.Worksheets.Add("Potash plan");
  sheet.GetRange("A1:B3").Formulas = [
    ["Field", "Rate"],
    ["Mill Road", '=LOAM.NEED("x")'],
    ["Creek Bend", '=""'],
  ];
  sheet.shown.set("1,1", "#N/A").set("2,1", "");
  sheet.Tables.Add("A1:B3", true).Name = "Plan";
  workbook.Names.Add("Rate_of_Mill_Road", sheet.GetRange("B2"), "");
  workbook.active = sheet;
  workbook.selected = { sheet, address: "B2" };
});

describe("reading cells", () => {
  it("gives the selected cell with its sheet, its formula and what it shows", async () => {
    expect(await host.readSelection()).toEqual({
      address: "'Potash plan'!B2",
      formulas: [['=LOAM.NEED("x")']],
      values: [["#N/A"]],
    });
  });

  it.each(["'Potash plan'!B2", "B2", "$B$2", "Rate_of_Mill_Road"])("finds %s", async (address) => {
    expect(await host.read(address)).toMatchObject({ address: "'Potash plan'!B2", values: [["#N/A"]] });
  });

  it("finds a column of a table", async () => {
    expect(await host.read("Plan[Field]")).toMatchObject({
      address: "'Potash plan'!A2:A3",
      values: [["Mill Road"], ["Creek Bend"]],
    });
  });

  it("tells a blank cell from a formula that gives empty text", async () => {
    expect((await host.read("'Potash plan'!B3:B4")).values).toEqual([[""], [null]]);
  });

  it.each([
    ["Elsewhere!A1", "ItemNotFound", /sheet or range/],
    ["Nobody", "ItemNotFound", /sheet or range/],
    ["Plan[Acres]", "ItemNotFound", /sheet or range/],
  ])("says what it does not find: %s", async (address, code, sentence) => {
    await expect(host.read(address)).rejects.toMatchObject({ code, message: expect.stringMatching(sentence) });
    await expect(host.read(address)).rejects.toBeInstanceOf(HostError);
  });

  it("asks for fewer cells instead of reading a whole column", async () => {
    workbook.selected = { sheet: workbook.active, address: "A1:A1048576" };
    await expect(host.readSelection()).rejects.toMatchObject({ message: expect.stringMatching(/20,000 cells/) });
    const asked = JSON.stringify(workbook.requests);
    expect(asked).not.toContain('"values"');
  });

  it("asks for one block when several are selected", async () => {
    workbook.selected = { sheet: workbook.active, address: "A1,B3" };
    await expect(host.readSelection()).rejects.toMatchObject({ message: expect.stringMatching(/one block of cells/) });
  });
});

describe("inserting a formula", () => {
  it("writes it into an empty cell", async () => {
    workbook.selected = { sheet: workbook.active, address: "D9" };
    await host.insertFormula('=LOAM.CROPREMOVAL("corn",200,"P2O5")');
    expect(workbook.active.cells.at(8, 3)?.content).toBe('=LOAM.CROPREMOVAL("corn",200,"P2O5")');
  });

  it.each(["A2", "B2", "B3"])("leaves a filled cell alone: %s", async (address) => {
    const before = workbook.picture();
    workbook.selected = { sheet: workbook.active, address };
    await expect(host.insertFormula("=1")).rejects.toMatchObject({
      message: `'Potash plan'!${address} is not empty. Select an empty cell, then insert again.`,
    });
    expect(workbook.picture()).toBe(before);
  });
});

describe("showing cells", () => {
  it("brings the sheet of an address or a name in sight and selects the cells", async () => {
    workbook.Worksheets.Add("Lime plan");
    await host.show("'Lime plan'!A3:C4");
    expect([workbook.active.Name, workbook.selected?.sheet.Name]).toEqual(["Lime plan", "Lime plan"]);
    expect(workbook.selected?.address).toBe("A3:C4");
    await host.show("Plan[Rate]");
    expect(workbook.active.Name).toBe("Potash plan");
    expect(workbook.selected?.address).toBe("B2:B3");
  });

  it("says what is not there", async () => {
    await expect(host.show("Elsewhere!A1")).rejects.toMatchObject({ message: expect.stringMatching(/sheet or range/) });
  });
});

describe("a change of the selection", () => {
  it("is told to the listener", async () => {
    const listener = jest.fn();
    await host.onSelectionChange(listener);
    expect(listener).not.toHaveBeenCalled();
    excel.office.select();
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(listener).toHaveBeenCalledTimes(1);
  });
});
