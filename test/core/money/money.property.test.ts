import fc from "fast-check";
import { breakEvenGain } from "../../../src/core/money/break-even-gain";
import { breakEvenPrice } from "../../../src/core/money/break-even-price";
import { breakEvenYield } from "../../../src/core/money/break-even-yield";
import { partialBudget, type Change } from "../../../src/core/money/partial-budget";
import { profitGrid } from "../../../src/core/money/profit-grid";

/** Whole cents up to $10,000 an acre. */
const usd = fc.integer({ min: 0, max: 1_000_000 }).map((cents) => cents / 100);
const priceUsdPerBu = fc.integer({ min: 200, max: 2000 }).map((cents) => cents / 100);
const costUsdPerBu = fc.integer({ min: 0, max: 150 }).map((cents) => cents / 100);
const yieldBuPerAc = fc.integer({ min: 1, max: 4000 }).map((tenths) => tenths / 10);
const amounts = fc.array(usd, { maxLength: 8 });
const change: fc.Arbitrary<Change> = fc.record({
  addedReturnsUsd: amounts,
  reducedCostsUsd: amounts,
  addedCostsUsd: amounts,
  reducedReturnsUsd: amounts,
});

describe("budgets, as laws", () => {
  it("undoing a change undoes its net", () => {
    fc.assert(
      fc.property(change, (made) => {
        const undone: Change = {
          addedReturnsUsd: made.reducedReturnsUsd,
          reducedCostsUsd: made.addedCostsUsd,
          addedCostsUsd: made.reducedCostsUsd,
          reducedReturnsUsd: made.addedReturnsUsd,
        };
        expect(partialBudget(undone).netUsd + partialBudget(made).netUsd).toBe(0);
      }),
    );
  });
  it("a change pays exactly when it returns more than a dollar per dollar", () => {
    fc.assert(
      fc.property(change, (made) => {
        const { netUsd, returnPerDollar } = partialBudget(made);
        fc.pre(returnPerDollar !== null && Math.abs(netUsd) > 0.001);
        expect((returnPerDollar ?? 0) > 1).toBe(netUsd > 0);
      }),
    );
  });
  it("the break-even gain, sold, pays the cost", () => {
    fc.assert(
      fc.property(usd, priceUsdPerBu, costUsdPerBu, (costUsdPerAc, price, perBu) => {
        const { gainBuPerAc } = breakEvenGain({ costUsdPerAc, priceUsdPerBu: price, costUsdPerBu: perBu });
        expect(gainBuPerAc * (price - perBu)).toBeCloseTo(costUsdPerAc, 7);
      }),
    );
  });
  it("profit is nothing at the break-even price and at the break-even yield", () => {
    fc.assert(
      fc.property(usd, yieldBuPerAc, priceUsdPerBu, usd, costUsdPerBu, (cost, bushels, price, other, perBu) => {
        const rest = { costUsdPerAc: cost, otherIncomeUsdPerAc: other, costUsdPerBu: perBu };
        const even = breakEvenPrice({ yieldBuPerAc: bushels, ...rest });
        if (!even.isCovered && even.priceUsdPerBu <= 10_000) {
          expect(profit(bushels, even.priceUsdPerBu, rest)).toBeCloseTo(0, 6);
        }
        const least = breakEvenYield({ priceUsdPerBu: price, ...rest });
        if (!least.isCovered && least.yieldBuPerAc <= 10_000) {
          expect(profit(least.yieldBuPerAc, price, rest)).toBeCloseTo(0, 6);
        }
      }),
    );
  });
  it("profit rises with the yield and with the price along the grid", () => {
    const rising = (of: fc.Arbitrary<number>) =>
      fc.uniqueArray(of, { minLength: 2, maxLength: 6 }).map((values) => [...values].sort((a, b) => a - b));
    fc.assert(
      fc.property(rising(yieldBuPerAc), rising(priceUsdPerBu), usd, costUsdPerBu, (yields, prices, cost, perBu) => {
        const grid = profitGrid({
          yieldsBuPerAc: yields,
          pricesUsdPerBu: prices,
          costUsdPerAc: cost,
          otherIncomeUsdPerAc: 0,
          costUsdPerBu: perBu,
        });
        grid?.profitUsdPerAc.forEach((row, r, rows) =>
          row.forEach((cell, c) => {
            if (c > 0) expect(cell).toBeGreaterThan(row[c - 1] ?? Number.NaN);
            if (r > 0) expect(cell).toBeGreaterThan(rows[r - 1]?.[c] ?? Number.NaN);
          }),
        );
        expect(grid?.profitUsdPerAc).toHaveLength(yields.length);
      }),
    );
  });
});

function profit(
  bushels: number,
  price: number,
  rest: { costUsdPerAc: number; otherIncomeUsdPerAc: number; costUsdPerBu: number },
): number {
  return profitGrid({ yieldsBuPerAc: [bushels], pricesUsdPerBu: [price], ...rest })?.best.profitUsdPerAc ?? Number.NaN;
}
