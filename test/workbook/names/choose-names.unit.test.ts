import { chooseNames, longestSheetName } from "../../../src/workbook/names/choose-names";
import { wordsOf } from "../../../src/workbook/names/words-of";
import { prose } from "../../../src/workbook/formula/expression";
import { sheetName } from "../../../src/workbook/formula/reference";
import { smallModel } from "../small-model";

const nothing = { sheets: [], names: [], tables: [] };

describe("chooseNames", () => {
  it("takes the wished names when none is in use", () => {
    const names = chooseNames(smallModel, nothing);
    expect([...names.sheets]).toEqual([
      ["terms", "Terms"],
      ["fields", "Field list"],
    ]);
    expect([...names.tables.values()]).toEqual(["Fields"]);
    expect([...names.names.values()]).toEqual(["interest"]);
  });
  it.each([
    ["a sheet", { ...nothing, sheets: ["TERMS"] }],
    ["a table", { ...nothing, tables: ["fields"] }],
    ["a name", { ...nothing, names: ["Interest"] }],
    ["a name that a table wants", { ...nothing, names: ["FIELDS"] }],
    ["a table that a name wants", { ...nothing, tables: ["INTEREST"] }],
  ])("moves everything to the same number when %s is taken, without regard to case", (_, taken) => {
    const names = chooseNames(smallModel, taken);
    expect([...names.sheets.values()]).toEqual(["Terms 2", "Field list 2"]);
    expect([...names.tables.values()]).toEqual(["Fields_2"]);
    expect([...names.names.values()]).toEqual(["interest_2"]);
  });
  it("goes on counting until nothing collides", () => {
    const names = chooseNames(smallModel, { sheets: ["Terms", "Field list 2"], names: ["interest_3"], tables: [] });
    expect(names.sheets.get("terms")).toBe("Terms 4");
  });
  it("keeps a long sheet name within what a spreadsheet takes", () => {
    const [sheet] = smallModel.sheets;
    if (!sheet) throw new Error("the small model has a sheet");
    const long = "A sheet name of thirty-one signs";
    const model = { ...smallModel, sheets: [{ ...sheet, name: long.slice(0, longestSheetName) }] };
    const name = chooseNames(model, { ...nothing, names: ["interest"] }).sheets.get("terms") ?? "";
    expect(name).toMatch(/ 2$/);
    expect(name.length).toBeLessThanOrEqual(longestSheetName);
  });
});

describe("wordsOf", () => {
  it("reads prose with the final sheet names", () => {
    const names = chooseNames(smallModel, { ...nothing, sheets: ["Terms"] });
    expect(wordsOf(prose`See ${sheetName("fields")}.`, names)).toBe("See Field list 2.");
    expect(wordsOf("plain", names)).toBe("plain");
  });
  it("refuses prose that points to a sheet the model does not have", () => {
    expect(() => wordsOf(prose`See ${sheetName("nowhere")}.`, chooseNames(smallModel, nothing))).toThrow(/not a sheet/);
  });
});
