import { guides } from "../../../src/reference/guides";
import { planOf, show, typed } from "./shown-sheet";

describe("a farm plan by another region's guide", () => {
  it.each(Object.values(guides).map(({ label }) => label))(
    "answers by %s with a number or in words, and shows no error",
    async (guide) => {
      const book = await show(planOf("farm-plan", { guide, numberOfFields: 10 }));
      expect(book.errors()).toEqual([]);
      expect(book.beside("Assumptions", "Guide")).toBe(guide);
    },
  );

  it("understands a guide by any of its names and shows the one it goes by", async () => {
    const book = await show(planOf("farm-plan", { guide: "Tri-State", numberOfFields: 1 }));
    expect(book.beside("Assumptions", "Guide")).toBe("IN-MI-OH");
    expect(book.errors()).toEqual([]);
  });

  it("reads tests in ppm also where the guide prints lb/ac", async () => {
    // Illinois, medium-supply region, prints P in lb/ac: 20 ppm is 40 lb/ac, and is read as such
    const plan = typed(planOf("farm-plan", { guide: "IL", numberOfFields: 1 }), [
      [["Soil tests", "Home Quarter", "P ppm"], 20],
    ]);
    const rating = plan.sheets
      .flatMap(({ cells }) => cells)
      .flatMap(({ content }) =>
        typeof content === "object" && content.formula.includes("TESTRATING") ? [content.formula] : [],
      );
    expect(rating.length).toBeGreaterThan(0);
    for (const formula of rating) expect(formula).toContain('"ppm"');
  });

  it("lets a rate of one's own go before the guide's, and stand in where the guide prints none", async () => {
    const own = (rate: number) => [["Fields", "Orchard Forty", "Your P2O5 rate lb/ac"], rate] as const;
    // Iowa's wheat rates are not held here
    const book = await show(typed(planOf("farm-plan", { guide: "IA" }), [own(52)]));
    const row = (heading: string) => book.inTable("Fertility plan", "Orchard Forty", heading);
    expect(row("P2O5 by guide lb/ac")).toBe("no rate here");
    expect(row("P2O5 planned lb/ac")).toBe(52);
    expect(book.inTable("Product plan", "Orchard Forty", "Phosphate product lb/ac")).toBeCloseTo(100, 6); // 52 / 0.52
    const home = await show(typed(planOf("farm-plan"), [own(0)]));
    expect(home.inTable("Fertility plan", "Orchard Forty", "P2O5 by guide lb/ac")).toBe(65);
    expect(home.inTable("Fertility plan", "Orchard Forty", "P2O5 planned lb/ac")).toBe(0);
    expect(home.errors()).toEqual([]);
  });
});
