import fc from "fast-check";
import { capitalRecoveryFactor, presentValueFactor } from "../../../src/core/capital/capital-recovery";
import { investmentReturn } from "../../../src/core/capital/internal-rate";
import { neededGain } from "../../../src/core/capital/needed-gain";
import { investmentValue, netPresentValue } from "../../../src/core/capital/net-present-value";
import { paybackYears } from "../../../src/core/capital/payback-years";
import { realRate } from "../../../src/core/capital/real-rate";
import { yearlyCost } from "../../../src/core/capital/yearly-cost";

const rate = fc.integer({ min: 1, max: 300 }).map((thousandths) => thousandths / 1000);
const years = fc.integer({ min: 1, max: 60 });
const usd = fc.integer({ min: 1, max: 1_000_000 }).map((cents) => cents / 100);
const taxRate = fc.integer({ min: 0, max: 50 }).map((points) => points / 100);
const investment = fc.record({
  investmentUsd: usd,
  yearlyGainUsd: usd,
  years,
  salvageUsd: usd,
  taxRate,
  taxYears: years,
});

describe("investments, as laws", () => {
  it("a loan repaid at the recovery factor ends at nothing", () => {
    fc.assert(
      fc.property(rate, years, (i, n) => {
        let owed = 1;
        for (let year = 0; year < n; year++) owed = owed * (1 + i) - capitalRecoveryFactor(i, n);
        expect(Math.abs(owed)).toBeLessThan(1e-9 * (1 + i) ** n);
      }),
    );
  });
  it("the yearly cost, paid each year, is worth the price less the salvage of then", () => {
    fc.assert(
      fc.property(usd, usd, rate, years, (price, salvage, i, n) => {
        const { costUsdPerYr } = yearlyCost({ investmentUsd: price, salvageUsd: salvage, rate: i, years: n });
        expect(costUsdPerYr * presentValueFactor(i, n)).toBeCloseTo(price - salvage / (1 + i) ** n, 6);
      }),
    );
  });
  it("an investment is worth nothing at its internal rate", () => {
    fc.assert(
      fc.property(investment, (made) => {
        const inUsd = made.yearlyGainUsd * made.years + made.salvageUsd;
        // Returns between -60 and 900 % a year: outside, a rounding in the last digit is worth dollars.
        fc.pre(inUsd > made.investmentUsd * 0.5 && made.yearlyGainUsd + made.salvageUsd < made.investmentUsd * 5);
        const found = investmentReturn(made);
        const scale = made.investmentUsd + inUsd;
        expect(Math.abs(netPresentValue(found.flowsUsd, found.rate)) / scale).toBeLessThan(1e-9);
      }),
    );
  });
  it("an investment with the needed gain is worth nothing at that rate, before and after tax", () => {
    fc.assert(
      fc.property(investment, rate, (made, i) => {
        const needed = neededGain({ ...made, rate: i, upkeepUsdPerYr: 0 });
        fc.pre(!needed.isCovered);
        const { valueUsd } = investmentValue({ ...made, yearlyGainUsd: needed.gainUsdPerYr }, i);
        expect(Math.abs(valueUsd)).toBeLessThan(1e-9 * (made.investmentUsd + made.salvageUsd));
      }),
    );
  });
  it("pays back with interest no sooner than without, and is then worth nothing", () => {
    fc.assert(
      fc.property(usd, rate, fc.integer({ min: 105, max: 1000 }), (price, i, percentOfInterest) => {
        const gain = (price * i * percentOfInterest) / 100;
        const back = paybackYears({ investmentUsd: price, yearlyGainUsd: gain, rate: i });
        expect(back.years).toBeGreaterThanOrEqual(back.simpleYears);
        const worth = (gain * (1 - (1 + i) ** -back.years)) / i;
        expect(worth / price).toBeCloseTo(1, 9);
      }),
    );
  });
  it("is worth less at a higher rate", () => {
    fc.assert(
      fc.property(investment, rate, rate, (made, first, second) => {
        fc.pre(first < second);
        expect(investmentValue(made, second).valueUsd).toBeLessThan(investmentValue(made, first).valueUsd);
      }),
    );
  });
  it("the rate without inflation and the inflation make the rate again", () => {
    fc.assert(
      fc.property(rate, rate, (i, inflation) => {
        expect((1 + realRate(i, inflation)) * (1 + inflation)).toBeCloseTo(1 + i, 12);
      }),
    );
  });
});
