import { planOf, show, type ShownBook } from "./shown-sheet";

let book: ShownBook;
beforeAll(async () => {
  book = await show(planOf("client-budget"));
});

describe("the client budget of the invented farm", () => {
  it("shows no error anywhere", () => {
    expect(book.errors()).toEqual([]);
  });

  it("works out a field as it is farmed now", () => {
    const row = (heading: string) => book.inTable("Fields today", "Home Quarter", heading);
    expect(row("Income $/ac")).toBeCloseTo(62 * 10.6, 6); // 657.20
    expect(row("All costs $/ac")).toBeCloseTo(620 + 62 * 0.12, 6); // 627.44
    expect(row("Profit $")).toBeCloseTo((657.2 - 627.44) * 154, 6);
    expect(row("Price that covers $/bu")).toBeCloseTo(627.44 / 62, 6);
    expect(row("Yield that covers bu/ac")).toBeCloseTo(620 / (10.6 - 0.12), 6);
  });

  it("budgets a change that saves as well as costs", () => {
    const row = (heading: string) => book.inTable("Proposed changes", "narrower rows, lower rate", heading);
    // likely gain 2 bu: 21.20 + 9 saved - 10 - 2 × 0.12
    expect(row("Net $/ac")).toBeCloseTo(19.96, 6);
    expect(row("Net at low gain $/ac")).toBeCloseTo(0.5 * 10.6 + 9 - 10 - 0.06, 6); // 4.24
    expect(row("Gain that pays bu/ac")).toBeCloseTo((10 - 9) / (10.6 - 0.12), 6);
    expect(row("Back per $ spent")).toBeCloseTo((21.2 + 9) / 10.24, 6);
    expect(row("Net $")).toBeCloseTo(19.96 * 140, 6);
    expect(row("What it means")).toBe("▲ pays even at the low gain");
  });

  it("counts a gain below zero as income given up", () => {
    const row = (heading: string) => book.inTable("Proposed changes", "foliar micronutrient", heading);
    expect(row("Net at low gain $/ac")).toBeCloseTo(-0.5 * 10.6 - 12, 6); // -17.30
    expect(row("What it means")).toBe("▼ does not pay");
  });

  it("counts only what was agreed when it sets then against now", () => {
    const row = (field: string, heading: string) => book.inTable("Now and then", field, heading);
    expect(row("Twin Oaks", "They add $/ac")).toBeCloseTo(19.96, 6);
    expect(row("Home Quarter", "Changes agreed")).toBe(0); // both are only to be tested
    expect(row("Home Quarter", "Profit then $/ac")).toBeCloseTo(657.2 - 627.44, 6);
  });

  it("reports what the agreed changes add, and what to test", () => {
    // narrower rows 19.96 × 140 ac, potash (4.5 × 10.48 - 42) × 227, herbicide (2.5 × 10.48 - 18) × 203
    expect(book.beside("Client report", "The changes add")).toBeCloseTo(19.96 * 140 + 5.16 * 227 + 8.2 * 203, 4);
    const words = book.words("Client report");
    expect(words).toContain("▲ Narrower rows, lower rate in Twin Oaks nets most: $20 an acre, $2,794 in all.");
    expect(words).toContain(
      "● 1 of 7 changes pay even at the low gain, 2 at the likely gain only (test those), 4 do not pay.",
    );
    // 92 / 10.48 = 8.8
    expect(words).toContain("▼ Tile, a year's share in Creek Bend needs 8.8 bu/ac to pay; 7.0 is likely.");
  });
});
