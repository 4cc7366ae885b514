import { guides } from "../../../src/reference/guides";
import type { CellPlan, WorkbookPlan } from "../../../src/workbook/plan";
import { retyped } from "../retyped";
import { planOf, show, typed, type ShownBook } from "./shown-sheet";

let book: ShownBook;
beforeAll(async () => {
  book = await show(planOf("farm-plan"));
}, 30_000);

/** Urea 46-0-0 at $560: 560 / 920. */
const dollarsPerPoundN = 560 / 920;

describe("the fertility plan", () => {
  it("asks the guide for the next crop of each field", () => {
    const creekBend = (heading: string) => book.inTable("Fertility plan", "Creek Bend", heading);
    // (20 - 17) × 5 + 54 × 0.80 = 58.2, to the nearest 5
    expect(creekBend("P2O5 by guide lb/ac")).toBe(60);
    expect(creekBend("P2O5 planned lb/ac")).toBe(60);
    expect(creekBend("Your lime ton/ac")).toBe(book.inTable("Lime plan", "Creek Bend", "Your lime ton/ac"));
    // wheat: 1.33 × 88 - 13 = 104.04; the table of crops plans 100
    const orchardForty = (heading: string) => book.inTable("Fertility plan", "Orchard Forty", heading);
    expect(orchardForty("N by guide lb/ac")).toBeCloseTo(1.33 * 88 - 13, 6);
    expect(orchardForty("N planned lb/ac")).toBe(100);
  });

  it("says in words what the guide does not print, and borrows nothing", () => {
    const row = (heading: string) => book.inTable("Fertility plan", "Mill Road", heading);
    expect(row("N by guide lb/ac")).toBe("no rate here");
    expect(row("S by guide lb/ac")).toBe("no rate here");
    expect(row("Zn by guide lb/ac")).toBe("no rate here");
    expect(row("S planned lb/ac")).toBe("");
  });

  it("lets a rate in the table of crops go before the guide and stand in where there is none", async () => {
    const own = await show(typed(planOf("farm-plan"), [[["Assumptions", "soybean", "Sulfur lb/ac"], 12]]));
    expect(own.inTable("Fertility plan", "Mill Road", "S planned lb/ac")).toBe(12);
    expect(own.inTable("Product plan", "Mill Road", "Sulfur product lb/ac")).toBeCloseTo(50, 6); // 12 / 0.24
    // 173.08 lb MAP × 11 % + 50 lb ammonium sulfate × 21 %
    expect(own.inTable("Product plan", "Mill Road", "N that comes along lb/ac")).toBeCloseTo(
      (90 / 0.52) * 0.11 + 10.5,
      6,
    );
    expect(own.inTable("Shopping list", "ammonium sulfate 21-0-0-24S", "Tons")).toBeCloseTo((50 * 820) / 2000, 6);
    expect(own.inTable("Shopping list", "ammonium sulfate 21-0-0-24S", "What for")).toBe("sulfur");
  });

  it("reads sulfur, zinc and deep nitrate where the region prints rules for them", async () => {
    const kansas = await show(planOf("farm-plan", { guide: "KS" }));
    const row = (field: string, heading: string) => kansas.inTable("Fertility plan", field, heading);
    // soybean: 0.4 × 57 - 2.5 × 2.2 % - 24 lb profile = -6.7: none
    expect(row("Mill Road", "S by guide lb/ac")).toBe(0);
    // corn on sand: 0.2 × 165 - 2.5 × 1.3 - 12 = 17.75
    expect(row("Sand Knob", "S by guide lb/ac")).toBeCloseTo(17.75, 6);
    // DTPA zinc 0.9: 11.5 - 11.25 × 0.9 = 1.375
    expect(row("Sand Knob", "Zn by guide lb/ac")).toBeCloseTo(1.375, 6);
    // wheat: 2.4 × 88 - 10 × 2.9 - 33 = 149.2; Kansas prints no credit for soybean before wheat
    expect(row("Orchard Forty", "N by guide lb/ac")).toBeCloseTo(2.4 * 88 - 29 - 33, 6);
    expect(row("Mill Road", "N by guide lb/ac")).toBe("no rate here");
  });

  it("asks for a test it needs, and does not read one of another extraction", async () => {
    const plan = typed(planOf("farm-plan", { guide: "KS" }), [
      [["Soil tests", "Orchard Forty", "Nitrate-N 0 to 24 in lb/ac"], null],
      [["Soil tests", "Sand Knob", "Sulfate-S 0 to 24 in lb/ac"], null],
      [["Soil tests", "Long Eighty", "Zn ppm"], null],
    ]);
    const kansas = await show(typedBeside(plan, "Assumptions", "Phosphorus method", "Olsen"));
    const row = (field: string, heading: string) => kansas.inTable("Fertility plan", field, heading);
    expect(row("Orchard Forty", "N by guide lb/ac")).toBe("waits for test");
    expect(row("Sand Knob", "S by guide lb/ac")).toBe("waits for test");
    expect(row("Long Eighty", "Zn by guide lb/ac")).toBe("waits for test");
    expect(row("Long Eighty", "P2O5 by guide lb/ac")).toBe("other method");
    expect(kansas.errors()).toEqual([]);
  });
});

