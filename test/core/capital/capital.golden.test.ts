import { capitalRecoveryFactor, presentValueFactor } from "../../../src/core/capital/capital-recovery";
import { investmentReturn } from "../../../src/core/capital/internal-rate";
import { neededGain } from "../../../src/core/capital/needed-gain";
import { investmentValue } from "../../../src/core/capital/net-present-value";
import { paybackYears } from "../../../src/core/capital/payback-years";
import { yearlyCost } from "../../../src/core/capital/yearly-cost";
import factors from "./recovery-factors.fixture.json";

const tile = { investmentUsd: 1000, years: 30, salvageUsd: 0, taxRate: 0, taxYears: 30 };

describe("the table of capital recovery factors, 3 to 12 % and 3 to 50 years (made by make-recovery-factors.py)", () => {
  it("holds 90 pairs", () => expect(factors).toHaveLength(90));
  it.each(factors)("$rate over $years years", ({ rate, years, recovery, worth }) => {
    expect(Math.abs(capitalRecoveryFactor(rate, years) - recovery)).toBeLessThanOrEqual(0.5e-6 + 1e-12);
    expect(Math.abs(presentValueFactor(rate, years) - worth)).toBeLessThanOrEqual(0.5e-6 + 1e-12);
  });
});

describe("Schnitkey and others, farmdoc daily (12):180: tile at $1,000 an acre, 8 % and 50 years", () => {
  it("has to gain $81.74 an acre a year", () => {
    expect(yearlyCost({ investmentUsd: 1000, years: 50, rate: 0.08, salvageUsd: 0 }).costUsdPerYr).toBeCloseTo(
      81.74,
      2,
    );
    const needed = neededGain({ ...tile, years: 50, taxYears: 50, rate: 0.08, upkeepUsdPerYr: 0 });
    expect(needed.gainUsdPerYr).toBeCloseTo(81.74, 2);
  });
});

describe("an engineering-economy exercise: $30,000, salvage $8,000, 5 years, 15 %", () => {
  it("costs 22,000 × 0.2983156 + 8,000 × 0.15 = 7,762.94 a year; 7,762.60 is printed from a factor of 0.2983", () => {
    const cost = yearlyCost({ investmentUsd: 30_000, years: 5, rate: 0.15, salvageUsd: 8000 });
    expect(cost.costUsdPerYr).toBeCloseTo(7762.94, 2);
    expect(22_000 * Number(cost.recoveryFactor.toFixed(4)) + cost.salvageInterestUsdPerYr).toBeCloseTo(7762.6, 2);
  });
});

describe("tile of $1,000 for 30 years at 6 %, by hand with the present value of $1 a year, 13.764831", () => {
  it("gains of 54: 54 × 13.764831 - 1,000 = -256.70", () => {
    expect(investmentValue({ ...tile, yearlyGainUsd: 54 }, 0.06).valueUsd).toBeCloseTo(-256.7, 2);
  });
  it("gains of 110: 110 × 13.764831 - 1,000 = 514.13, paid back in 9.0909 years, 13.5314 with interest", () => {
    expect(investmentValue({ ...tile, yearlyGainUsd: 110 }, 0.06).valueUsd).toBeCloseTo(514.13, 2);
    const back = { investmentUsd: 1000, yearlyGainUsd: 110 };
    expect(paybackYears({ ...back, rate: 0 }).years).toBeCloseTo(1000 / 110, 10);
    // ln(1 / (1 - 60 / 110)) / ln(1.06) = 0.7884574 / 0.0582689
    expect(paybackYears({ ...back, rate: 0.06 }).years).toBeCloseTo(13.5314, 4);
  });
  it("after 25 % tax, written off in 15 years: 82.5 × 13.764831 + 16.6667 × 9.712249 - 1,000 = 297.47", () => {
    const taxed = { ...tile, taxRate: 0.25, taxYears: 15, yearlyGainUsd: 110 };
    expect(investmentValue(taxed, 0.06).valueUsd).toBeCloseTo(297.47, 2);
  });
  it.each([
    [54, 0.034454],
    [110, 0.104409],
  ])("gains of %d return %d a year, where the price is the gain times the present value factor", (gain, rate) => {
    const found = investmentReturn({ ...tile, yearlyGainUsd: gain }).rate;
    expect(found).toBeCloseTo(rate, 6);
    expect(gain * presentValueFactor(found, 30)).toBeCloseTo(1000, 8);
  });
  it("asks for a gain of 1,000 / 13.764831 = 72.6489", () => {
    expect(neededGain({ ...tile, rate: 0.06, upkeepUsdPerYr: 0 }).gainUsdPerYr).toBeCloseTo(72.6489, 4);
  });
});

describe("lime: 3 ton at $32 and $8 of spreading, 7 %, 5 years", () => {
  it("costs 104 × 0.243891 = 25.3646 a year", () => {
    expect(yearlyCost({ investmentUsd: 104, years: 5, rate: 0.07, salvageUsd: 0 }).costUsdPerYr).toBeCloseTo(
      25.3646,
      4,
    );
  });
});
