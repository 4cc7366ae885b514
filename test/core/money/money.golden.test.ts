import { breakEvenGain } from "../../../src/core/money/break-even-gain";
import { breakEvenPrice } from "../../../src/core/money/break-even-price";
import { breakEvenYield } from "../../../src/core/money/break-even-yield";
import { partialBudget } from "../../../src/core/money/partial-budget";
import { profitGrid } from "../../../src/core/money/profit-grid";

const noExtras = { otherIncomeUsdPerAc: 0, costUsdPerBu: 0 };

describe("Extension in the farm press, Partial Budget a Simple, Useful Financial Tool", () => {
  it("100 ac of corn in place of dry beans loses $4,500", () => {
    const budget = partialBudget({
      addedReturnsUsd: [150 * 6.5 * 100],
      reducedCostsUsd: [550 * 100],
      addedCostsUsd: [690 * 100],
      reducedReturnsUsd: [22 * 40 * 100],
    });
    // 152,500 for and 157,000 against are printed; the article's "152,000" in the last line is a slip.
    expect(budget).toMatchObject({ gainsUsd: 152_500, lossesUsd: 157_000, netUsd: -4500 });
  });
});

describe("Extension corn budget, northern Alabama: 150 bu at $6.00, costs 391.93 variable and 458.28 in all", () => {
  it("breaks even at 458.28 / 150 = $3.0552 and at 458.28 / 6 = 76.38 bu", () => {
    expect(breakEvenPrice({ costUsdPerAc: 458.28, yieldBuPerAc: 150, ...noExtras }).priceUsdPerBu).toBeCloseTo(
      3.0552,
      10,
    );
    expect(breakEvenYield({ costUsdPerAc: 458.28, priceUsdPerBu: 6, ...noExtras }).yieldBuPerAc).toBeCloseTo(76.38, 10);
  });
  it("leaves 508.07 over the variable costs and 441.72 over all", () => {
    for (const [costUsdPerAc, left] of [
      [391.93, 508.07],
      [458.28, 441.72],
    ] as const) {
      const grid = profitGrid({ yieldsBuPerAc: [150], pricesUsdPerBu: [6], costUsdPerAc, ...noExtras });
      expect(grid?.profitUsdPerAc[0]?.[0]).toBeCloseTo(left, 10);
    }
  });
});

describe("Extension wheat budget, central Texas 2016: 45 bu at $5.10, costs 263.33 variable and 325.10 in all", () => {
  it.each([
    [263.33, 5.85, -33.83],
    [325.1, 7.22, -95.6],
  ])("costs of %d: break-even price %d and net %d, all printed", (costUsdPerAc, price, net) => {
    expect(
      Math.abs(breakEvenPrice({ costUsdPerAc, yieldBuPerAc: 45, ...noExtras }).priceUsdPerBu - price),
    ).toBeLessThan(0.005);
    const grid = profitGrid({ yieldsBuPerAc: [45], pricesUsdPerBu: [5.1], costUsdPerAc, ...noExtras });
    expect(grid?.profitUsdPerAc[0]?.[0]).toBeCloseTo(net, 10);
  });
});

describe("University of Wisconsin in the farm press: fungicide", () => {
  it("$26 at $4.50 corn needs 5.8 bu", () => {
    expect(breakEvenGain({ costUsdPerAc: 26, priceUsdPerBu: 4.5, costUsdPerBu: 0 }).gainBuPerAc).toBeCloseTo(5.8, 1);
  });
});
