/** @jest-environment jsdom */
import { mountPane, type PaneEnvironment } from "../../src/taskpane/pane";
import type { CellPlan, WorkbookPlan } from "../../src/workbook/plan";
import { FakeHost } from "./fake-host";
import { byId, press, type } from "./on-page";

const ledger = {
  Field: ["Mill Road", "Creek Bend", ""],
  "A year lb/ac": [-31, 12, ""],
  "Test now ppm": [138, 160, ""],
  "Test after by plan ppm": [141, 158, ""],
  "Test after nothing on ppm": [120, 139, ""],
} as const;
const letters = "ABCDE";

/** The acre of a quick what-if, 190 × 4.05 − 825, and a ledger of two fields with a row to spare. */
function openHost(): FakeHost {
  const columns = Object.entries(ledger).map(([header, values], index) => ({
    header,
    values,
    letter: letters[index] ?? "",
  }));
  const acre = [190, 4.35, 825, 0.3, 0].map((value, row) => [`Quick!B${row + 2}`, { value }] as const);
  const rows = columns.flatMap(({ header, values, letter }) =>
    [header, ...values].map((value, row) => [`Potash!${letter}${row + 1}`, { value }] as const),
  );
  return new FakeHost({
    sheets: ["Quick", "Potash"],
    cells: { ...Object.fromEntries(acre), ...Object.fromEntries(rows) },
    areas: {
      quick_yield: "Quick!B2",
      quick_price: "Quick!B3",
      quick_cost: "Quick!B4",
      quick_per_bushel: "Quick!B5",
      quick_other: "Quick!B6",
      ...Object.fromEntries(
        columns.map(({ header, letter }) => [`PotashLedger[${header}]`, `Potash!${letter}2:${letter}4`]),
      ),
    },
  });
}

let host: FakeHost;

function mount(environment: Partial<PaneEnvironment> = {}): void {
  document.body.innerHTML = "<div id='root'></div>";
  mountPane(byId("root"), host, { kind: "excel", workbookId: async () => "farm.xlsx", ...environment });
}

async function until(holds: () => boolean): Promise<void> {
  for (let tries = 0; tries < 500 && !holds(); tries++) await new Promise((done) => setTimeout(done, 10));
  expect(holds()).toBe(true);
}

const page = (): string => document.body.textContent ?? "";

async function put(name: string): Promise<WorkbookPlan> {
  const before = host.fills.length;
  press(`Put into the workbook: ${name}`);
  await until(() => host.fills.length > before && page().includes("It stands on the new sheet"));
  const plan = host.fills.at(-1)?.plan;
  if (!plan) throw new Error("nothing was filled");
  return plan;
}

function line(plan: WorkbookPlan, label: string): CellPlan["content"][] {
  const cells = plan.sheets[0]?.cells ?? [];
  const row = cells.find(({ column, content }) => column === 0 && content === label)?.row;
  return cells.filter((one) => one.row === row).map(({ content }) => content);
}

beforeEach(async () => {
  host = openHost();
  mount();
  press("What if");
  await until(() => page().includes("An acre falls short by $55.50."));
});

describe("what is tried", () => {
  it("goes on a sheet of its own: tied where it is as the sheet says, a number of its own where it was tried", async () => {
    type("what-if-yield", "230");
    const plan = await put("profit grid");
    expect(plan.sheets.map(({ name }) => name)).toEqual(["Profit grid"]);
    expect(line(plan, "Yield")[1]).toBe(230);
    expect(line(plan, "Price")[1]).toEqual({ formula: '=IF(Quick!$B$3&""="","",Quick!$B$3)' });
    expect(host.sheets).toEqual(["Quick", "Potash", "Profit grid"]);
    expect(host.written).toEqual([]);
  });

  it("is tied to a cell with more digits than the pane shows", async () => {
    await host.write([{ address: "Quick!B4", rows: [[825 + 1 / 7]] }], "typedValues");
    const plan = await put("profit grid");
    expect(line(plan, "Costs before hauling")[1]).toEqual({ formula: '=IF(Quick!$B$4&""="","",Quick!$B$4)' });
  });

  it("shows what moves profit with the ranges as typed", async () => {
    type("what-if-yield-low", "150");
    type("what-if-yield-high", "220");
    const plan = await put("what moves profit most");
    const table =
      plan.sheets[0]?.cells.filter(({ style, content }) => style === "input" && content !== undefined) ?? [];
    expect(table.map(({ content }) => content)).toEqual([150, 220]);
    expect(plan.sheets[0]?.charts[0]?.alt).toContain("longest bars");
  });

  it("is taken away again once that was asked and said yes to", async () => {
    await put("profit grid");
    press("Take it away again: the sheet Profit grid");
    expect(page()).toContain("This takes away the sheet Profit grid.");
    expect(document.activeElement?.id).toBe("picture-question");
    press("Keep it");
    expect(host.sheets).toContain("Profit grid");
    expect(document.activeElement?.id).toBe("take-grid");
    press("Take it away again: the sheet Profit grid");
    press("Take it away");
    await until(() => page().includes("The sheet Profit grid is taken away."));
    expect(host.sheets).toEqual(["Quick", "Potash"]);
    expect(document.querySelector("#take-grid")).toBeNull();
  });

  it("goes beside an earlier one under another name; the later one goes first", async () => {
    await put("profit grid");
    press("Put into the workbook: profit grid");
    await until(() => host.sheets.includes("Profit grid 2"));
    await until(
      () => document.querySelector("#take-grid")?.getAttribute("aria-label")?.endsWith("Profit grid 2") === true,
    );
  });

  it("says beside the button what the spreadsheet could not do, and adds nothing", async () => {
    host.refusal = { of: "fill", says: "The workbook is protected." };
    press("Put into the workbook: profit grid");
    await until(() => page().includes("The workbook is protected."));
    expect(byId("put-grid").getAttribute("aria-disabled")).toBeNull();
    expect(document.querySelector("#take-grid")).toBeNull();
  });
});

