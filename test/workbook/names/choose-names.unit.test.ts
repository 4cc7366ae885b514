import { chooseNames, longestSheetName } from "../../../src/workbook/names/choose-names";
import { wordsOf } from "../../../src/workbook/names/words-of";
import { prose } from "../../../src/workbook/formula/expression";
import { sheetName } from "../../../src/workbook/formula/reference";
import { nastyTexts } from "../../nasty-texts";
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
    expect([...names.tables.values()]).toEqual(["Fields2"]);
    expect([...names.names.values()]).toEqual(["interest_2"]);
  });
  it("goes on counting until nothing collides", () => {
    const names = chooseNames(smallModel, { sheets: ["Terms", "Field list 2"], names: ["interest_3"], tables: [] });
    expect(names.sheets.get("terms")).toBe("Terms 4");
  });
  it("tells the sheets of a group apart by its name, and their tables by number", () => {
    const taken = { sheets: ["Terms", "Creek Bend Terms"], names: ["interest"], tables: ["Fields"] };
    const names = chooseNames({ ...smallModel, group: "Mill Road" }, taken);
    expect([...names.sheets.values()]).toEqual(["Mill Road Terms", "Mill Road Field list"]);
    expect([...names.tables.values(), ...names.names.values()]).toEqual(["Fields2", "interest_2"]);
  });
  it("cuts the name of a group, not what the sheet is, and numbers two that read alike then", () => {
    const group = "Windmill Hollow Farm, north side";
    const taken = { ...nothing, sheets: ["Windmill Hollow Farm Field list"] };
    const names = chooseNames({ ...smallModel, group }, taken);
    // 31 letters less " 2" and " Field list" leave 18 of the group; less " 2" and " Terms" leave 23.
    expect(names.sheets.get("fields")).toBe("Windmill Hollow Fa Field list 2");
    expect(names.sheets.get("terms")).toBe("Windmill Hollow Farm, n Terms 2");
    for (const name of names.sheets.values()) expect(name.length).toBeLessThanOrEqual(longestSheetName);
  });
  it("leaves out of a group's name what no sheet may be called", () => {
    const names = chooseNames({ ...smallModel, group: "'Miller/Ross: [side]'" }, nothing);
    expect([...names.sheets.values()]).toEqual(["Miller Ross side Terms", "Miller Ross side Field list"]);
  });
  it.each(nastyTexts)("finds names that a spreadsheet takes for a group called %j", (group) => {
    for (const name of chooseNames({ ...smallModel, group }, nothing).sheets.values()) {
      expect(name).toMatch(/^(?!')[^[\]:*?/\\\p{C}]{1,31}(?<!')$/u);
      expect(name).toMatch(/(?:Terms|Field list)$/);
    }
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
