import { FormulaError } from "../../../src/core/fault";
import { partialBudget } from "../../../src/core/money/partial-budget";
import { returnPerDollar } from "../../../src/core/money/return-per-dollar";

const nothing = { addedReturnsUsd: [], reducedCostsUsd: [], addedCostsUsd: [], reducedReturnsUsd: [] };

describe("partialBudget", () => {
  it("adds up each list: (79.50 + 6) - (26 + 8 + 2.25) = 49.25; (85.50 - 2.25) / 34 = 2.4485 per dollar", () => {
    const budget = partialBudget({
      addedReturnsUsd: [79.5],
      reducedCostsUsd: [4, 2],
      addedCostsUsd: [26, 8],
      reducedReturnsUsd: [2.25],
    });
    expect(budget).toMatchObject({ gainsUsd: 85.5, lossesUsd: 36.25, netUsd: 49.25, addedCostsUsd: 34 });
    expect(budget.returnPerDollar).toBeCloseTo(2.4485, 4); // 83.25 / 34
  });
  it("has no return per dollar when nothing is spent", () => {
    expect(partialBudget({ ...nothing, reducedCostsUsd: [14] })).toMatchObject({ netUsd: 14, returnPerDollar: null });
  });
  it("takes a minus sign for a slip: a cost of -24 would count as a gain", () => {
    expect(() => partialBudget({ ...nothing, addedCostsUsd: [-24] })).toThrow(/"addedCosts".*"suggestion":"24"/);
  });
});

describe("returnPerDollar", () => {
  it("36 back for 24 is 1.50, 0.50 over the dollar, 12 net: pays", () => {
    expect(returnPerDollar({ addedReturnsUsd: 36, addedCostsUsd: 24 })).toEqual({
      returnPerDollar: 1.5,
      netPerDollar: 0.5,
      netUsd: 12,
      pays: true,
    });
  });
  it("a dollar back for a dollar does not pay", () => {
    expect(returnPerDollar({ addedReturnsUsd: 24, addedCostsUsd: 24 }).pays).toBe(false);
  });
  it("has no answer where nothing is spent", () => {
    expect(() => returnPerDollar({ addedReturnsUsd: 24, addedCostsUsd: 0 })).toThrow(FormulaError);
  });
});
