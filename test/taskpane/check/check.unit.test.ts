/** @jest-environment jsdom */
import { mountPane, type PaneEnvironment } from "../../../src/taskpane/pane";
import { todayOf } from "../../../src/taskpane/pane/check/look-over";
import { FakeHost, type FakeCell } from "../fake-host";

let host: FakeHost;

function open(
  cells: Readonly<Record<string, FakeCell>>,
  sheets: readonly string[] = ["Sheet1"],
  environment: PaneEnvironment = { kind: "excel" },
): Promise<void> {
  host = new FakeHost({ cells, sheets });
  document.body.innerHTML = "<div id='root'></div>";
  const root = document.getElementById("root");
  if (root) mountPane(root, host, environment);
  return press("Check this workbook");
}

function button(name: string): HTMLButtonElement {
  const named = (found: HTMLButtonElement) => (found.getAttribute("aria-label") ?? found.textContent) === name;
  const found = [...document.querySelectorAll("button")].find(named);
  if (!found) throw new Error(`There is no button "${name}".`);
  return found;
}

async function press(name: string): Promise<void> {
  button(name).click();
  // Whatever it begins comes to its end: a look lets the page paint first.
  do await new Promise((settled) => setTimeout(settled, 30));
  while (page().includes("Looking through the workbook"));
}

const page = (): string => document.querySelector(".view")?.textContent ?? "";
const heads = () => [...document.querySelectorAll(".view h3")].map(({ textContent }) => textContent);
const items = () => [...document.querySelectorAll(".check-list > li > p")].map(({ textContent }) => textContent);

const f = (formula: string, value: NonNullable<FakeCell["value"]> = 1): FakeCell => ({ formula, value });
const v = (value: NonNullable<FakeCell["value"]>): FakeCell => ({ value });

/** A column of costs with one typed over. */
const typedOver = {
  ...{ "Plan!A1": v("Field"), "Plan!B1": v("Acres"), "Plan!C1": v("Cost $") },
  ...{ "Plan!A2": v("Mill Road"), "Plan!B2": v(80), "Plan!C2": f("=B2*5", 400) },
  ...{ "Plan!A3": v("Creek Bend"), "Plan!B3": v(60), "Plan!C3": v(999) },
  ...{ "Plan!A4": v("Sand Knob"), "Plan!B4": v(61), "Plan!C4": f("=B4*5", 305) },
};

