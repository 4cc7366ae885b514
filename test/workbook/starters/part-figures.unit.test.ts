import { planOf, show, type ShownBook } from "./shown-sheet";

jest.setTimeout(60_000);

let book: ShownBook;
beforeAll(async () => {
  book = await show(planOf("farm-plan"));
});

/** The cell in the row of a label, counted from a table's heading on: several tables of a sheet name the same fields. */
function below(sheet: string, heading: string, label: string): number | string {
  const cells = book.plan.sheets.find(({ name }) => name === sheet)?.cells ?? [];
  const head = cells.find(({ style, content }) => style === "head" && content === heading);
  if (!head) throw new Error(`no heading "${heading}"`);
  for (let row = head.row + 1; row < head.row + 20; row++) {
    const value = book.at(sheet, row, head.column);
    if (book.at(sheet, row, 0) === label && (typeof value === "number" || typeof value === "string")) return value;
  }
  throw new Error(`no row "${label}" below ${heading}`);
}

describe("the harvest check of the invented farm", () => {
  const found = (heading: string, label: string) => below("Harvest check", heading, label);

  it("counts corn: 31 ears × 1,000 × 16 × 37 kernels / 90,000 = 203.9 bu/ac", () => {
    expect(found("Corn bu/ac", "Long Eighty, gate")).toBeCloseTo(18_352 / 90, 6);
  });

  it("counts soybean: 118,000 × 35 × 2.5 / 2,800 / 60 = 61.46 bu/ac", () => {
    expect(found("Soybean bu/ac", "Home Quarter, yard")).toBeCloseTo(10_325_000 / 168_000, 6);
  });

  it("counts wheat: 142 heads × 14 × 2.3 × 0.142 / 7.5 in = 86.6 bu/ac", () => {
    expect(found("Wheat bu/ac", "Orchard Forty, lane")).toBeCloseTo((142 * 14 * 2.3 * 0.142) / 7.5, 6);
  });

  it("finds soybean losses at four seeds on a square foot for a bushel", () => {
    expect(found("Lost before harvest bu/ac", "Home Quarter")).toBeCloseTo(1.5 / 4, 6);
    expect(found("Lost at header bu/ac", "Home Quarter")).toBeCloseTo(7.5 / 4, 6);
    expect(found("Lost in machine bu/ac", "Home Quarter")).toBeCloseTo(2.5 / 4, 6);
    expect(found("Worth $/ac", "Home Quarter")).toBeCloseTo((11.5 / 4) * 10.6, 6);
  });

  it("shrinks 75,000 bushels at 24 %: water 8.5 × 100 / 84.5 and half a percent of dust", () => {
    expect(found("Dry bushels", "Far Bottoms")).toBeCloseTo(75_000 * (76 / 84.5 - 0.005), 4);
    // 8.5 points × 0.02 gal × $1.90 and 6 cents
    expect(found("Drying at home $/wet bu", "Far Bottoms")).toBeCloseTo(0.383, 6);
    const home = (76 / 84.5 - 0.005) * 4.35 - 0.383;
    const wet = 4.35 - 8.5 * 0.11;
    const elevator = (1 - 8.5 * 0.014) * 4.35 - 8.5 * 0.05;
    expect(found("Dried at home leaves $/wet bu", "Far Bottoms")).toBeCloseTo(home, 6);
    expect(found("Sold wet leaves $/wet bu", "Far Bottoms")).toBeCloseTo(wet, 6);
    expect(found("Elevator dries leaves $/wet bu", "Far Bottoms")).toBeCloseTo(elevator, 6);
    expect(found("Best way", "Far Bottoms")).toBe("dry at home");
    expect(found("Ahead of next $", "Far Bottoms")).toBeCloseTo((home - wet) * 75_000, 4);
    expect(found("Best way", "Home Quarter")).toBe("sell wet");
  });

  it("carries corn for six months: 4.35 × 8 % / 2, six times 2.5 cents, 6 cents, 4 cents and 1 % of 4.35", () => {
    const cost = (4.35 * 0.08) / 2 + 6 * 0.025 + 0.06 + 0.04 + 0.0435;
    expect(found("Cost of storing $/bu", "corn")).toBeCloseTo(cost, 6);
    expect(found("Storing leaves $/bu", "corn")).toBeCloseTo(4.85 - 4.35 - cost, 6);
    expect(found("What it means", "corn")).toBe("▲ pays");
    expect(found("What it means", "soybean")).toBe("▼ sell now");
  });
});

