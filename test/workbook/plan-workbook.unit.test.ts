import { planWorkbook } from "../../src/workbook/plan-workbook";
import type { SheetPlan } from "../../src/workbook/plan";
import { smallModel } from "./small-model";

const nothing = { sheets: [], names: [], tables: [] };
const plan = planWorkbook(smallModel, nothing);
const sheet = (name: string): SheetPlan => {
  const found = plan.sheets.find((each) => each.name === name);
  if (!found) throw new Error(`no sheet ${name}`);
  return found;
};
const at = (name: string, row: number, column: number) =>
  sheet(name).cells.find((cell) => cell.row === row && cell.column === column);

describe("planWorkbook", () => {
  it("puts the title first, the question second, and the blocks from the fourth row", () => {
    expect(at("Terms", 0, 0)).toMatchObject({ content: "Terms", style: "title" });
    expect(at("Terms", 1, 0)).toMatchObject({ content: "Go on to Field list.", style: "answers" });
    expect(at("Terms", 3, 0)).toMatchObject({ content: "Money", style: "section" });
    expect(at("Terms", 4, 0)).toMatchObject({ content: "Interest", style: "label" });
    expect(at("Terms", 4, 1)).toMatchObject({ content: 0.08, style: "input" });
    expect(at("Terms", 4, 2)).toMatchObject({ content: "a year", style: "unit" });
  });
  it("defines the name on the value", () => {
    expect(plan.names).toEqual([
      { name: "interest", sheet: "Terms", area: { top: 4, left: 1, bottom: 4, right: 1 }, says: "Interest (a year)" },
    ]);
  });
  it("writes names, places on other sheets, columns of the row, spans and whole columns", () => {
    expect(at("Terms", 5, 1)?.content).toEqual({ formula: "=interest/2" });
    expect(at("Terms", 6, 1)?.content).toEqual({ formula: "='Field list'!$B$5" });
    expect(at("Field list", 4, 1)?.content).toEqual({ formula: "=SUM(Fields[Acres])" });
    expect(at("Field list", 6, 3)?.content).toEqual({
      formula: '=IF(Fields[[#This Row],[Field]]="","",LOAM.SEEDSPACING(Fields[[#This Row],[Rate seeds/ac]],15))',
    });
    expect(at("Field list", 9, 0)?.content).toEqual({
      formula: "=SUM(Fields[[#This Row],[Acres]:[Rate seeds/ac]])*Terms!$B$6",
    });
  });
  it("lays a table with the figures over all rows above its header", () => {
    expect(sheet("Field list").tables).toEqual([
      { name: "Fields", area: { top: 5, left: 0, bottom: 7, right: 3 }, totals: false },
    ]);
    expect(at("Field list", 4, 0)).toMatchObject({ content: "All", style: "totalText" });
    expect(at("Field list", 5, 2)).toMatchObject({ content: "Rate seeds/ac", style: "head" });
    expect(at("Field list", 7, 0)).toEqual({ row: 7, column: 0, style: "inputText" });
  });
  it("keeps the header in sight and repeats it in print", () => {
    expect(sheet("Field list").freeze).toEqual({ rows: 6, columns: 1 });
    expect(sheet("Field list").print).toMatchObject({ repeatRows: { first: 0, last: 5 }, fit: { wide: 1, tall: 0 } });
    expect(sheet("Terms").freeze).toBeUndefined();
  });
  it("writes conditional formats with addresses, since they cannot name a table", () => {
    expect(sheet("Field list").rules).toEqual([
      { kind: "formula", area: { top: 6, left: 2, bottom: 7, right: 2 }, formula: "=$C7>$B7", look: "attention" },
    ]);
  });
  it("says the range of a number in the prompt and in the refusal", () => {
    expect(sheet("Field list").validations).toEqual([
      {
        kind: "between",
        area: { top: 6, left: 1, bottom: 7, right: 1 },
        min: 0,
        max: 1000,
        whole: false,
        prompt: "Acres. From 0 to 1,000.",
        refusal: "Enter a number from 0 to 1,000.",
      },
    ]);
  });
  it("breaks paragraphs between words at the width of the sheet", () => {
    // Widths 12 + 8 + 12 + 10 = 42 digits, 45 letters.
    expect(at("Field list", 11, 0)?.content).toBe("one two three four five six seven eight nine");
    expect(at("Field list", 12, 0)?.content).toBe("ten eleven");
  });
  it("puts notes on headers", () => {
    expect(sheet("Field list").notes).toEqual([{ row: 5, column: 0, text: "A name." }]);
  });
  it("doubles an ampersand in the foot, where one alone starts a code", () => {
    const { sheets } = planWorkbook({ ...smallModel, title: "Hill & Dale" }, nothing);
    expect(sheets[0]?.print.footer).toBe("&LHill && Dale&CTerms&RPage &P of &N");
  });
  it("refuses a model whose references lead nowhere", () => {
    const [terms] = smallModel.sheets;
    if (!terms) throw new Error("the small model has a sheet");
    expect(() => planWorkbook({ ...smallModel, sheets: [terms] }, nothing)).toThrow();
  });
});
