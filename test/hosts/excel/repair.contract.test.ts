import { PaneInExcel } from "./pane-in-excel";
import { excelInTest } from "./excel-in-test";
import { MemoryWorkbook } from "./memory/memory-workbook";

jest.setTimeout(120_000);

const excel = excelInTest();
let workbook: MemoryWorkbook;
let pane: PaneInExcel;
beforeEach(() => {
  workbook = new MemoryWorkbook();
  pane = new PaneInExcel(excel.office, workbook);
});

const removal = '=LOAM.REMOVAL("corn",200,"K2O")';

/** A sheet whose cells show what is given here, or #NAME? where nothing is given. */
function sheetOf(name: string, cells: Readonly<Record<string, string | number>>, shows: Record<string, unknown> = {}) {
  const sheet = workbook.Worksheets.Add(name);
  for (const [address, content] of Object.entries(cells)) {
    const { RowIndex: row, ColumnIndex: column } = sheet.GetRange(address);
    // As a file brings it in: nothing is looked at.
    sheet.cells.touch(row, column).content = content;
    const isFormula = typeof content === "string" && content.startsWith("=");
    if (isFormula) sheet.shown.set(`${row},${column}`, shows[address] ?? "#NAME?");
  }
  return sheet;
}

function contents(name: string): Record<string, unknown> {
  const cells = [...workbook.sheet(name).cells.byPlace].filter(([, { content }]) => content !== "");
  return Object.fromEntries(cells.map(([place, { content }]) => [place, content]));
}

async function repair(sheet: string): Promise<void> {
  await pane.press(`Repair the formulas on ${sheet}`);
  await pane.press("Write them again");
}

