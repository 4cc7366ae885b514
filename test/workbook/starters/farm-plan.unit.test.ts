import { planOf, show, type ShownBook } from "./shown-sheet";

let book: ShownBook;
beforeAll(async () => {
  book = await show(planOf("farm-plan"));
}, 30_000);

const dollarsPerPoundN = 560 / (2000 * 0.46);
const dollarsPerPoundP2o5 = (780 - 220 * dollarsPerPoundN) / 1040;

describe("the farm plan of the invented farm", () => {
  it("shows no error anywhere", () => {
    expect(book.errors()).toEqual([]);
  });

  it("keeps the ledger of Mill Road: 40 lb of potash on, 101.95 off, 31 lb/ac a year from the soil", () => {
    const row = (heading: string) => book.inTable("Potash ledger", "Mill Road", heading);
    expect(row("Last crop took lb/ac")).toBeCloseTo(182 * 0.2, 6); // 36.4, IN-MI-OH 2020
    expect(row("Left after it lb/ac")).toBeCloseTo(40 - 36.4, 6);
    expect(row("Next crop takes lb/ac")).toBeCloseTo(57 * 1.15, 6); // 65.55
    expect(row("Balance of both lb/ac")).toBeCloseTo(40 - 36.4 - 65.55, 6); // -61.95
    expect(row("A year lb/ac")).toBeCloseTo(-61.95 / 2, 6);
    // 4 × (1 + 0.05 × 10) = 6 lb K2O per ppm: 88 - 61.95 / 6
    expect(row("Test after as before ppm")).toBeCloseTo(88 - 10.325, 6);
    expect(row("What it means")).toBe("▼ draws potash down by 31 lb/ac a year");
  });

  it("keeps the phosphate ledger of Orchard Forty even: 90 on, 56 × 0.80 + 88 × 0.50 = 88.8 off", () => {
    const row = (heading: string) => book.inTable("Phosphate ledger", "Orchard Forty", heading);
    expect(row("Balance of both lb/ac")).toBeCloseTo(1.2, 6);
    expect(row("What it means")).toBe("● holds its phosphate");
  });

  it("rates the tests by the guide", () => {
    const rating = (field: string, heading: string) => book.inTable("Soil tests", field, heading);
    expect(rating("Mill Road", "P rating")).toBe("deficient"); // 11 < 20
    expect(rating("Sand Knob", "P rating")).toBe("sufficient"); // 41 ≥ 40
    expect(rating("Sand Knob", "K rating")).toBe("deficient"); // 74 < 100 at CEC 5
    expect(rating("Orchard Forty", "P rating")).toBe("deficient"); // wheat: 26 < 30
  });

  it("works out phosphate and potash as the guide does", () => {
    const need = (field: string, heading: string) => book.inTable("Fertility plan", field, heading);
    // (20 - 11) × 5 + 57 × 0.80 = 90.6, to the nearest 5
    expect(need("Mill Road", "P2O5 by guide lb/ac")).toBe(90);
    // (120 - 96) × (1 + 0.05 × 11) + 54 × 1.15 + 20 = 37.2 + 62.1 + 20 = 119.3
    expect(need("Creek Bend", "K2O by guide lb/ac")).toBe(120);
    // CEC 5: (100 - 74) × 1.25 + 165 × 0.20 + 20 = 32.5 + 33 + 20 = 85.5
    expect(need("Sand Knob", "K2O by guide lb/ac")).toBe(85);
    // above 40 ppm P and above 170 ppm K nothing
    expect(need("Sand Knob", "P2O5 by guide lb/ac")).toBe(0);
    expect(need("North Flat", "K2O by guide lb/ac")).toBe(0);
    // wheat last year: critical level 30: (30 - 29) × 5 + 198 × 0.35 = 74.3
    expect(need("Schoolhouse", "P2O5 by guide lb/ac")).toBe(75);
  });

  it("limes Twin Oaks by the table and the lime at hand, and leaves Home Quarter alone", () => {
    const row = (heading: string) => book.inTable("Lime plan", "Twin Oaks", heading);
    // (60.4 - 0.87 × 67) × 0.90 = 1.899
    expect(row("Effective lime needed ton/ac")).toBeCloseTo(1.899, 6);
    // fineness 0 × 5 + 0.2 × 20 + 0.6 × 25 + 1 × 50 = 69 %; × 92 % × (1 - 4 %) = 60.94 %
    expect(row("Your lime ton/ac")).toBeCloseTo(1.899 / (0.69 * 0.92 * 0.96), 6);
    expect(row("Cost $")).toBeCloseTo((1.899 / 0.609408) * 140 * 34, 3);
    expect(row("What to do")).toBe("Lime 3.1 ton/ac");
    // pH 6.4 is within 0.2 of 6.5
    expect(book.inTable("Lime plan", "Home Quarter", "Your lime ton/ac")).toBe(0);
    expect(book.inTable("Lime plan", "Home Quarter", "What to do")).toBe("Close enough: test again");
    expect(book.inTable("Lime plan", "North Flat", "What to do")).toBe("No lime");
  });

  it("plants corn in Long Eighty for a stand of 32,000", () => {
    const row = (heading: string) => book.inTable("Seed plan", "Long Eighty", heading);
    const rate = 32_000 / (0.95 * 0.95);
    expect(row("Seeds to plant seeds/ac")).toBeCloseTo(rate, 6);
    expect(row("Seed to seed in")).toBeCloseTo(6_272_640 / (rate * 30), 6);
    expect(row("Units to buy")).toBe(Math.ceil((rate * 78) / 80_000)); // 34.57: 35
    expect(row("Cost $/ac")).toBeCloseTo((rate / 80_000) * 290, 6);
  });

  it("budgets corn line by line", () => {
    const line = (label: string) => Number(book.beside("Crop budgets", label, 2));
    const bushels = (78 * 205 + 61 * 165 + 118 * 198 + 364 * 192) / 621;
    expect(line("Acres planned")).toBe(621);
    expect(line("Yield goal")).toBeCloseTo(bushels, 6);
    expect(line("Income")).toBeCloseTo(bushels * 4.35, 6);
    expect(line("Nitrogen")).toBeCloseTo(175 * dollarsPerPoundN, 6);
    expect(line("Phosphate the grain takes")).toBeCloseTo(bushels * 0.35 * dollarsPerPoundP2o5, 6);
    expect(line("Potash the grain takes")).toBeCloseTo((bushels * 0.2 * 460) / 1200, 6);
    // effective tons: 2.682 on 323 ac, 1.899 on 218, 1.116 on 100
    const limeTons = (2.682 * 323 + 1.899 * 218 + 1.116 * 100) / 0.609408;
    expect(line("Lime, a year's share")).toBeCloseTo((limeTons * 34) / 1480 / 5, 6);
    const seed = (32_000 / 0.9025 / 80_000) * 290;
    const typed = 45 + 12 + 18 + 20 + 16 + 10 + 12 + 5;
    const inputs =
      seed +
      line("Nitrogen") +
      line("Phosphate the grain takes") +
      line("Potash the grain takes") +
      line("Lime, a year's share") +
      typed;
    expect(line("Interest on running costs")).toBeCloseTo((inputs * 0.08 * 7) / 12, 6);
    const hauling = bushels * 0.3;
    const running = inputs + hauling + (inputs * 0.08 * 7) / 12;
    expect(line("Running costs in all")).toBeCloseTo(running, 6);
    expect(line("All costs")).toBeCloseTo(running + 80 + 26 + 32 + 225, 6);
    expect(line("Price that covers all costs")).toBeCloseTo((running + 363) / bushels, 6);
    expect(line("Yield that covers all costs")).toBeCloseTo((running + 363 - hauling) / (4.35 - 0.3), 6);
  });

  it("fills the grid with the profit of every yield and price", () => {
    const cost = Number(book.beside("What if", "Costs before hauling"));
    const bushels = (154 * 62 + 96 * 54 + 140 * 58 + 203 * 60 + 227 * 57) / 820;
    expect(book.beside("What if", "Yield planned")).toBeCloseTo(bushels, 6);
    const corner = book.plan.sheets
      .find(({ name }) => name === "What if")
      ?.cells.find(({ content }) => content === "bu/ac down, $/bu across");
    if (!corner) throw new Error("the grid has a corner");
    // one step up in yield and price from the middle, which is the fourth line and column
    expect(book.at("What if", corner.row + 5, 5)).toBeCloseTo((bushels + 4) * (11.1 - 0.12) - cost, 6);
    expect(book.at("What if", corner.row + 1, 1)).toBeCloseTo((bushels - 12) * (9.1 - 0.12) - cost, 6);
  });

  it("says what matters in words that follow the numbers", () => {
    const words = book.words("Summary");
    expect(words[0]).toBe("Windmill Hollow Farm, next season");
    expect(words).toContain("▼ Mill Road is drawing potash down by 31 lb/ac a year; 7 of 10 fields draw down.");
    // left after corn 49.2, 25.8, 22.4, 21.4, 3.6: mean 24.5; taken 71.3, 62.1, 66.7, 69, 65.55: mean 66.9
    expect(words).toContain("● Before soybean, the last crop leaves 24 lb/ac of the potash put on; soybean takes 67.");
    expect(words).toContain("● 6 of 10 fields call for lime, Creek Bend the most: 2,284 tons in all, $77,655.");
  });

  it("adds up the farm: income less running and standing costs", () => {
    const farm = (label: string) => Number(book.beside("Summary", label, 5));
    expect(farm("Acres")).toBe(1480);
    expect(farm("Left over all costs")).toBeCloseTo(farm("Income") - farm("Running costs") - farm("Standing costs"), 4);
    expect(farm("An acre")).toBeCloseTo(farm("Left over all costs") / 1480, 6);
  });

  it("orders what the plans add up to", () => {
    const order = (label: string, column: number) => Number(book.beside("Summary", label, column));
    expect(order("Lime", 2)).toBeCloseTo((2.682 * 323 + 1.899 * 218 + 1.116 * 100) / 0.609408, 4);
    // K2O planned × acres: 13,860 + 11,520 + 4,680 + 5,185 + 7,080 + 14,700 + 0 + 1,560 + 30,645 + 21,840 = 111,070 lb
    expect(order("Potash product", 2)).toBeCloseTo(111_070 / 0.6 / 2000, 6);
    expect(order("Potash product", 3)).toBeCloseTo((111_070 / 0.6 / 2000) * 460, 4);
    expect(order("Sulfur product", 2)).toBe(0);
  });
});
