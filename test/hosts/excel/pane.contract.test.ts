import { PaneInExcel } from "./pane-in-excel";
import { allFunctions } from "../../../src/functions";
import { register } from "../../../src/hosts/excel/register";
import { excelInTest } from "./excel-in-test";
import { MemoryWorkbook } from "./memory/memory-workbook";

jest.setTimeout(120_000);

const excel = excelInTest();
let workbook: MemoryWorkbook;
let pane: PaneInExcel;

/** Fields with crops and yields, and what stands beside them. */
beforeEach(() => {
  workbook = new MemoryWorkbook();
  const fields = workbook.Worksheets.Add("Field list");
  fields.GetRange("A1:D3").Formulas = [
    ["Field", "Crop", "Yield goal bu/ac", "K2O taken lb/ac"],
    ["Mill Road", "corn", 200, '=LOAM.REMOVAL([@Crop],[@[Yield goal bu/ac]],"K2O")'],
    ["Creek Bend", "soybean", 60, '=LOAM.REMOVAL([@Crop],[@[Yield goal bu/ac]],"K2O")'],
  ];
  // Bulletin 974: 0.20 lb K2O a bushel of corn, 1.15 lb a bushel of soybean.
  fields.shown.set("1,3", 40).set("2,3", 69);
  fields.Tables.Add("A1:D3", true).Name = "FieldList";
  pane = new PaneInExcel(excel.office, workbook);
});

const contentAt = (sheet: string, row: number, column: number) => workbook.sheet(sheet).cells.at(row, column)?.content;
const give = (argument: string, text: string): void => pane.type(`argument-${argument}`, text);

describe("find and insert", () => {
  const openRemoval = async (): Promise<void> => {
    await pane.open("find");
    pane.type("find-query", "removal");
    await pane.pressId("find-REMOVAL");
  };

  it("takes cells from the sheet, answers, and writes the formula into the selected cell", async () => {
    await openRemoval();
    await pane.select("Field list", "B2");
    await pane.pressId("pick-crop");
    await pane.select("Field list", "C2");
    await pane.pressId("pick-yield");
    give("nutrient", "K2O");
    expect(pane.byId("function-answer").textContent).toContain("40 lb/ac");
    await pane.select("Field list", "F2");
    await pane.pressId("function-insert");
    expect(contentAt("Field list", 1, 5)).toBe("=LOAM.REMOVAL('Field list'!B2, 'Field list'!C2, \"K2O\")");
    expect(pane.text()).toContain("The formula stands in the selected cell.");
  });

  it("takes a range, whose answers fill a cell each, and sees that they have room", async () => {
    await openRemoval();
    await pane.select("Field list", "B2:B3");
    await pane.pressId("pick-crop");
    await pane.select("Field list", "C2:C3");
    await pane.pressId("pick-yield");
    give("nutrient", "K2O");
    expect(pane.byId("function-answer").textContent).toContain("Fills 2 rows and 1 column");
    workbook.sheet("Field list").GetRange("F3").Formulas = [["mine"]];
    const before = workbook.picture();
    await pane.select("Field list", "F2");
    await pane.pressId("function-insert");
    expect(pane.text()).toContain("from F2, and F3 is not empty. Select a cell with more room.");
    expect(workbook.picture()).toBe(before);
  });

  it("leaves a cell that is not empty alone and says so", async () => {
    await openRemoval();
    await pane.press("Fill in the example");
    await pane.select("Field list", "A2");
    const before = workbook.picture();
    await pane.pressId("function-insert");
    expect(pane.text()).toContain("'Field list'!A2 is not empty. Select an empty cell, then insert again.");
    expect(workbook.picture()).toBe(before);
  });

  it("searches for the heading of the selected column, of a table or a list, and says where there is none", async () => {
    const lime = workbook.Worksheets.Add("Lime");
    lime.GetRange("B3:C5").Formulas = [
      ["Field", "Tons of lime per acre"],
      ["Mill Road", 2],
      ["Creek Bend", 0],
    ];
    await pane.open("find");
    await pane.select("Lime", "C5");
    await pane.press("Search for the selected column");
    expect(document.querySelector<HTMLInputElement>("#find-query")?.value).toBe("Tons of lime per acre");
    expect(document.querySelector("#find-found li")?.textContent).toMatch(/^LIME/);
    await pane.select("Field list", "D2");
    await pane.press("Search for the selected column");
    expect(document.querySelector<HTMLInputElement>("#find-query")?.value).toBe("K2O taken lb/ac");
    await pane.select("Lime", "H9");
    await pane.press("Search for the selected column");
    expect(pane.text()).toContain("No heading stands above Lime!H9.");
  });
});

describe("the working of the selected cell", () => {
  it("is shown for a cell of a table, with unit and place of every argument, and follows the selection", async () => {
    await pane.select("Field list", "D2");
    await pane.open("working");
    expect(pane.text()).toContain("40 lb/ac");
    const went = [...document.querySelectorAll("#call-0-went ~ table tr, [aria-labelledby='call-0-went'] tr")].map(
      ({ textContent }) => textContent,
    );
    expect(went.slice(0, 2)).toEqual([
      "crop[@Crop], which is 'Field list'!B2corn",
      "yield[@[Yield goal bu/ac]], which is 'Field list'!C2200per ac",
    ]);
    await pane.select("Field list", "D3");
    expect(pane.text()).toContain("69 lb/ac");
    await pane.select("Field list", "A2");
    expect(pane.text()).toContain("This value was typed in");
  });
});

