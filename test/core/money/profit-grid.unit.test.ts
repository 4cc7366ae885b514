import { profitGrid } from "../../../src/core/money/profit-grid";
import { faultOf } from "../fault-of";

const corn = {
  yieldsBuPerAc: [150, 180],
  pricesUsdPerBu: [4, 5],
  costUsdPerAc: 700,
  otherIncomeUsdPerAc: 0,
  costUsdPerBu: 0,
};

describe("profitGrid", () => {
  it("has a row for each yield and a column for each price: 150 × 4 - 700 = -100 … 180 × 5 - 700 = 200", () => {
    expect(profitGrid(corn)?.profitUsdPerAc).toEqual([
      [-100, 50],
      [20, 200],
    ]);
  });
  it("takes hauling off each bushel and adds other income: 150 × (4 - 0.50) + 40 - 700 = -135", () => {
    const grid = profitGrid({ ...corn, costUsdPerBu: 0.5, otherIncomeUsdPerAc: 40 });
    expect(grid?.profitUsdPerAc[0]?.[0]).toBe(-135);
    expect(grid?.profitUsdPerAc[1]?.[1]).toBe(150); // 180 × 4.50 + 40 - 700
  });
  it("names the best and the worst pairing and counts the losing ones", () => {
    expect(profitGrid(corn)).toMatchObject({
      best: { yieldBuPerAc: 180, priceUsdPerBu: 5, profitUsdPerAc: 200 },
      worst: { yieldBuPerAc: 150, priceUsdPerBu: 4, profitUsdPerAc: -100 },
      cells: 4,
      losingCells: 1,
    });
  });
  it("keeps the place of a blank heading", () => {
    expect(profitGrid({ ...corn, yieldsBuPerAc: [150, null], pricesUsdPerBu: [null, 5] })?.profitUsdPerAc).toEqual([
      [null, 50],
      [null, null],
    ]);
  });
  it("takes 200 yields at 200 prices and refuses more, with the number of pairings", () => {
    const many = (count: number) => Array.from({ length: count }, (_, index) => index);
    const asked = (yields: number, prices: number) =>
      faultOf(() => profitGrid({ ...corn, yieldsBuPerAc: many(yields), pricesUsdPerBu: many(prices) }));
    expect(asked(200, 200)).toBeUndefined();
    expect(asked(200, 201)).toMatchObject({
      argument: "prices",
      because: "with the yields given they make 40,200 pairings; at most 40,000 fit.",
    });
  });
  it("has nothing to say when every pairing has a blank", () => {
    expect(profitGrid({ ...corn, yieldsBuPerAc: [null, null] })).toBeNull();
  });
  it("refuses a yield outside its range, wherever it stands", () => {
    expect(faultOf(() => profitGrid({ ...corn, yieldsBuPerAc: [150, null, -1] }))).toMatchObject({
      argument: "yields",
    });
    expect(faultOf(() => profitGrid({ ...corn, pricesUsdPerBu: [null, Number.NaN] }))).toMatchObject({
      argument: "prices",
    });
  });
});
