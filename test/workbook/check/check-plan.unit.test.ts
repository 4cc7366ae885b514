import { allFunctions } from "../../../src/functions";
import { checkPlan } from "../../../src/workbook/check/check-plan";
import type { CellPlan, SheetPlan, WorkbookPlan } from "../../../src/workbook/plan";

const area = (top: number, left: number, bottom: number, right: number) => ({ top, left, bottom, right });

function cell(row: number, column: number, content: CellPlan["content"]): CellPlan {
  return { row, column, style: "body", ...(content !== undefined && { content }) };
}

function sheetWith(changes: Partial<SheetPlan>): SheetPlan {
  return {
    name: "Sheet",
    columnWidths: [10, 10],
    rowHeights: {},
    cells: [cell(0, 0, "Field"), cell(0, 1, "Cost $/ac"), cell(1, 0, "Home"), cell(1, 1, 5)],
    tables: [{ name: "Fields", area: area(0, 0, 1, 1), totals: false }],
    validations: [],
    rules: [],
    charts: [],
    notes: [],
    print: { orientation: "portrait", fit: { wide: 1, tall: 0 }, footer: "" },
    ...changes,
  };
}

function planWith(changes: Partial<SheetPlan>, names: WorkbookPlan["names"] = []): WorkbookPlan {
  return { starter: "x", title: "x", sheets: [sheetWith(changes)], names };
}

function withFormula(formula: string): WorkbookPlan {
  const { cells } = sheetWith({});
  return planWith({ cells: [...cells, cell(3, 1, { formula })] });
}

const problems = (plan: WorkbookPlan) => checkPlan(plan, allFunctions).join("; ");

describe("checkPlan", () => {
  it("has nothing to say about a plan that holds together", () => {
    for (const formula of [
      "=SUM(Fields[[Cost $/ac]])",
      "=Fields[[#This Row],[Cost $/ac]]*2",
      "=LOAM.SEEDRATE(B2,95)",
      '=IF(Sheet!$B$2>1,A1,"")',
    ]) {
      expect(problems(withFormula(formula))).toBe("");
    }
  });
  it.each([
    ["=SUM(", "not a formula"],
    ["=LOAM.NOSUCHTHING(1)", "no function LOAM.NOSUCHTHING"],
    ["=LOAM.SEEDRATE(1)", "1 arguments for LOAM.SEEDRATE"],
    ["=LOAM.SEEDRATE(1,2,3,4)", "4 arguments for LOAM.SEEDRATE"],
    ["=Fields[Yield]", 'no column "Yield"'],
    ["=SUM(Crops[Acres])", "no table for Crops[Acres]"],
    ["=interest_rate*2", "no name interest_rate"],
    ["=Other!A1", "no sheet for Other!A1"],
    ["=B99", "B99 lies outside what is written"],
    ["=A1+#REF!", "the error #REF! stands"],
  ])("finds what is wrong with %s", (formula, problem) => {
    expect(problems(withFormula(formula))).toContain(problem);
  });
  it("finds a cell that is written twice", () => {
    const { cells } = sheetWith({});
    expect(problems(planWith({ cells: [...cells, cell(1, 1, 6)] }))).toContain("row 2, column 2 is written twice");
  });
  it("finds headers that are missing, repeated or unreadable in a table reference", () => {
    const heads = (first: string, second: string | number) =>
      planWith({ cells: [cell(0, 0, first), cell(0, 1, second), cell(1, 0, "a"), cell(1, 1, 1)] });
    expect(problems(heads("Field", 3))).toContain("missing or not text");
    expect(problems(heads("Field", "field"))).toContain('two columns "field"');
    expect(problems(heads("Field", "Yield (bu)"))).toContain("cannot head a table column");
  });
  it("finds tables that lie on each other and things outside the sheet", () => {
    const tables = [
      { name: "Fields", area: area(0, 0, 1, 1), totals: false },
      { name: "Others", area: area(0, 1, 1, 1), totals: false },
    ];
    expect(problems(planWith({ tables }))).toContain("Others lies on another table");
    expect(problems(planWith({ notes: [{ row: 40, column: 0, text: "far" }] }))).toContain("outside the sheet");
    expect(problems(planWith({ columnWidths: [10] }))).toContain("1 column widths for 2 columns");
  });
  it("finds lists that a cell cannot hold", () => {
    const list = (words: string[]) =>
      planWith({ validations: [{ kind: "list", area: area(1, 1, 1, 1), words, prompt: "", refusal: "" }] });
    expect(problems(list(["corn", "soybean"]))).toBe("");
    expect(problems(list(["corn, dry"]))).toContain("too long or has a comma");
    expect(problems(list(Array.from({ length: 60 }, () => "word")))).toContain("too long or has a comma");
  });
  it("finds names that a spreadsheet refuses", () => {
    for (const name of ["A sheet name that is far too long for it", "a/b", "'quoted'", ""]) {
      expect(problems(planWith({ name }))).toContain("cannot name a sheet");
    }
    const named = (name: string) => [{ name, sheet: "Sheet", area: area(0, 0, 0, 0), says: "" }];
    for (const name of ["a b", "AB12", "R1C1", "c", "1st"]) {
      expect(problems(planWith({}, named(name)))).toContain("cannot be a name");
    }
    expect(problems(planWith({}, named("FIELDS")))).toContain('"fields" names two things');
    expect(problems(planWith({}, [{ name: "good", sheet: "Gone", area: area(0, 0, 0, 0), says: "" }]))).toContain(
      "a sheet that is not there",
    );
  });
  it("looks into conditional formats and lists as well", () => {
    expect(
      problems(planWith({ rules: [{ kind: "formula", area: area(1, 1, 1, 1), formula: "=$Z$99>1", look: "bad" }] })),
    ).toContain("$Z$99 lies outside");
    expect(
      problems(
        planWith({
          validations: [{ kind: "list", area: area(1, 1, 1, 1), words: "Lists!$A$1:$A$2", prompt: "", refusal: "" }],
        }),
      ),
    ).toContain("no sheet for Lists!$A$1:$A$2");
  });
});