describe("the rotation plan and the ledgers", () => {
  it("adds the crop after the next one, read from the same test", () => {
    const row = (heading: string) => book.inTable("Rotation plan", "Mill Road", heading);
    expect(row("Crop after it")).toBe("corn");
    expect(row("P2O5 by guide lb/ac")).toBe(110); // (20 - 11) × 5 + 182 × 0.35 = 108.7
    expect(row("K2O by guide lb/ac")).toBe(105); // (120 - 88) × 1.5 + 182 × 0.20 + 20 = 104.4
    expect(row("P2O5 both crops lb/ac")).toBe(90 + 110);
    expect(row("K2O both crops lb/ac")).toBe(135 + 105);
    expect(row("N both crops lb/ac")).toBe(0 + 175);
    expect(row("S both crops lb/ac")).toBe("");
  });

  it("shows the test after two crops with the plan and with nothing put on", () => {
    const potash = (heading: string) => book.inTable("Potash ledger", "Mill Road", heading);
    // taken 182 × 0.20 + 57 × 1.15 = 101.95; 6 lb K2O per ppm at CEC 10
    expect(potash("Plan puts on lb/ac")).toBe(240);
    expect(potash("Test after by plan ppm")).toBeCloseTo(88 + (240 - 101.95) / 6, 6);
    expect(potash("Test after nothing on ppm")).toBeCloseTo(88 - 101.95 / 6, 6);
    const phosphate = (heading: string) => book.inTable("Phosphate ledger", "Mill Road", heading);
    // taken 182 × 0.35 + 57 × 0.80 = 109.3; 20 lb P2O5 per ppm
    expect(phosphate("Test after by plan ppm")).toBeCloseTo(11 + (200 - 109.3) / 20, 6);
    expect(phosphate("Test after nothing on ppm")).toBeCloseTo(11 - 109.3 / 20, 6);
  });

  it("draws now, with and without for every field", () => {
    const ledger = book.plan.sheets.find(({ name }) => name === "Potash ledger");
    expect(ledger?.charts[0]?.series.map(({ name }) => name)).toEqual(["Now", "By the plan", "Nothing put on"]);
    const table = ledger?.tables[0]?.area;
    for (const { values } of ledger?.charts[0]?.series ?? [])
      expect([values.area.top, values.area.bottom]).toEqual([(table?.top ?? 0) + 1, table?.bottom]);
  });
});

