import { Workbook, type Cell, type Worksheet } from "exceljs";
import { readXlsx } from "hucre/xlsx";
import { writeXlsx } from "../../../src/hosts/xlsx/write-xlsx";
import { fieldsName, smallPlan, smallValues } from "./small-plan";

let bytes: Uint8Array;
beforeAll(async () => {
  bytes = await writeXlsx(smallPlan, smallValues, { protect: true });
});

describe("exceljs opens the file and finds", () => {
  let book: Workbook;
  let fields: Worksheet;
  let answers: Worksheet;
  beforeAll(async () => {
    book = new Workbook();
    await book.xlsx.load(Buffer.from(bytes) as unknown as ArrayBuffer); // exceljs declares an older Buffer
    const [first, second] = book.worksheets;
    if (!first || !second) throw new Error("two sheets expected");
    [fields, answers] = [first, second];
  });
  const lookOf = (cell: Cell) => ({
    bold: cell.font?.bold ?? false,
    color: cell.font?.color?.argb,
    fill: cell.fill?.type === "pattern" ? cell.fill.fgColor?.argb : undefined,
    locked: cell.protection?.locked ?? true,
  });

  it("both sheets, their colours and the title", () => {
    expect(book.worksheets.map(({ name }) => name)).toEqual([fieldsName, "Answers"]);
    expect(fields.properties.tabColor?.argb).toBe("FF5A4636");
    expect(book.title).toBe("Small plan");
  });
  it("typed numbers and texts", () => {
    expect(fields.getCell("C5").value).toBe(78.5);
    expect(fields.getCell("A6").value).toBe("=cmd|' /C calc'!A0");
    expect(fields.getCell("A7").value).toBe("Mill & Road");
  });
  it("formulas with what they showed", () => {
    expect(fields.getCell("F6").value).toMatchObject({
      formula: "Fields[[#This Row],[Removal]]*Fields[[#This Row],[Acres]]",
      result: 4363.56,
    });
    expect(answers.getCell("B6").result).toEqual({ error: "#N/A" });
    expect(answers.getCell("B5").result).toBe(true);
  });
  it("number formats, fonts, fills and what stays writable", () => {
    expect(fields.getCell("C5").numFmt).toBe("#,##0.0");
    expect(lookOf(fields.getCell("A4"))).toEqual({ bold: true, color: "FFFFFFFF", fill: "FF5A4636", locked: true });
    expect(lookOf(fields.getCell("C5"))).toEqual({ bold: false, color: "FF1F4E8C", fill: "FFFDF6E3", locked: false });
    expect(fields.getCell("A4").alignment).toMatchObject({ horizontal: "center", vertical: "middle", wrapText: true });
    expect(fields.getCell("E5").border.left?.style).toBe("thin");
  });
  it("widths, heights, the frozen part", () => {
    // 24 characters of 7 pixels and 5 of padding: 173 / 7 = 24.714, cut to a 256th.
    expect(fields.getColumn(1).width).toBeCloseTo(24.7109375, 7);
    expect(fields.getRow(4).height).toBe(32);
    expect(fields.views[0]).toMatchObject({ state: "frozen", xSplit: 1, ySplit: 4 });
  });
  it("the print set-up", () => {
    expect(fields.pageSetup).toMatchObject({
      orientation: "landscape",
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      printArea: "A1:H25",
      printTitlesRow: "4:4",
    });
    expect(fields.headerFooter.oddFooter).toBe("&LLoamsheet&RPage &P of &N");
  });
  it("the choices and limits of input cells, with their words", () => {
    expect(fields.getCell("B6").dataValidation).toMatchObject({
      type: "list",
      formulae: ["'Answers'!$A$10:$A$11"],
      prompt: "Pick the crop.",
      error: "Choose a crop from the list.",
      errorStyle: "stop",
    });
    expect(fields.getCell("C5").dataValidation).toMatchObject({ type: "decimal", formulae: [0, 100000] });
    expect(answers.getCell("C3").dataValidation).toMatchObject({ type: "list", formulae: ['"yes,no"'] });
  });
  it("the note", () => {
    const note = fields.getCell("E4").note;
    const text = typeof note === "string" ? note : note?.texts?.map((part) => part.text).join("");
    expect(text).toBe("Pounds that leave with the grain, at the published content.");
  });
  it("the table", () => {
    const table = fields.getTable("Fields") as unknown as { table: { tableRef: string; totalsRow: boolean } };
    expect(table.table).toMatchObject({ tableRef: "A4:F8", totalsRow: true });
  });
  it("the defined names", () => {
    expect(book.definedNames.getRanges("Crops").ranges).toEqual(["'Field list'!$B$5:$B$7"]);
    expect(book.definedNames.getRanges("TotalPotash").ranges).toEqual(["Answers!$B$3"]);
  });
  it("the conditional formats", () => {
    const rules = (fields as unknown as { conditionalFormattings: { ref: string; rules: { type: string }[] }[] })
      .conditionalFormattings;
    expect(rules.map(({ ref, rules: [rule] }) => [ref, rule?.type])).toEqual([
      ["E5:E7", "cellIs"],
      ["A5:A7", "expression"],
      ["C5:C7", "dataBar"],
      ["D5:D7", "colorScale"],
    ]);
  });
});

describe("hucre opens the file and finds", () => {
  it("the charts, their ranges, titles and colours", async () => {
    const book = await readXlsx(bytes);
    const [first, second] = book.sheets;
    expect(first?.charts?.map(({ kinds, title }) => [kinds[0], title])).toEqual([
      ["bar", "Pounds of K2O that leave"],
      ["scatter", "Acres and yield"],
    ]);
    expect(first?.charts?.[0]?.series?.[0]).toMatchObject({
      name: "Pounds",
      valuesRef: "'Field list'!$F$5:$F$7",
      categoriesRef: "'Field list'!$A$5:$A$7",
      color: "5A4636",
    });
    expect(second?.charts?.map(({ kinds }) => kinds[0])).toEqual(["line", "bar"]);
  });
  it("what spills, and the cached values", async () => {
    const book = await readXlsx(bytes);
    const cell = book.sheets[1]?.cells?.get("7,1");
    expect(cell).toMatchObject({ formulaDynamic: true, formulaRef: "B8:C9", formulaType: "array" });
    expect(book.sheets[1]?.rows[8]?.[2]).toBe(134);
  });
});

describe("a validation that would spoil the file", () => {
  const spoiled = (validation: object) => {
    const [first, ...rest] = smallPlan.sheets;
    if (!first) throw new Error("no sheet");
    const plan = {
      kind: "list",
      area: { top: 0, left: 0, bottom: 0, right: 0 },
      prompt: "",
      refusal: "",
      ...validation,
    };
    return { ...smallPlan, sheets: [{ ...first, validations: [plan as (typeof first.validations)[number]] }, ...rest] };
  };
  it.each([
    ["a choice with a comma", { words: ["a,b"] }, /cannot hold a comma/],
    ["more choices than fit", { words: Array.from({ length: 60 }, (_, index) => `choice ${index}`) }, /255 characters/],
    ["a prompt that is too long", { words: ["a"], prompt: "x".repeat(256) }, /255 characters; this one has 256/],
  ])("is refused: %s", async (_what, validation, says) => {
    await expect(writeXlsx(spoiled(validation), smallValues)).rejects.toThrow(says);
  });
});