describe("check this workbook", () => {
  it("goes to the cell of a finding, and puts a formula back only after it was asked to", async () => {
    const plan = workbook.Worksheets.Add("Plan");
    plan.GetRange("A1:C4").Formulas = [
      ["Field", "Acres", "Cost $"],
      ["Mill Road", 80, "=B2*5"],
      ["Creek Bend", 60, 999],
      ["Sand Knob", 61, "=B4*5"],
    ];
    plan.shown.set("1,2", 400).set("3,2", 305);
    await pane.open("check");
    expect(pane.text()).toContain("Creek Bend: Cost $ is 999, typed by hand.");
    await pane.press("Go to Plan C3");
    expect([workbook.active.Name, workbook.selected.address]).toEqual(["Plan", "C3"]);
    const before = workbook.picture();
    await pane.press("Put the formula back into Plan C3");
    expect(workbook.picture()).toBe(before);
    workbook.answers.set("=B3*5", 300);
    await pane.press("Write the formula");
    expect(contentAt("Plan", 2, 2)).toBe("=B3*5");
    expect(pane.text()).toContain("The formula stands in Plan C3 again.");
    await pane.press("Undo what was written");
    expect(contentAt("Plan", 2, 2)).toBe(999);
  });
});

describe("what if", () => {
  beforeEach(() => {
    const quick = workbook.Worksheets.Add("Quick");
    quick.GetRange("B1:B6").Formulas = [["corn"], [190], [4.35], ["=800+25"], [0.3], [0]];
    quick.shown.set("3,1", 825);
    const names = ["crop", "yield", "price", "cost", "per_bushel", "other"];
    names.forEach((name, row) => workbook.Names.Add(`quick_${name}`, quick.GetRange(`B${row + 1}`), ""));
  });

  it("starts from the named cells, writes what is tried over typed values only, and puts the former ones back", async () => {
    await pane.open("what-if");
    // 190 × (4.35 − 0.30) − 825
    expect(pane.byId("what-if-result").textContent).toBe("▼ An acre falls short by $55.50.");
    pane.type("what-if-yield", "205");
    pane.type("what-if-cost", "$800");
    await pane.press("Put these figures into the sheet");
    expect(pane.text()).toContain("Costs before hauling (Quick!B4) is worked out by the sheet and stays as it is.");
    await pane.press("Write it");
    expect([1, 3].map((row) => contentAt("Quick", row, 1))).toEqual([205, "=800+25"]);
    await pane.press("Put the former figures back");
    expect(contentAt("Quick", 1, 1)).toBe(190);
  });
});

describe("a strip trial", () => {
  async function layOut(): Promise<void> {
    await pane.open("trial");
    pane.type("trial-name", "fungicide in Home Quarter");
    pane.type("trial-treatments", "check\nfungicide");
    pane.type("trial-blocks", "3");
    pane.type("trial-seed", "9");
    await pane.press("Make the layout");
    pane.type("trial-paste", "180\n187\n176\n179\n171\n181");
    await pane.press("Put it into the strips");
  }

  it("is written with its yields and a formula for the result onto empty cells", async () => {
    await layOut();
    workbook.Worksheets.Add("Trial page");
    await pane.select("Trial page", "B4");
    await pane.press("Put the trial into the sheet");
    await pane.press("Write it");
    expect(contentAt("Trial page", 3, 1)).toBe("Strip trial: fungicide in Home Quarter");
    expect([6, 7, 8, 9, 10, 11].map((row) => contentAt("Trial page", row, 6))).toEqual([180, 187, 176, 179, 171, 181]);
    expect(contentAt("Trial page", 13, 1)).toMatch(/^=LOAM\.TRIALBLOCKS\(D7:D12,C7:C12,G7:G12,/);
  });

  it("says what is in the way and writes nothing", async () => {
    await layOut();
    await pane.select("Field list", "A1");
    const before = workbook.picture();
    await pane.press("Put the trial into the sheet");
    await pane.press("Write it");
    expect(pane.text()).toContain("'Field list'!A1 is not empty.");
    expect(workbook.picture()).toBe(before);
  });
});

describe("many clients", () => {
  it("are made into sheets of the workbook and taken away again", async () => {
    const list = workbook.Worksheets.Add("Growers");
    list.GetRange("A1:G3").Formulas = [
      ["Client", "Field", "Crop", "Acres", "Yield", "Sampled", "Soil pH"],
      ["A. Grower", "North", "corn", 80, 190, 45_950, 6.2],
      ["B. Grower", "South", "soybean", 60, 58, 2021, 6.6],
    ];
    await pane.open("clients");
    expect(pane.text()).toContain("Growers: 2 clients, 2 fields.");
    pane.type("clients-guide", "IN-MI-OH");
    const before = workbook.picture();
    await pane.press("Make 2 budgets");
    expect(pane.text()).toContain("2 client budgets stand in this workbook.");
    expect(workbook.sheets.map(({ Name }) => Name)).toEqual(
      expect.arrayContaining(["A. Grower Client report", "B. Grower Soil tests"]),
    );
    await pane.press("Remove what was added");
    await pane.press("Remove them");
    expect(workbook.picture()).toBe(before);
  });
});

describe("the check of Loamsheet itself", () => {
  it("counts the functions that the library was given", async () => {
    register(allFunctions, excel.office.window.CustomFunctions);
    await pane.open("about");
    await pane.press("Check Loamsheet");
    expect(pane.text()).toContain(`Functions registered: ${allFunctions.length} of ${allFunctions.length}.`);
    expect(pane.text()).toContain("Excel 16.0.18025, desktop on Windows");
  });
});