describe("the stand and replant sheet of the invented farm", () => {
  const beside = (label: string) => book.beside("Stand and replant", label);

  it("counts 120 plants in 8 places: 15,000, give or take t 2.365 × 2,000 / √8 = 1,672", () => {
    expect(beside("Mean stand")).toBeCloseTo(15_000, 6);
    expect(Number(beside("Stand at least"))).toBeCloseTo(15_000 - (2.364_62 * 2000) / Math.sqrt(8), 0);
    expect(Number(beside("Stand at most"))).toBeCloseTo(15_000 + (2.364_62 * 2000) / Math.sqrt(8), 0);
    // variation 13.33 %: 30 counts give 2.045 × 13.33 / √30 = 4.98 %, 29 give 5.07 %
    expect(beside("More counts for ±5 %")).toBe(22);
  });

  it("reads the Iowa table: three quarters from 68 % at 12,000 to 74 % at 16,000", () => {
    expect(beside("Share of full yield")).toBeCloseTo(72.5, 6);
    expect(beside("Kept, it may yield")).toBeCloseTo(0.725 * 192, 6);
    // May 20 is a seventh of the way from 99 % to 90 %
    expect(beside("New stand by the table")).toBeCloseTo(99 - 9 / 7, 6);
  });

  it("keeps the stand: replanting is expected to bring 13 bushels more and costs more than they bring", () => {
    const good = 0.9 * ((99 - 9 / 7) / 100) * 192;
    const expected = 0.85 * good + 0.15 * 60;
    const gain = (expected - 139.2) * (4.35 - 0.3) - 0.1 * expected - (114 - 40);
    expect(beside("Replanting gains")).toBeCloseTo(gain, 6);
    const even = (139.2 * 4.05 + 74 - 60 * 3.95) / ((good - 60) * 3.95);
    expect(beside("Breaks even at a chance of")).toBeCloseTo(even, 8);
    expect(beside("In words")).toBe("▼ keep it");
  });
});

describe("the tile drainage of Creek Bend", () => {
  const beside = (label: string, column = 1) => Number(book.beside("Tile drainage", label, column));

  it("lays 43,560 / 60 = 726 ft on an acre for $1.10, with $22,550 of main and outlet over 96 acres", () => {
    expect(beside("Lines on an acre")).toBeCloseTo(726, 6);
    expect(beside("Cost of an acre")).toBeCloseTo(726 * 1.1 + (2100 * 6.5 + 8900) / 96, 6);
    expect(beside("Cost of the job")).toBeCloseTo(726 * 1.1 * 96 + 22_550, 4);
  });

  it("spaces the lines so that at 60 ft a little less than the water asked for is carried", () => {
    const spacing = beside("Spacing that does it");
    expect(spacing).toBeGreaterThan(55);
    expect(spacing).toBeLessThan(60);
    expect(beside("It then carries off")).toBeLessThan(0.375);
  });

  it("takes a 15 in main: 12 in falls short of 96 acres", () => {
    expect(beside("Main, single wall")).toBe(15);
    expect(beside("That size drains")).toBeGreaterThan(96);
  });

  it("falls short at the likely gain: 8 % over 30 years is 0.088827 of the price a year", () => {
    const price = 726 * 1.1 + 22_550 / 96;
    const yearly = price * 0.088_827_43;
    expect(beside("Yearly cost")).toBeCloseTo(yearly, 4);
    expect(beside("Gain that pays for it")).toBeCloseTo(yearly + 2, 4);
    // half of 20 × 4.05 and of 7 × 10.48, less upkeep
    const gain = 40.5 + 36.68 - 2;
    expect(beside("Gain less upkeep", 3)).toBeCloseTo(gain, 6);
    // a dollar a year for 30 years at 8 % is worth 11.257783
    expect(beside("Worth today beyond its price", 3)).toBeCloseTo(gain * 11.257_783 - price, 2);
    expect(beside("Paid back, interest not counted", 3)).toBeCloseTo(price / gain, 6);
    expect(book.beside("Tile drainage", "In words", 3)).toBe("▼ falls short");
    expect(book.beside("Tile drainage", "In words", 4)).toBe("▲ pays");
  });
});