describe("a picture of the ledger", () => {
  beforeEach(async () => {
    press("Draw them from the workbook");
    await until(() => document.querySelector("#ledger-PotashLedger") !== null);
  });

  it("is tied to the cells of its rows; the row to spare stays out", async () => {
    const plan = await put("potash balance by field, lb/ac a year");
    const formulas = (plan.sheets[0]?.cells ?? []).flatMap(({ content }) =>
      typeof content === "object" && content.formula.startsWith("=Potash!") ? [content.formula] : [],
    );
    expect(formulas).toEqual(["=Potash!$A$2", "=Potash!$B$2", "=Potash!$A$3", "=Potash!$B$3"]);
  });

  it("shows the drift beside it", async () => {
    const plan = await put("potassium test over the next rotation, ppm");
    expect(plan.sheets.map(({ name }) => name)).toEqual(["Potassium test drift"]);
    expect(plan.sheets[0]?.charts[0]?.series).toHaveLength(3);
  });

  it("says so when the ledger is gone meanwhile", async () => {
    host.refusal = { of: "read", says: "There is no such table." };
    press("Put into the workbook: potash balance by field, lb/ac a year");
    await until(() => host.fills.length === 0 && page().includes("With a farm plan in the workbook"));
    expect(host.fills).toEqual([]);
  });
});

describe("strip differences", () => {
  const layOut = (treatments: string, design: "pairs" | "blocks", yields: string) => {
    press("Strip trials");
    type("trial-treatments", treatments);
    if (design === "pairs") byId("trial-design-pairs").click();
    type("trial-blocks", "3");
    type("trial-seed", "9");
    press("Make the layout");
    type("trial-paste", yields);
    press("Put it into the strips");
  };

  it("of two treatments bring a row a pair", async () => {
    layOut("check\nfungicide", "pairs", "180\n187\n176\n179\n180\n171");
    const plan = await put("strip differences");
    expect(plan.sheets.map(({ name }) => name)).toEqual(["Strip differences"]);
    const yields = ["Pair 1", "Pair 2", "Pair 3"].flatMap((pair) => line(plan, pair).slice(1, 3));
    expect([...yields].map(Number).sort()).toEqual([171, 176, 179, 180, 180, 187]);
    expect(line(plan, "Gain that pays")).toEqual([]);
  });

  it("of several treatments bring every strip, and what they cost once that is known", async () => {
    layOut("check\nfungicide\npotash", "blocks", "180\n187\n176\n179\n180\n171\n190\n184\n188");
    type("trial-price", "10");
    type("trial-cost-2", "30");
    const plan = await put("strip differences");
    const cells = plan.sheets[0]?.cells ?? [];
    const yields = cells.filter(({ style, column }) => style === "input" && column === 3);
    expect(yields).toHaveLength(9);
    expect(line(plan, "A bushel leaves")[1]).toBe(10);
    const costs = ["check", "fungicide", "potash"].map((name) => {
      const row = cells.find(({ content, style }) => content === name && style === "label")?.row;
      return cells.find((one) => one.row === row && one.column === 1)?.content;
    });
    expect(costs).toEqual([0, 0, 30]);
  });
});
