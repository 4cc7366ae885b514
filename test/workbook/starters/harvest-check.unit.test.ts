import { planOf, show, type ShownBook } from "./shown-sheet";

let book: ShownBook;
beforeAll(async () => {
  book = await show(planOf("farm-plan"));
});

const sheet = "Harvest check";

/** The cell in the row of a label, counted from a table's heading on: several tables of a sheet name the same fields. */
function below(heading: string, label: string): number | string {
  const cells = book.plan.sheets.find(({ name }) => name === sheet)?.cells ?? [];
  const head = cells.find(({ style, content }) => style === "head" && content === heading);
  if (!head) throw new Error(`no heading "${heading}"`);
  for (let row = head.row + 1; row < head.row + 8; row++) {
    const value = book.at(sheet, row, head.column);
    if (book.at(sheet, row, 0) === label && (typeof value === "number" || typeof value === "string")) return value;
  }
  throw new Error(`no row "${label}" below ${heading}`);
}

describe("the harvest check of the invented farm", () => {
  it("counts corn: 31 ears × 1,000 × 16 × 37 kernels / 90,000 = 203.9 bu/ac", () => {
    expect(below("Corn bu/ac", "Long Eighty, gate")).toBeCloseTo(18_352 / 90, 6);
  });

  it("counts soybean: 118,000 × 35 × 2.5 / 2,800 / 60 = 61.46 bu/ac", () => {
    expect(below("Soybean bu/ac", "Home Quarter, yard")).toBeCloseTo(10_325_000 / 168_000, 6);
  });

  it("counts wheat: 142 heads × 14 × 2.3 × 0.142 / 7.5 in = 86.6 bu/ac", () => {
    expect(below("Wheat bu/ac", "Orchard Forty, lane")).toBeCloseTo((142 * 14 * 2.3 * 0.142) / 7.5, 6);
  });

  it("finds soybean losses at four seeds on a square foot for a bushel", () => {
    expect(below("Lost before harvest bu/ac", "Home Quarter")).toBeCloseTo(1.5 / 4, 6);
    expect(below("Lost at header bu/ac", "Home Quarter")).toBeCloseTo(7.5 / 4, 6);
    expect(below("Lost in machine bu/ac", "Home Quarter")).toBeCloseTo(2.5 / 4, 6);
    expect(below("Worth $/ac", "Home Quarter")).toBeCloseTo((11.5 / 4) * 10.6, 6);
  });

  it("shrinks 75,000 bushels at 24 %: water 8.5 × 100 / 84.5 and half a percent of dust", () => {
    expect(below("Dry bushels", "Far Bottoms")).toBeCloseTo(75_000 * (76 / 84.5 - 0.005), 4);
    // 8.5 points × 0.02 gal × $1.90 and 6 cents
    expect(below("Drying at home $/wet bu", "Far Bottoms")).toBeCloseTo(0.383, 6);
    const home = (76 / 84.5 - 0.005) * 4.35 - 0.383;
    const wet = 4.35 - 8.5 * 0.11;
    const elevator = (1 - 8.5 * 0.014) * 4.35 - 8.5 * 0.05;
    expect(below("Dried at home leaves $/wet bu", "Far Bottoms")).toBeCloseTo(home, 6);
    expect(below("Sold wet leaves $/wet bu", "Far Bottoms")).toBeCloseTo(wet, 6);
    expect(below("Elevator dries leaves $/wet bu", "Far Bottoms")).toBeCloseTo(elevator, 6);
    expect(below("Best way", "Far Bottoms")).toBe("dry at home");
    expect(below("Ahead of next $", "Far Bottoms")).toBeCloseTo((home - wet) * 75_000, 4);
    expect(below("Best way", "Home Quarter")).toBe("sell wet");
  });

  it("carries corn for six months: 4.35 × 8 % / 2, six times 2.5 cents, 6 cents, 4 cents and 1 % of 4.35", () => {
    const cost = (4.35 * 0.08) / 2 + 6 * 0.025 + 0.06 + 0.04 + 0.0435;
    expect(below("Cost of storing $/bu", "corn")).toBeCloseTo(cost, 6);
    expect(below("Storing leaves $/bu", "corn")).toBeCloseTo(4.85 - 4.35 - cost, 6);
    expect(below("What it means", "corn")).toBe("▲ pays");
    expect(below("What it means", "soybean")).toBe("▼ sell now");
  });
});
