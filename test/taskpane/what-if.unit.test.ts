/** @jest-environment jsdom */
import { mountPane, type PaneEnvironment } from "../../src/taskpane/pane";
import { FakeHost } from "./fake-host";
import { byId, input, press, storageIn, type } from "./on-page";

/** A sheet like the quick what-if: 190 bu/ac at $4.35, $825 of costs, 30 cents a bushel. */
function quickHost(kind: "excel" | "browser" = "excel"): FakeHost {
  return new FakeHost({
    kind,
    cells: {
      "Quick!B1": { value: "corn" },
      "Quick!B2": { value: 190 },
      "Quick!B3": { value: 4.35 },
      "Quick!B4": { formula: "=800+25", value: 825 },
      "Quick!B5": { value: 0.3 },
      "Quick!B6": { value: 0 },
      "Quick!D1": { value: 120 },
      "Quick!D2": { value: "some" },
    },
    areas: {
      quick_crop: "Quick!B1",
      quick_yield: "Quick!B2",
      quick_price: "Quick!B3",
      quick_cost: "Quick!B4",
      quick_per_bushel: "Quick!B5",
      quick_other: "Quick!B6",
    },
  });
}

let host: FakeHost;
let stored: Map<string, string>;

function mount(environment: Partial<PaneEnvironment> = {}): void {
  document.body.innerHTML = "<div id='root'></div>";
  mountPane(byId("root"), host, {
    kind: "excel",
    storage: () => storageIn(stored),
    workbookId: async () => "farm.xlsx",
    ...environment,
  });
}

const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 10));
const page = (): string => document.body.textContent ?? "";

async function open(): Promise<void> {
  press("What if");
  await settled();
}

beforeEach(async () => {
  stored = new Map();
  host = quickHost();
  mount();
  await open();
});

describe("what an acre leaves", () => {
  it("starts from the named cells of the sheet: 190 × 4.05 − 825", () => {
    expect(page()).toContain("From Quick: corn.");
    expect(byId("what-if-result").textContent).toBe("▼ An acre falls short by $55.50.");
  });

  it("follows a slider at once and leaves the sheet alone: 230 × 4.05 − 825", () => {
    type("what-if-yield-slider", "230");
    expect(byId("what-if-result").textContent).toBe("▲ An acre leaves $106.50.");
    expect(input("what-if-yield").value).toBe("230");
    expect(host.written).toEqual([]);
  });

  it("takes a number typed with its unit, and says what does not fit", () => {
    type("what-if-price", "$5.00/bu");
    expect(byId("what-if-result").textContent).toBe("▲ An acre leaves $68.00."); // 190 × 4.70 − 825
    type("what-if-price", "dear");
    expect(page()).toContain('Price must be a number ($/bu); got "dear".');
    expect(input("what-if-price").getAttribute("aria-invalid")).toBe("true");
  });

  it("counts all acres once they are known: −55.50 × 120", () => {
    type("what-if-acres", "120");
    expect(page()).toContain("−$6,660");
  });

  it("shows the break-evens: 825 / 190 + 0.30 and 825 / 4.05", () => {
    expect(page()).toContain("$4.64/bu");
    expect(page()).toContain("203.7 bu/ac");
  });

  it("draws the line between gain and loss in the grid", () => {
    const cells = [...document.querySelectorAll<HTMLElement>(".profit-grid td")];
    expect(cells).toHaveLength(35);
    for (const cell of cells) {
      const loses = cell.textContent?.startsWith("−") ?? false;
      expect([cell.textContent, /loss/.test(cell.className)]).toEqual([cell.textContent, loses]);
    }
    expect(document.querySelectorAll(".edge-before, .edge-above").length).toBeGreaterThan(3);
  });
});

