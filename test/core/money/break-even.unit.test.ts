import { breakEvenGain } from "../../../src/core/money/break-even-gain";
import { breakEvenPrice } from "../../../src/core/money/break-even-price";
import { breakEvenYield } from "../../../src/core/money/break-even-yield";
import { faultOf } from "../fault-of";

describe("breakEvenGain", () => {
  it("24 / 4.50 = 5.3333 bu; with 15 cents of hauling 24 / 4.35 = 5.5172 bu", () => {
    expect(breakEvenGain({ costUsdPerAc: 24, priceUsdPerBu: 4.5, costUsdPerBu: 0 }).gainBuPerAc).toBeCloseTo(5.3333, 4);
    expect(breakEvenGain({ costUsdPerAc: 24, priceUsdPerBu: 4.5, costUsdPerBu: 0.15 })).toMatchObject({
      gainBuPerAc: expect.closeTo(5.5172, 4),
      marginUsdPerBu: expect.closeTo(4.35, 10),
    });
  });
  it("needs no gain for a practice that costs nothing", () => {
    expect(breakEvenGain({ costUsdPerAc: 0, priceUsdPerBu: 4.5, costUsdPerBu: 0 }).gainBuPerAc).toBe(0);
  });
  it("refuses a bushel that brings nothing, and says why", () => {
    expect(faultOf(() => breakEvenGain({ costUsdPerAc: 24, priceUsdPerBu: 0.3, costUsdPerBu: 0.35 }))).toMatchObject({
      kind: "refused",
      argument: "price",
      because: expect.stringContaining("0.35 $/bu"),
    });
    expect(faultOf(() => breakEvenGain({ costUsdPerAc: 24, priceUsdPerBu: 0, costUsdPerBu: 0 }))).toMatchObject({
      kind: "refused",
      argument: "price",
    });
  });
  it("takes a minus sign before the cost for a slip", () => {
    expect(faultOf(() => breakEvenGain({ costUsdPerAc: -24, priceUsdPerBu: 4.5, costUsdPerBu: 0 }))).toMatchObject({
      kind: "outOfRange",
      argument: "cost",
      suggestion: "24",
    });
  });
});

describe("breakEvenPrice", () => {
  const soybean = { costUsdPerAc: 500, yieldBuPerAc: 50, otherIncomeUsdPerAc: 0, costUsdPerBu: 0 };
  it("(500 + 0.20 × 50 - 60) / 50 = 9.00", () => {
    const price = breakEvenPrice({ ...soybean, costUsdPerBu: 0.2, otherIncomeUsdPerAc: 60 });
    expect(price.priceUsdPerBu).toBeCloseTo(9, 12);
    expect(price.costToCoverUsdPerAc).toBeCloseTo(450, 12);
  });
  it("is 0 when other income covers everything, and says so", () => {
    expect(breakEvenPrice({ ...soybean, otherIncomeUsdPerAc: 600 })).toMatchObject({
      priceUsdPerBu: 0,
      isCovered: true,
    });
  });
  it("has no answer without a yield", () => {
    expect(faultOf(() => breakEvenPrice({ ...soybean, yieldBuPerAc: 0 }))).toMatchObject({ argument: "yield" });
  });
});

describe("breakEvenYield", () => {
  const corn = { costUsdPerAc: 700, priceUsdPerBu: 4.35, otherIncomeUsdPerAc: 0, costUsdPerBu: 0 };
  it("(700 - 50) / (4.35 - 0.35) = 162.5", () => {
    const result = breakEvenYield({ ...corn, otherIncomeUsdPerAc: 50, costUsdPerBu: 0.35 });
    expect(result.yieldBuPerAc).toBeCloseTo(162.5, 10);
    expect(result.marginUsdPerBu).toBeCloseTo(4, 12);
  });
  it("is 0 when other income covers everything", () => {
    expect(breakEvenYield({ ...corn, otherIncomeUsdPerAc: 700 })).toMatchObject({ yieldBuPerAc: 0, isCovered: true });
  });
  it("refuses a price that hauling and drying eat up", () => {
    expect(faultOf(() => breakEvenYield({ ...corn, costUsdPerBu: 4.35 }))).toMatchObject({ argument: "price" });
  });
});