describe("the product plan and the shopping list", () => {
  it("sizes products for Long Eighty and credits the nitrogen in the phosphate", () => {
    const row = (heading: string) => book.inTable("Product plan", "Long Eighty", heading);
    const map = 70 / 0.52;
    const urea = (175 - map * 0.11) / 0.46;
    expect(row("Phosphate product lb/ac")).toBeCloseTo(map, 6);
    expect(row("Potash product lb/ac")).toBeCloseTo(100, 6); // 60 / 0.60
    expect(row("N that comes along lb/ac")).toBeCloseTo(map * 0.11, 6);
    expect(row("Nitrogen product lb/ac")).toBeCloseTo(urea, 6);
    expect(row("Cost $/ac")).toBeCloseTo((map * 780 + 100 * 460 + urea * 560) / 2000 + 8, 6);
    expect(row("Cost $")).toBeCloseTo(Number(row("Cost $/ac")) * 78, 6);
  });

  it("lists tons and dollars of each material, and what lime, spreading and seed come to", () => {
    const row = (material: string, heading: string) => book.inTable("Shopping list", material, heading);
    // K2O planned × acres = 111,070 lb
    const potashTons = 111_070 / 0.6 / 2000;
    expect(row("potash 0-0-60", "Tons")).toBeCloseTo(potashTons, 6);
    expect(row("potash 0-0-60", "Cost $")).toBeCloseTo(potashTons * 460, 4);
    // P2O5 × acres: 7,700 + 5,760 + 5,460 + 0 + 8,850 + 11,200 + 11,165 + 2,535 + 20,430 + 23,660 = 96,760 lb
    expect(row("MAP 11-52-0", "Tons")).toBeCloseTo(96_760 / 0.52 / 2000, 6);
    expect(row("MAP 11-52-0", "What for")).toBe("phosphate");
    expect(row("DAP 18-46-0", "What for")).toBe("not in the plan");
    const beside = (label: string, column: number) => Number(book.beside("Shopping list", label, column));
    const fertilizer = beside("Fertilizer in all", 5);
    expect(fertilizer + beside("Spreading fertilizer", 4)).toBeCloseTo(
      Number(book.beside("Product plan", "Whole farm", 11)),
      4,
    );
    const others = ["Lime, delivered and spread", "Spreading fertilizer", "Seed, units of all crops"];
    const sum = others.reduce((total, label) => total + beside(label, 4), fertilizer);
    expect(beside("Everything", 4)).toBeCloseTo(sum, 4);
  });

  it("sums a material that serves two nutrients", async () => {
    const zincSulfate = "zinc sulfate 35.5Zn-17.5S";
    const own = typed(planOf("farm-plan"), [
      [["Assumptions", "soybean", "Sulfur lb/ac"], 3.5],
      [["Assumptions", "soybean", "Zinc lb/ac"], 7.1],
    ]);
    const both = await show(chosen(own, "ammonium sulfate 21-0-0-24S", zincSulfate));
    // 3.5 / 0.175 + 7.1 / 0.355 = 40 lb on 820 acres of soybean
    expect(both.inTable("Shopping list", zincSulfate, "Tons")).toBeCloseTo((40 * 820) / 2000, 6);
    expect(both.inTable("Shopping list", zincSulfate, "What for")).toBe("sulfur, zinc");
    expect(both.errors()).toEqual([]);
  });
});

describe("the sheet of materials", () => {
  it("prices a pound of each nutrient with the others paid for", () => {
    const row = (material: string, heading: string) => book.inTable("Materials", material, heading);
    expect(row("urea 46-0-0", "N $/lb")).toBeCloseTo(dollarsPerPoundN, 6);
    expect(row("MAP 11-52-0", "P2O5 $/lb")).toBeCloseTo((780 - 220 * dollarsPerPoundN) / 1040, 6);
    // $430 less 420 lb N, over 480 lb S
    const dollarsPerPoundS = (430 - 420 * dollarsPerPoundN) / 480;
    expect(row("ammonium sulfate 21-0-0-24S", "S $/lb")).toBeCloseTo(dollarsPerPoundS, 6);
    expect(row("zinc sulfate 35.5Zn-17.5S", "Zn $/lb")).toBeCloseTo((1600 - 350 * dollarsPerPoundS) / 710, 6);
    expect(row("urea 46-0-0", "K2O $/lb")).toBe("");
  });

  it("finds the cheapest mix for Long Eighty: DAP for the phosphate, urea for the rest of the nitrogen", () => {
    const mix = (item: string, column: number) => lastRow(book, "Materials", item, column);
    const dap = 70 / 0.46;
    const urea = (175 - dap * 0.18) / 0.46;
    expect(mix("DAP 18-46-0", 1)).toBeCloseTo(dap, 4);
    expect(mix("urea 46-0-0", 1)).toBeCloseTo(urea, 4);
    expect(mix("potash 0-0-60", 1)).toBeCloseTo(100, 4);
    expect(mix("MAP 11-52-0", 3)).toBe("not used");
    expect(mix("All materials", 2)).toBeCloseTo((dap * 740 + urea * 560 + 100 * 460) / 2000, 4);
    expect(mix("N supplied", 1)).toBeCloseTo(175, 4);
  });

  it("knows how much salt corn seed stands in the furrow: 6 lb in 30-inch rows, the lowest printed", () => {
    expect(book.beside("Materials", "Most N and K2O together")).toBe(6);
  });
});