describe("low and high", () => {
  it("gives the chance that it pays: price 3 to 5 around 4, 150 bu and $540, 82 years in 100", () => {
    for (const [id, text] of [
      ["yield", "150"],
      ["price", "4"],
      ["perBushel", "0"],
    ] as const)
      type(`what-if-${id}`, text);
    type("what-if-cost", "540");
    expect(page()).not.toContain("Chance that it pays");
    type("what-if-price-low", "3");
    type("what-if-price-high", "5");
    // A loss is a price below 3.60: (0.6)² / 2 = 0.18 of a triangle from 3 to 5.
    expect(page()).toContain("82 out of 100 years would cover the costs");
  });

  it("says when lowest, tried and highest are out of order, and draws nothing from them", () => {
    type("what-if-yield-low", "200");
    type("what-if-yield-high", "240");
    expect(page()).toContain(
      "Yield: lowest 200 bu/ac, as tried 190 bu/ac and highest 240 bu/ac must stand in that order.",
    );
    expect(document.getElementById("tornado")).toBeNull();
  });

  it("puts what moves profit most on top, costs of one's own among them", () => {
    type("what-if-yield-low", "180"); // 180 to 200 bu: 20 × 4.05 = 81
    type("what-if-yield-high", "200");
    type("what-if-price-low", "4"); // 4.00 to 4.70: 0.70 × 190 = 133
    type("what-if-price-high", "4.7");
    press("Add a cost");
    type("what-if-line-0-name", "Nitrogen");
    type("what-if-line-0-planned", "100"); // 80 to 190: 110
    type("what-if-line-0-low", "80");
    type("what-if-line-0-high", "190");
    const drawn = byId("tornado").textContent ?? "";
    const order = ["Price:", "Nitrogen:", "Yield:"].map((name) => drawn.lastIndexOf(name));
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(order.every((place) => place > 0)).toBe(true);
    // At the lowest price 190 × 3.70 − 825 = −122; at the highest 190 × 4.40 − 825 = 11.
    expect(byId("tornado-alt").textContent).toContain("Price from $4.00/bu to $4.70/bu: −$122.00/ac to $11.00/ac.");
  });
});

describe("side by side", () => {
  it("keeps what is tried under a name, with this workbook, and tries it again", async () => {
    type("what-if-yield", "210");
    type("what-if-name", "Wet year");
    press("Keep it beside the others");
    press("Back to the sheet's own values");
    await settled();
    expect(input("what-if-yield").value).toBe("190");
    mount();
    await open();
    expect(document.querySelector(".side-by-side-table")?.textContent).toContain("Wet year");
    expect(document.querySelector(".side-by-side-table")?.textContent).toContain("▲ $25.50/ac"); // 210 × 4.05 − 825
    press("Try Wet year");
    expect(input("what-if-yield").value).toBe("210");
    press("Remove Wet year");
    expect(document.querySelector(".side-by-side-table")).toBeNull();
  });

  it("keeps scenarios of another workbook apart", async () => {
    type("what-if-name", "Here");
    press("Keep it beside the others");
    mount({ workbookId: async () => "other.xlsx" });
    await open();
    expect(page()).not.toContain("Here");
    mount();
    await open();
    expect(page()).toContain("Here");
  });

  it("asks for a name", () => {
    press("Keep it beside the others");
    expect(page()).toContain("Give it a name first.");
    expect(document.activeElement).toBe(input("what-if-name"));
  });
});

describe("what does not fit", () => {
  const aloud = () => document.querySelector(".refusals-aloud");
  const said = () => [...(aloud()?.children ?? [])].map(({ textContent }) => textContent);

  it("is said aloud once, in a part that was there before", () => {
    const part = aloud();
    expect(part?.getAttribute("role")).toBe("status");
    expect(said()).toEqual([]);
    type("what-if-price", "many");
    type("what-if-yield-low", "900000");
    expect(aloud()).toBe(part);
    expect(said()).toEqual([
      'Price must be a number ($/bu); got "many".',
      byId("what-if-yield-range-refusal").textContent?.replace("▲ ", ""),
    ]);
    type("what-if-price", "4.35");
    expect(said()).toHaveLength(1);
  });
});

