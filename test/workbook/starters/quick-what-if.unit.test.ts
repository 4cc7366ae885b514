import { cropChoice } from "../../../src/workbook/starters";
import { planOf, show } from "./shown-sheet";

describe("the quick what-if", () => {
  it("answers for corn at 190 bu and $4.35", async () => {
    const book = await show(planOf("quick-what-if"));
    const answer = (label: string) => book.beside("Quick what if", label);
    expect(book.errors()).toEqual([]);
    expect(answer("An acre leaves")).toBeCloseTo(190 * (4.35 - 0.3) - 825, 6); // -55.50
    expect(answer("Price that covers the costs")).toBeCloseTo(825 / 190 + 0.3, 6);
    expect(answer("Yield that covers the costs")).toBeCloseTo(825 / 4.05, 6);
    expect(answer("Against its costs")).toBe("▼ falls short");
    expect(answer("P2O5")).toBeCloseTo(190 * 0.35, 6);
    expect(answer("K2O")).toBeCloseTo(190 * 0.2, 6);
  });
  it("starts with the first crop chosen", async () => {
    const book = await show(planOf("quick-what-if", { crops: [{ ...cropChoice("soybean"), priceUsdPerBu: 12 }] }));
    expect(book.errors()).toEqual([]);
    expect(book.beside("Quick what if", "An acre leaves")).toBeCloseTo(58 * (12 - 0.12) - 620, 6);
    expect(book.beside("Quick what if", "K2O")).toBeCloseTo(58 * 1.15, 6);
  });
});