describe("the repair of formulas that show #NAME?", () => {
  it("writes each once more, unchanged, and touches nothing else", async () => {
    sheetOf(
      "Plan",
      { A1: "Field", A2: "Mill Road", B2: removal, B3: removal, D2: "=A2&1", E9: 7 },
      { D2: "Mill Road1" },
    );
    workbook.answers.set(removal, 40);
    const [before, picture] = [contents("Plan"), workbook.picture()];
    await pane.open("check");
    expect(pane.text()).toContain("2 cells show #NAME?. They call a Loamsheet function and can be written once more.");
    workbook.entered.length = 0;
    expect(workbook.picture()).toBe(picture);
    await repair("Plan");
    expect(contents("Plan")).toEqual(before);
    expect(workbook.entered).toEqual(["Plan!B2:B3"]);
    expect(pane.text()).toContain("2 formulas were written again; none shows #NAME? any more.");
    expect(pane.text()).toContain("Nothing to ask about.");
  });

  it("gives names back their spelling where a file has lost it, whatever stands around them", async () => {
    sheetOf("Plan", {
      A1: '=_xldudf_LOAM_REMOVAL("corn",200,"K2O")',
      A2: '=ROUND(_xldudf_LOAM_REMOVAL("corn",_xldudf_LOAM_REMOVAL("corn",9,"N"),"K2O"),0)&" _xldudf_LOAM_REMOVAL("',
      A3: '=[2]!_xldudf_LOAM_REMOVAL("corn",200,"K2O")',
      A4: '=\'C:\\add ins\\other.xlam\'!_xldudf_LOAM_REMOVAL("corn",200,"K2O")',
      A5: '=_xlfn.LOAM.REMOVAL("corn",200,"K2O")',
      A6: '=@_xldudf_LOAM_REMOVAL("corn",200,"K2O")',
    });
    await pane.open("check");
    await pane.press("Repair the formulas on Plan");
    expect(pane.text()).toContain(
      "Write 6 formulas on Plan once more? In them the name gets back the spelling LOAM., which the file had lost.",
    );
    await pane.press("Write them again");
    expect(Object.values(contents("Plan"))).toEqual([
      removal,
      '=ROUND(LOAM.REMOVAL("corn",LOAM.REMOVAL("corn",9,"N"),"K2O"),0)&" _xldudf_LOAM_REMOVAL("',
      removal,
      removal,
      removal,
      '=@LOAM.REMOVAL("corn",200,"K2O")',
    ]);
  });

  it("takes the spelling back again when asked to", async () => {
    sheetOf("Plan", { A1: '=_xldudf_LOAM_REMOVAL("corn",200,"K2O")' });
    const before = contents("Plan");
    await pane.open("check");
    await repair("Plan");
    expect(contents("Plan")).not.toEqual(before);
    await pane.press("Undo what was written");
    expect(contents("Plan")).toEqual(before);
  });

  it("writes the formulas of a table column, row by row the same, and leaves its other columns", async () => {
    const own = '=LOAM.REMOVAL([@Crop],[@Yield],"K2O")';
    const sheet = sheetOf("Plan", {
      ...{ A1: "Crop", B1: "Yield", C1: "Taken" },
      ...{ A2: "corn", B2: 200, C2: own, A3: "soybean", B3: 60, C3: own },
    });
    sheet.Tables.Add("A1:C3", true).Name = "Fields";
    const before = contents("Plan");
    await pane.open("check");
    workbook.entered.length = 0;
    await repair("Plan");
    expect(contents("Plan")).toEqual(before);
    expect(workbook.entered).toEqual(["Plan!C2:C3"]);
  });

  it("writes a formula that spills into its own cell alone", async () => {
    const spilling = '=LOAM.REMOVALTABLE("corn",200)';
    sheetOf("Plan", { B2: spilling, B1: "Above", C2: "beside", B5: "below" });
    await pane.open("check");
    workbook.entered.length = 0;
    await repair("Plan");
    expect(workbook.entered).toEqual(["Plan!B2"]);
    expect(contents("Plan")).toMatchObject({ "0,1": "Above", "1,1": spilling, "1,2": "beside", "4,1": "below" });
  });

  it("mends the others where some are part of an array that Excel keeps together, and says which and what to do", async () => {
    const array = '=LOAM.REMOVAL(F1:F2,G1:G2,"K2O")';
    const sheet = sheetOf("Plan", { B1: array, C1: array, B2: array, C2: array, B3: removal, E9: removal });
    sheet.arrays.push({ top: 0, left: 1, bottom: 1, right: 2 });
    workbook.answers.set(removal, 40);
    const before = contents("Plan");
    await pane.open("check");
    await repair("Plan");
    expect(contents("Plan")).toEqual(before);
    expect(pane.text()).toContain("2 formulas were written again; none shows #NAME? any more.");
    expect(pane.text()).toContain(
      "The spreadsheet keeps Plan B1:B2 and Plan C1:C2 as they are: where braces { } stand around the formula, select all of its cells, press F2 and then Ctrl+Shift+Enter.",
    );
  });

  it("says what Excel says where nothing could be written", async () => {
    const sheet = sheetOf("Plan", { B1: removal, B2: removal });
    sheet.arrays.push({ top: 0, left: 1, bottom: 5, right: 1 });
    await pane.open("check");
    await repair("Plan");
    expect(pane.text()).toContain("they may be part of an array formula or of a merged cell.");
  });

  it("writes again what catches the error and hides it, on other sheets too", async () => {
    const hiding = '=IFERROR(LOAM.REMOVAL("corn",200,"K2O"),"no rate")';
    sheetOf("Plan", { A1: removal });
    sheetOf("Soil tests", { A1: hiding, A2: "=IFERROR(A1*2,0)" }, { A1: "no rate", A2: 0 });
    workbook.answers.set(hiding, 40);
    await pane.open("check");
    expect(pane.text()).toContain(
      "1 formula calls a Loamsheet function and may show an old answer or none in its place: it can be written once more too.",
    );
    workbook.entered.length = 0;
    await repair("Soil tests");
    expect(workbook.entered).toEqual(["'Soil tests'!A1"]);
    expect(workbook.sheet("Soil tests").shown.get("0,0")).toBe(40);
  });

  it("does not ask about what catches errors where all names are known", async () => {
    sheetOf("Soil tests", { A1: '=IFERROR(LOAM.REMOVAL("corn",200,"K2O"),"no rate")' }, { A1: 40 });
    await pane.open("check");
    expect(pane.text()).toContain("Nothing to ask about.");
  });

  it("names functions that are none of ours and offers no repair for them", async () => {
    sheetOf("Plan", { A1: "=LOAM.REMOVALS(1)", A2: "=_xldudf_LOAM_POTASCH(2)", A3: "=profit_goal*2" });
    const before = contents("Plan");
    await pane.open("check");
    expect(pane.text()).toContain("No function is called LOAM.REMOVALS and LOAM.POTASCH");
    expect(document.body.textContent).not.toContain("Repair the formulas");
    expect(contents("Plan")).toEqual(before);
  });

  it("tells how many still show #NAME?", async () => {
    sheetOf("Plan", { A1: removal, A2: '=LOAM.REMOVAL(nowhere,200,"K2O")' });
    workbook.answers.set(removal, 40).set('=LOAM.REMOVAL(nowhere,200,"K2O")', "#NAME?");
    await pane.open("check");
    await repair("Plan");
    expect(pane.text()).toContain("2 formulas were written again; 1 still shows #NAME?.");
  });
});