describe("the protection program of the invented farm", () => {
  const found = (heading: string, label: string) => below("Protection program", heading, label);

  it("prices 1.5 pints at $80 a gallon of 8 pints, and fills 1,200 gallons at 15 for 80 acres", () => {
    expect(found("Cost $/ac", "at planting")).toBeCloseTo((1.5 / 8) * 80, 6);
    expect(found("In a full tank", "at planting")).toBeCloseTo(80 * 1.5, 6);
    expect(found("Group", "at planting")).toBe(15);
    // 15 + 9 + 4.5 and 3 fl oz of 128 at $220 + 30 fl oz at $30
    const corn = 15 + (1.5 / 4) * 24 + (7.5 / 128) * 220 + (30 / 128) * 30;
    expect(book.beside("Protection program", "Whole season", 7)).toBeCloseTo(corn, 6);
  });

  it("counts what differs and what is said to control", () => {
    const cornLines = book.plan.sheets.find(({ name }) => name === "Protection program")?.cells ?? [];
    const head = cornLines.find(({ content }) => content === "Pass or season");
    if (!head) throw new Error("no table of groups");
    const line = (down: number) =>
      [0, 1, 2, 3, 4].map((column) => book.at("Protection program", head.row + down, column));
    // S-metolachlor 15, atrazine 5, mesotrione 27; then glyphosate 9 and mesotrione 27
    expect(line(1)).toEqual(["at planting", "5 + 15 + 27", 3, 2, "15 + 27"]);
    expect(line(2)).toEqual(["early post", "9 + 27", 2, 1, "27"]);
    expect(line(3)).toEqual(["Whole season", "5 + 9 + 15 + 27", 4, 2, "15 + 27"]);
    expect(book.at("Protection program", head.row + 8, 0)).toMatch(/^● Pass "early post" leans on group 27 alone/);
  });
});

describe("the passes and tillage of the invented farm", () => {
  const cost = (heading: string, label: string) => Number(below("Passes and tillage", heading, label));

  it("chisels at 17.5 ft and 5 mph: fuel 0.044 gal × 300 hp, labor a tenth over the machine's time", () => {
    const hours = cost("Machine h/ac", "chisel plow");
    expect(hours).toBeCloseTo(8.25 / (17.5 * 5 * 0.85), 6);
    expect(cost("Fuel $/ac", "chisel plow")).toBeCloseTo(0.044 * 300 * 3.4 * hours, 6);
    expect(cost("Labor $/ac", "chisel plow")).toBeCloseTo(1.1 * 24 * hours, 6);
    const parts = ["Owning it", "Its repairs", "Owning tractor", "Tractor repairs", "Fuel", "Oil", "Labor"];
    const sum = parts.reduce((all, part) => all + cost(`${part} $/ac`, "chisel plow"), 0);
    expect(cost("A pass costs $/ac", "chisel plow")).toBeCloseTo(sum, 6);
  });

  it("adds the passes of a system and multiplies what cover they keep", () => {
    const beside = (label: string, column: number) => Number(book.beside("Passes and tillage", label, column));
    const pass = (name: string) => cost("A pass costs $/ac", name);
    expect(beside("Passes", 2)).toBe(5);
    expect(beside("Passes", 3)).toBe(4);
    const chisel = pass("chisel plow") + pass("field cultivator") + pass("planter") + 2 * pass("sprayer");
    expect(beside("Cost", 2)).toBeCloseTo(chisel, 6);
    expect(beside("Cost", 3)).toBeCloseTo(pass("planter, no-till") + 3 * pass("sprayer"), 6);
    const cover = beside("Cover left", 3);
    // e^(-0.035 × cover), and 165 × 0.37 × LS; 4 % over 180 ft: (180 / 72.6)^0.4 × (65.41 s² + 4.56 s + 0.065)
    const sine = Math.sin(Math.atan(0.04));
    const slope = (180 / 72.6) ** 0.4 * (65.41 * sine ** 2 + 4.56 * sine + 0.065);
    expect(beside("Slope factor", 1)).toBeCloseTo(slope, 4);
    expect(beside("Soil loss", 3)).toBeCloseTo(165 * 0.37 * slope * Math.exp(-0.035 * cover), 3);
    expect(beside("Against tolerance", 3)).toBeCloseTo(beside("Soil loss", 3) / 5, 6);
    expect(beside("Soil loss", 2)).toBeGreaterThan(beside("Soil loss", 3));
  });
});

describe("the stand that pays best", () => {
  it("is where a thousand more plants bring just what their seed costs", () => {
    // 290 / 80 = 3.625 $ a thousand seeds; 90.25 plants from 100; 4.05 $ a bushel: 0.9918 bu
    const needed = 3.625 / (0.9025 * 4.05);
    expect(needed).toBeCloseTo(0.9918, 3);
    // the Illinois curve rises by 4.69327 % of 190 bu and bends by 0.0773721 % for a thousand plants
    const thousand = (needed - 1.9 * 4.693_27) / (2 * 1.9 * -0.077_372_1); // 26.956
    const best = Number(below("Seed plan", "Best by published curve", "corn"));
    expect(best / 1000).toBeCloseTo(thousand, 6);
    expect(below("Seed plan", "Seeds for it", "corn")).toBeCloseTo(best / 0.9025, 3);
    expect(book.inTable("Seed plan", "Long Eighty", "Stand that pays best plants/ac")).toBeCloseTo(best, 6);
  });
});