describe("into the sheet", () => {
  it("asks, writes typed cells only, and puts the former figures back", async () => {
    type("what-if-yield", "205");
    type("what-if-cost", "800");
    press("Put these figures into the sheet");
    expect(document.activeElement?.id).toBe("what-if-question");
    expect(page()).toContain("Write this number into the sheet?");
    expect(page()).toContain("Yield, Quick!B2: 190 bu/ac → 205 bu/ac");
    expect(page()).toContain("Costs before hauling (Quick!B4) is worked out by the sheet and stays as it is.");
    expect(host.written).toEqual([]);
    press("Write it");
    await settled();
    expect(host.written).toEqual([{ blocks: [{ address: "Quick!B2", rows: [[205]] }], mayReplace: "typedValues" }]);
    expect(page()).toContain("Written. Everything on the sheet follows.");
    press("Put the former figures back");
    await settled();
    expect(host.written[1]?.blocks).toEqual([{ address: "Quick!B2", rows: [[190]] }]);
    expect(input("what-if-yield").value).toBe("190");
  });

  it("leaves the sheet alone on Escape", () => {
    type("what-if-yield", "205");
    press("Put these figures into the sheet");
    byId("what-if-question").dispatchEvent(new KeyboardEvent("keydown", { key: "Escape", bubbles: true }));
    expect(host.written).toEqual([]);
    expect(document.activeElement?.id).toBe("what-if-put");
  });

  it("tells what the host refuses and keeps what was tried", async () => {
    host.refusal = { of: "write", says: "The sheet is protected. Lift the protection first." };
    type("what-if-yield", "205");
    press("Put these figures into the sheet");
    press("Write it");
    await settled();
    expect(page()).toContain("The sheet is protected. Lift the protection first.");
    expect(input("what-if-yield").value).toBe("205");
  });

  it("says that there is nothing to write", () => {
    press("Put these figures into the sheet");
    expect(page()).toContain("What is tried is what the sheet says. Move a slider first.");
  });

  it("writes into the cell made for trying, where the sheet has one", async () => {
    host = new FakeHost({
      cells: { "What if!B9": { formula: "=B3", value: 58 }, "What if!B5": {} },
      areas: { whatif_yield: "What if!B9", whatif_yield_try: "What if!B5" },
    });
    mount();
    await open();
    type("what-if-yield", "52");
    press("Put these figures into the sheet");
    expect(page()).toContain("Yield, What if!B5: blank → 52 bu/ac");
    press("Write it");
    await settled();
    expect(host.written[0]?.blocks).toEqual([{ address: "What if!B5", rows: [[52]] }]);
    press("Put the former figures back");
    await settled();
    expect(host.written[1]?.blocks).toEqual([{ address: "What if!B5", rows: [[null]] }]);
  });
});

it("keeps what is tried when a workbook without a name gets one", async () => {
  let name = "";
  mount({ workbookId: async () => name });
  await open();
  type("what-if-yield", "230");
  name = "saved.xlsx";
  press("Read the sheet again");
  await settled();
  expect(input("what-if-yield").value).toBe("230");
  mount({ workbookId: async () => name });
  await open();
  expect(input("what-if-yield").value).toBe("230");
});

describe("cells of one's own", () => {
  it("ties a figure to the selected cell and remembers it", async () => {
    host.selected = "Quick!D1";
    press("Take the selected cell for acres");
    await settled();
    expect(input("what-if-acres").value).toBe("120");
    mount();
    await open();
    expect(page()).toContain("The sheet says 120 ac (Quick!D1).");
  });

  it("says what is wrong with the selected cell", async () => {
    host.selected = "Quick!D2";
    press("Take the selected cell for acres");
    await settled();
    expect(page()).toContain("Quick!D2 holds no number. Select a cell with one, then take it.");
  });

  it("says what to do in a workbook without such a sheet", async () => {
    host = new FakeHost();
    mount();
    await open();
    expect(page()).toContain("Start a workbook has Quick what if");
    expect(byId("what-if-result").textContent).toBe("Fill in yield, price and costs to see what an acre leaves.");
  });
});

describe("pictures from the workbook", () => {
  it("draws the ledger and the drift of the soil test when they are there", async () => {
    const table = (name: string, columns: Record<string, readonly (string | number)[]>) =>
      Object.entries(columns).map(([header, values], index) => {
        const letter = String.fromCharCode(65 + index);
        return {
          area: [`${name}[${header}]`, `${name}!${letter}2:${letter}${values.length + 1}`] as const,
          header,
          values,
          letter,
        };
      });
    const ledger = table("PotashLedger", {
      Field: ["Mill Road", "Creek Bend"],
      "A year lb/ac": [-31, 12],
      "Test now ppm": [138, 160],
      "Test after by plan ppm": [141, 158],
      "Test after nothing on ppm": [120, 139],
    });
    host = new FakeHost({
      cells: Object.fromEntries(
        ledger.flatMap(({ letter, header, values }) =>
          [header, ...values].map((value, row) => [`PotashLedger!${letter}${row + 1}`, { value }]),
        ),
      ),
      areas: Object.fromEntries(ledger.map(({ area }) => area)),
    });
    mount();
    await open();
    press("Draw them from the workbook");
    await settled();
    const drawn = byId("what-if-pictures");
    expect(drawn.querySelectorAll("svg")).toHaveLength(2);
    expect(drawn.querySelector("desc")?.textContent).toContain("Mill Road −31.0; Creek Bend +12.0.");
    expect(byId("drift-PotashLedger-alt").textContent).toContain("Mill Road 138, 141, 120");
  });
});
