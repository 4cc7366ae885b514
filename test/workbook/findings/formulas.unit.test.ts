import { doubleLines } from "../../../src/workbook/findings/double-lines";
import { errorCells } from "../../../src/workbook/findings/error-cells";
import { typedOver } from "../../../src/workbook/findings/typed-over";
import { unknownNames } from "../../../src/workbook/findings/unknown-names";
import { sheetOf, workbookOf, type GivenCell } from "./reading-of";

const f = (formula: string, v: number | string | null = 1): GivenCell => ({ f: formula, v });

describe("a number typed over a formula", () => {
  const found = (rows: GivenCell[][], tables: Parameters<typeof sheetOf>[2] = {}) =>
    typedOver(workbookOf([sheetOf("Plan", rows, tables)]));

  it("is found in a list, with the formula that would stand there", () => {
    const rows = [
      ["Field", "Acres", "Cost $"],
      ["A", 10, f("=B2*$E$1")],
      ["B", 20, f("=B3*$E$1")],
      ["C", 30, 999],
    ];
    expect(found([...rows, ["D", 40, f("=B5*$E$1")]])).toEqual([
      {
        ...{ kind: "typedOver", at: { sheet: "Plan", row: 3, column: 2 }, row: "C", head: "Cost $" },
        ...{ value: 999, formula: "=B4*$E$1" },
      },
    ]);
  });
  it("is found in a table, whose formulas read the same in every row", () => {
    const own = '=LOAM.REMOVAL(Fields[[#This Row],[Crop]],Fields[[#This Row],[Yield bu/ac]],"K2O")';
    const rows = [
      ["Field", "Takes"],
      ["A", f(own)],
      ["B", 41],
      ["C", f(own)],
      ["Whole farm", f("=SUM(B2:B4)")],
    ];
    const table = { name: "Fields", area: { top: 0, left: 0, bottom: 4, right: 1 }, totals: true };
    expect(found(rows, { tables: [table] })).toMatchObject([{ at: { row: 2, column: 1 }, value: 41, formula: own }]);
  });
  it("is not a column of typed numbers with one formula in it, nor one whose formulas differ", () => {
    expect(
      found([
        ["Field", "Acres"],
        ["A", 10],
        ["B", f("=5*4")],
        ["C", 30],
      ]),
    ).toEqual([]);
    expect(
      found([
        ["Field", "Acres"],
        ["A", f("=B9*2")],
        ["B", f("=C1+1")],
        ["C", 30],
      ]),
    ).toEqual([]);
  });
  it("is not a blank, a word, or a column where all is as it was", () => {
    expect(
      found([
        ["F", "Cost"],
        ["A", f("=C2")],
        ["B", f("=C3")],
        ["C", null],
        ["D", "none"],
        ["E", f("=C6")],
      ]),
    ).toEqual([]);
  });
});

describe("a line that stands twice", () => {
  const rows: GivenCell[][] = [
    ["An acre of", "", "corn", "soybean"],
    ["Seed", "$/ac", 118, 65],
    ["Fuel", "$/ac", 22, 18],
    ["seed ", "$/ac", 118, 70],
  ];
  it("has the same words and the same amount in one column", () => {
    expect(doubleLines(workbookOf([sheetOf("Budgets", rows)]))).toEqual([
      {
        ...{ kind: "doubleLine", at: { sheet: "Budgets", row: 3, column: 2 } },
        ...{ first: { sheet: "Budgets", row: 1, column: 2 }, label: "seed", amount: 118, column: "corn" },
      },
    ]);
  });
  it("is not one with another amount, other words or nothing in it", () => {
    const other: GivenCell[][] = [
      ["Repairs", "$/ac", 22],
      ["Fuel", "$/ac", 22],
      ["Fuel", "$/ac", 23],
      ["Rent", "$/ac", 0],
      ["Rent", "$/ac", 0],
    ];
    expect(doubleLines(workbookOf([sheetOf("Budgets", other)]))).toEqual([]);
  });
  it("is looked for only in budgets", () => {
    const fields: GivenCell[][] = [
      ["Field", "Acres"],
      ["Mill Road", 80],
      ["Mill Road", 80],
    ];
    expect(doubleLines(workbookOf([sheetOf("Fields", fields)]))).toEqual([]);
  });
});

describe("a cell without an answer", () => {
  it("is listed with its sentence, those of a column with the same one together", () => {
    const rows = [
      ["Need"],
      [f("=LOAM.LIMENEED(A1)", "#N/A")],
      [f("=LOAM.LIMENEED(A2)", "#N/A")],
      [f("=LOAM.LIMENEED(A3)", "#VALUE!")],
    ];
    const messages = new Map([
      ["1,0", "waiting for bufferPH"],
      ["2,0", "waiting for bufferPH"],
      ["3,0", "pH must be …"],
    ]);
    expect(errorCells(workbookOf([sheetOf("Lime", rows, { messages })]))).toMatchObject([
      { at: { row: 1 }, code: "#N/A", message: "waiting for bufferPH", cells: [{ row: 1 }, { row: 2 }] },
      { at: { row: 3 }, code: "#VALUE!", message: "pH must be …", cells: [{ row: 3 }] },
    ]);
  });
  it("is not one whose formula calls nothing of ours, and not one with an answer", () => {
    const rows = [[f("=1/0", "#DIV/0!"), f("=OTHER.THING(1)", "#VALUE!"), f("=LOAM.REMOVAL(A1)", 41), "#N/A"]];
    expect(errorCells(workbookOf([sheetOf("Sheet1", rows)]))).toEqual([]);
  });
});

describe("a name that the spreadsheet does not know", () => {
  it("can be mended where the function is ours, also as files keep it", () => {
    const rows = [[f('=LOAM.REMOVAL("corn",1,"P2O5")', "#NAME?"), f("=_xldudf_LOAM_REMOVAL(A1)", "#NAME?")]];
    expect(unknownNames(workbookOf([sheetOf("Sheet1", rows)]))).toMatchObject([
      { misspelled: [], mendable: [{ place: { column: 0 } }, { place: { column: 1 } }], cells: [{}, {}] },
    ]);
  });
  it("is told apart when no function of ours is called that, or when it is not ours at all", () => {
    const rows = [[f("=LOAM.REMOVALS(1)", "#NAME?"), f("=profit_goal*2", "#NAME?")]];
    expect(unknownNames(workbookOf([sheetOf("Sheet1", rows)]))).toMatchObject([
      { misspelled: ["REMOVALS"], mendable: [], cells: [{ column: 0 }, { column: 1 }] },
    ]);
  });
  it("is not there in a sheet that shows answers", () => {
    expect(unknownNames(workbookOf([sheetOf("Sheet1", [[f("=LOAM.REMOVAL(A1)", 1)]])]))).toEqual([]);
  });
});
