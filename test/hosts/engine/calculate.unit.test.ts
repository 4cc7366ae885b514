import { calculate } from "../../../src/hosts/engine";
import { cell, formula, plan, sheet } from "../plan-parts";
import { pairFunction, poundsFunction } from "./trial-functions";

const functions = [poundsFunction, pairFunction];

/** One sheet named "Fields" whose first column holds these formulas, one a row. */
async function answersOf(formulas: readonly string[]) {
  const cells = formulas.map((text, row) => cell(row * 4, 4, formula(text)));
  const given = [cell(0, 0, 12), cell(1, 0, 30), cell(2, 0, true), cell(3, 0, "0012"), cell(0, 1, "corn")];
  const values = await calculate(plan([sheet("Fields", [...given, ...cells])]), functions);
  return formulas.map((_, row) => values.valueAt("Fields", row * 4, 4));
}

describe("calculate", () => {
  it("works native formulas", async () => {
    const answers = await answersOf(["=A1*2+1", "=SUM(A1:A2)", '=IF(A3,"yes","no")', '=B1&" "&A1', "=A1>20"]);
    expect(answers).toEqual([25, 42, "yes", "corn 12", false]);
  });

  it("keeps text that looks like a number as text", async () => {
    expect(await answersOf(["=A4", "=ISTEXT(A4)"])).toEqual(["0012", true]);
  });

  it("calls our functions, with a blank optional argument taking its stated value", async () => {
    // 12 × 60; 12 × 56; a blank cell counts as left out: 12 × 56.
    expect(await answersOf(["=LOAM.TRIALPOUNDS(A1,60)", "=loam.trialpounds(A1)", "=LOAM.TRIALPOUNDS(A1,C9)"])).toEqual([
      720, 672, 672,
    ]);
  });

  it("spills one answer a row for a range", async () => {
    const values = await calculate(
      plan([
        sheet("S", [
          cell(0, 0, 10),
          cell(1, 0, 20),
          cell(2, 0, 30),
          cell(0, 1, formula("=LOAM.TRIALPOUNDS(A1:A3,50)")),
        ]),
      ]),
      functions,
    );
    expect([0, 1, 2, 3].map((row) => values.valueAt("S", row, 1))).toEqual([500, 1000, 1500, undefined]);
  });

  it("spills a table and lets other cells read it", async () => {
    const cells = [cell(0, 0, formula("=LOAM.TRIALPAIR(10)")), cell(5, 0, formula("=B2+1"))];
    const values = await calculate(plan([sheet("S", cells)]), functions);
    expect([values.valueAt("S", 0, 0), values.valueAt("S", 0, 1)]).toEqual(["half", 5]);
    expect([values.valueAt("S", 1, 0), values.valueAt("S", 1, 1)]).toEqual(["double", 20]);
    expect(values.valueAt("S", 5, 0)).toBe(21);
  });

  it("gives the sentence behind an error of ours, also inside a larger formula and in a spilled cell", async () => {
    const cells = [
      cell(0, 0, 10),
      cell(1, 0, 2000),
      cell(0, 1, formula("=LOAM.TRIALPOUNDS(A1:A2)")),
      cell(3, 0, formula("=1+LOAM.TRIALPOUNDS(A2)")),
      cell(4, 0, formula("=LOAM.TRIALPOUNDS(A9)")),
      cell(5, 0, formula('=IFERROR(LOAM.TRIALPOUNDS(A2),"none")')),
    ];
    const values = await calculate(plan([sheet("S", cells)]), functions);
    const refusal = { code: "#VALUE!", message: "yield must be between 0 and 1,000 bu/ac; got 2,000." };
    expect(values.valueAt("S", 0, 1)).toBe(560);
    expect(values.valueAt("S", 1, 1)).toEqual(refusal);
    expect(values.valueAt("S", 3, 0)).toEqual(refusal);
    expect(values.valueAt("S", 4, 0)).toEqual({ code: "#N/A", message: "waiting for yield" });
    expect(values.valueAt("S", 5, 0)).toBe("none");
  });

  it("passes a spreadsheet error in an argument on, without a sentence of ours", async () => {
    const cells = [cell(0, 0, formula("=1/0")), cell(0, 1, formula("=LOAM.TRIALPOUNDS(A1)"))];
    const values = await calculate(plan([sheet("S", cells)]), functions);
    expect(values.valueAt("S", 0, 0)).toEqual({ code: "#DIV/0!" });
    expect(values.valueAt("S", 0, 1)).toEqual({ code: "#DIV/0!" });
  });

  it("finds defined names, other sheets, and tables named like their sheet", async () => {
    const head = ["Field", "Yield", "Pounds"].map((text, column) => cell(0, column, text, "head"));
    const rows = [
      ["North", 100],
      ["South", 150],
    ].flatMap(([field, yieldBuPerAc], index) => [
      cell(index + 1, 0, field),
      cell(index + 1, 1, yieldBuPerAc),
      cell(index + 1, 2, formula("=LOAM.TRIALPOUNDS(Fields[[#This Row],[Yield]],weight_lb)")),
    ]);
    const totals = [cell(3, 1, formula("=SUM(Fields[Yield])"), "total")];
    const fields = sheet("Fields", [...head, ...rows, ...totals], {
      tables: [{ name: "Fields", area: { top: 0, left: 0, bottom: 3, right: 2 }, totals: true }],
    });
    const prices = sheet("Price list", [cell(0, 0, 60), cell(1, 0, formula("=MAX(Fields!C2:C3)"))]);
    const values = await calculate(
      plan(
        [fields, prices],
        [
          {
            name: "weight_lb",
            sheet: "Price list",
            area: { top: 0, left: 0, bottom: 0, right: 0 },
            says: "test weight",
          },
        ],
      ),
      functions,
    );
    expect(values.valueAt("Fields", 1, 2)).toBe(6000);
    expect(values.valueAt("Fields", 2, 2)).toBe(9000);
    expect(values.valueAt("Fields", 3, 1)).toBe(250);
    expect(values.valueAt("Price list", 1, 0)).toBe(9000);
  });

  it("starts clean each time, even with the same formulas", async () => {
    const workbook = (given: number) =>
      plan([sheet("S", [cell(0, 0, given), cell(0, 1, formula("=LOAM.TRIALPOUNDS(A1)"))])]);
    const first = await calculate(workbook(10), functions);
    const second = await calculate(workbook(3), functions);
    expect([first.valueAt("S", 0, 1), second.valueAt("S", 0, 1)]).toEqual([560, 168]);
  });

  it("keeps two calculations apart that are asked for at once", async () => {
    const workbook = (given: number) =>
      plan([sheet("S", [cell(0, 0, given), cell(0, 1, formula("=LOAM.TRIALPOUNDS(A1)"))])]);
    const both = await Promise.all([calculate(workbook(2000), functions), calculate(workbook(1), functions)]);
    expect(both.map((values) => values.valueAt("S", 0, 1))).toEqual([
      { code: "#VALUE!", message: "yield must be between 0 and 1,000 bu/ac; got 2,000." },
      56,
    ]);
  });

  it("takes a workbook without formulas", async () => {
    const values = await calculate(plan([sheet("S", [cell(0, 0, 5)])]), functions);
    expect(values.valueAt("S", 0, 0)).toBe(5);
  });
});