describe("Check this workbook", () => {
  it("is calm where there is nothing to ask about", async () => {
    await open({ "Sheet1!A1": v("Field"), "Sheet1!A2": v("Mill Road") });
    expect(page()).toContain("Nothing to ask about.");
    expect(heads()).toEqual([]);
  });

  it("is calm in an empty workbook", async () => {
    await open({});
    expect(page()).toContain("Nothing to ask about.");
  });

  it("lists what it finds with the reason, and leads to the cell", async () => {
    await open({ "Plan!A1": v("Crop"), "Plan!B1": v("Price $/bu"), "Plan!A2": v("corn"), "Plan!B2": v(450) }, ["Plan"]);
    expect(page()).toContain("1 thing to ask about.");
    expect(heads()).toEqual(["Figures to look at twice"]);
    expect(items()).toEqual(["▲ Price $/bu, corn: 450. A price is usually between 0.5 and 60 $/bu."]);
    await press("Go to Plan B2");
    expect(host.shown).toEqual(["Plan!B2"]);
    expect(page()).toContain("Plan B2 is selected in the sheet.");
  });

  it("writes a column's formula back only after it was asked to, and takes it back", async () => {
    await open(typedOver, ["Plan"]);
    expect(items()).toEqual(["▲ Creek Bend: Cost $ is 999, typed by hand."]);
    await press("Put the formula back into Plan C3");
    expect(page()).toContain("Write the column's formula into Plan C3? The 999 typed there makes way.");
    expect(document.activeElement?.id).toBe("check-question");
    expect(host.written).toEqual([]);
    await press("Write the formula");
    expect(host.written).toEqual([
      { blocks: [{ address: "Plan!C3", rows: [[{ formula: "=B3*5" }]] }], mayReplace: "formulas" },
    ]);
    expect(page()).toContain("The formula stands in Plan C3 again.");
    expect(page()).toContain("Nothing to ask about.");
    expect(document.activeElement?.id).toBe("check-said");
    // The way back stays while one looks at other cells.
    await press("Undo what was written");
    expect(host.written.at(-1)).toEqual({ blocks: [{ address: "Plan!C3", rows: [[999]] }], mayReplace: "formulas" });
    expect(items()).toEqual(["▲ Creek Bend: Cost $ is 999, typed by hand."]);
  });

  it("leaves everything as it is when the answer is no, and gives the focus back", async () => {
    await open(typedOver, ["Plan"]);
    await press("Put the formula back into Plan C3");
    await press("Leave it");
    expect(host.written).toEqual([]);
    expect(page()).not.toContain("makes way");
    expect(document.activeElement?.id).toBe("check-mend-0");
  });

  it("writes formulas of ours with #NAME? once more, column by column, and counts what came of it", async () => {
    const removal = (row: number) => f(`=LOAM.REMOVAL("corn",${row},"P2O5")`, "#NAME?");
    await open({ "Sheet1!A1": removal(1), "Sheet1!A2": removal(2), "Sheet1!C2": removal(3) });
    expect(items()).toEqual(["▲ 3 cells show #NAME?. They call a Loamsheet function and can be written once more."]);
    await press("Repair the formulas on Sheet1");
    expect(page()).toContain("Write 3 formulas on Sheet1 once more, unchanged?");
    await press("Write them again");
    expect(host.written[0]?.blocks.map(({ address, rows }) => [address, rows.length])).toEqual([
      ["Sheet1!A1", 2],
      ["Sheet1!C2", 1],
    ]);
    expect(page()).toContain("3 formulas were written again; none shows #NAME? any more.");
  });

  it("names a function that is none of ours and offers no repair", async () => {
    await open({ "Sheet1!A1": f("=LOAM.REMOVALS(1)", "#NAME?") });
    expect(items()).toEqual([
      "▲ 1 cell shows #NAME?. No function is called LOAM.REMOVALS: look it up in Find a function.",
    ]);
    expect(() => button("Repair the formulas on Sheet1")).toThrow();
  });

  it("works out the sentence behind a cell where the spreadsheet keeps it to itself", async () => {
    await open({
      ...{ "Sheet1!A1": v("barlei"), "Sheet1!B1": f('=LOAM.REMOVAL(A1,88,"K2O")', "#VALUE!") },
      "Sheet1!C1": f('=LOAM.REMOVAL("corn",B1,"K2O")', "#VALUE!"),
    });
    // C1 only carries on what B1 shows.
    expect(items()).toHaveLength(1);
    expect(items()[0]).toMatch(/^▲ Crop "barlei" is not known here\. Nearest: barley/);
    expect(() => button("Go to Sheet1 B1")).not.toThrow();
  });

  it("takes the sentence that the spreadsheet tells, cells with the same one together", async () => {
    const waiting = { ...f("=LOAM.LIMENEED(A1)", "#N/A"), message: "waiting for bufferPH" };
    await open({ "Sheet1!B1": waiting, "Sheet1!B2": waiting });
    expect(items()).toEqual(["▲ 2 cells: waiting for bufferPH"]);
  });

  it("reads what goes into a trial, a program and a guide", async () => {
    await open({
      ...{ "Sheet1!A1": v(180), "Sheet1!A2": v(176), "Sheet1!B1": v(187), "Sheet1!B2": v(179) },
      "Sheet1!D1": f("=LOAM.TRIALPAIRS(A1:A2,B1:B2)", "Result"),
      ...{ "Sheet1!A4": v("imazethapyr"), "Sheet1!A5": v("cloransulam") },
      "Sheet1!D4": f("=LOAM.PROGRAMGROUPS(A4:A5)", "Pass"),
      "Sheet1!D9": f('=IFERROR(LOAM.PHOSPHATENEED("corn",180,12,"IN-MI-OH","Olsen"),"none")', "none"),
    });
    expect(heads()).toEqual([
      "A guide read at another laboratory method",
      "One herbicide group alone",
      "Trials with few blocks",
    ]);
    expect(items()).toEqual([
      expect.stringContaining("IN-MI-OH takes P2O5 tests by Mehlich-3 and Mehlich-3 ICP; here it is given Olsen."),
      "▲ 2 herbicides, and only group 2 counts.",
      "▲ 2 pairs with yields; 4 is the usual least.",
    ]);
  });

  it("writes nothing of one workbook into another that is opened after the look", async () => {
    const unused = async () => undefined;
    const workbooks = {
      ...{ list: async () => [], add: unused, open: unused, rename: unused, remove: unused },
      openFile: async () => ({ title: "", leftOut: [] }),
    };
    await open(typedOver, ["Plan"], { kind: "browser", workbooks });
    await press("Put the formula back into Plan C3");
    await press("Write the formula");
    await press("Workbooks");
    await press("New workbook");
    expect(() => button("Undo what was written")).toThrow();
    expect(items()).toEqual([]);
  });

  it("shows eight of a kind and the others when asked for", async () => {
    const rows = Array.from({ length: 11 }, (_, row) => [
      [`Plan!A${row + 2}`, v("corn")],
      [`Plan!B${row + 2}`, v(450 + row)],
    ]);
    const cells = Object.fromEntries(rows.flat()) as Record<string, FakeCell>; // pairs of address and cell
    await open({ "Plan!A1": v("Crop"), "Plan!B1": v("Price $/bu"), ...cells }, ["Plan"]);
    expect(items()).toHaveLength(8);
    await press("Show 3 more: Figures to look at twice");
    expect(items()).toHaveLength(11);
  });

  it("says what the spreadsheet says when it cannot be read or written", async () => {
    await open(typedOver, ["Plan"]);
    await press("Put the formula back into Plan C3");
    host.refusal = { of: "write", says: "The sheet is protected." };
    await press("Write the formula");
    expect(page()).toContain("The sheet is protected.");
    host.refusal = { of: "readSheets", says: "Excel does not answer at the moment." };
    await press("Look it over");
    expect(page()).toContain("Excel does not answer at the moment.");
  });
});

it("counts today as spreadsheets do", () => {
  // Day 46,023 of spreadsheets is 1 January 2026.
  expect(todayOf(new Date(2026, 0, 1, 23, 30))).toEqual({ year: 2026, serial: 46_023 });
});