describe("the guides side by side", () => {
  const line = (shown: ShownBook, nutrient: "P2O5" | "K2O", guide: string, column: number) =>
    guideCell(shown, nutrient, guide, column);

  it("answers by each guide that takes the test, and says what the others take", () => {
    expect(line(book, "P2O5", "IN-MI-OH", 3)).toBe(90);
    expect(line(book, "P2O5", "IN-MI-OH", 5)).toBe("Mehlich-3 or Mehlich-3 ICP");
    expect(line(book, "P2O5", "IN-MI-OH", 2)).toBe(8);
    // 88 ppm is 176 lb/ac: 260 - 176 = 84 over 4 years at 4 lb each, and 57 × 1.17 removed: 150.7
    expect(line(book, "K2O", "IL", 3)).toBe(151);
    // 60 + 0.628 × 57 - 0.46 × 88 - 0.0048 × 57 × 88 = 31.2, to the nearest 5
    expect(line(book, "K2O", "KS", 3)).toBe(30);
    expect(line(book, "P2O5", "WI", 3)).toBe("–");
    expect(line(book, "P2O5", "WI", 5)).toBe("takes Bray P1; this field has Mehlich-3");
    expect(line(book, "P2O5", "NC", 5)).toBe("takes Mehlich-3 as its laboratory's index, not ppm");
    expect(line(book, "K2O", "SC", 5)).toBe("takes the class that its laboratory prints, not ppm");
  });

  it("turns round when the test was made otherwise", async () => {
    const plan = planOf("farm-plan");
    const bray = await show(typedBeside(plan, "Guides", "It was extracted by", "Bray P1"));
    expect(line(bray, "P2O5", "IN-MI-OH", 5)).toBe("takes Mehlich-3 or Mehlich-3 ICP; this field has Bray P1");
    // (15 - 11) × 5 + 57 × 0.80 = 65.6, to the nearest 5
    expect(line(bray, "P2O5", "IN-MI-OH-1995", 3)).toBe(65);
    expect(line(bray, "P2O5", "IL", 5)).toBe("takes Bray P1 or Mehlich-3 colorimetric; waits for a soil group");
    expect(bray.errors()).toEqual([]);
  });

  it("has a line for every guide of the list, twice", () => {
    for (const { label } of Object.values(guides)) {
      expect(String(line(book, "P2O5", label, 5)).length).toBeGreaterThan(3);
      expect(String(line(book, "K2O", label, 5)).length).toBeGreaterThan(3);
    }
  });
});

const lastOf = (rows: readonly number[]) => rows[rows.length - 1];

/** A cell of the last row that starts with these words. */
function lastRow(shown: ShownBook, sheet: string, label: string, column: number) {
  const row = lastOf(rowsNamed(shown, sheet, label));
  return row === undefined ? undefined : shown.at(sheet, row, column);
}

function guideCell(shown: ShownBook, nutrient: "P2O5" | "K2O", guide: string, column: number) {
  const row = rowsNamed(shown, "Guides", guide)[nutrient === "P2O5" ? 0 : 1];
  return row === undefined ? undefined : shown.at("Guides", row, column);
}

function rowsNamed(shown: ShownBook, sheet: string, label: string): number[] {
  return Array.from({ length: 120 }, (_, row) => row).filter((row) => shown.at(sheet, row, 0) === label);
}

/** The plan with another value typed beside the first cell that says this. */
function typedBeside(plan: WorkbookPlan, name: string, label: string, value: string): WorkbookPlan {
  const row = cellsOf(plan, name).find(({ column, content }) => column === 0 && content === label)?.row;
  if (row === undefined) throw new Error(`no line ${label}`);
  return retyped(plan, name, { row, column: 1 }, value);
}

/** The plan with another material chosen in the last place that holds this one. */
function chosen(plan: WorkbookPlan, from: string, to: string): WorkbookPlan {
  const row = lastOf(cellsOf(plan, "Materials").flatMap(({ row: at, content }) => (content === from ? [at] : [])));
  if (row === undefined) throw new Error(`no material ${from}`);
  return retyped(plan, "Materials", { row, column: 0 }, to);
}

function cellsOf(plan: WorkbookPlan, name: string): readonly CellPlan[] {
  return plan.sheets.find((sheet) => sheet.name === name)?.cells ?? [];
}
