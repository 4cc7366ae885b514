import { capitalRecoveryFactor } from "../../../src/core/capital/capital-recovery";
import { internalRate, investmentReturn } from "../../../src/core/capital/internal-rate";
import { investmentFlows } from "../../../src/core/capital/investment-flows";
import { neededGain } from "../../../src/core/capital/needed-gain";
import { investmentValue, netPresentValue } from "../../../src/core/capital/net-present-value";
import { paybackYears } from "../../../src/core/capital/payback-years";
import { realRate } from "../../../src/core/capital/real-rate";
import { yearlyCost } from "../../../src/core/capital/yearly-cost";
import { faultOf } from "../fault-of";

const plain = { investmentUsd: 900, yearlyGainUsd: 500, years: 2, salvageUsd: 100, taxRate: 0, taxYears: 2 };

describe("capitalRecoveryFactor", () => {
  it("is 1/n without interest", () => expect(capitalRecoveryFactor(0, 8)).toBe(0.125));
  it("keeps its digits when the rate is nearly 0: 1/n + rate (n + 1) / (2 n)", () => {
    expect(capitalRecoveryFactor(1e-10, 10)).toBeCloseTo(0.1 + (1e-10 * 11) / 20, 14);
  });
  it("is the loan plus interest for one year", () => expect(capitalRecoveryFactor(0.07, 1)).toBeCloseTo(1.07, 14));
  it("refuses years and rates outside their range", () => {
    expect(faultOf(() => capitalRecoveryFactor(0.08, 0))).toMatchObject({ kind: "outOfRange", argument: "years" });
    expect(faultOf(() => capitalRecoveryFactor(0.08, 101))).toMatchObject({ kind: "outOfRange", argument: "years" });
    expect(faultOf(() => capitalRecoveryFactor(8, 10))).toMatchObject({ kind: "outOfRange", argument: "rate" });
    expect(faultOf(() => capitalRecoveryFactor(Number.NaN, 10))).toMatchObject({ argument: "rate" });
  });
});

describe("yearlyCost", () => {
  it("asks only for interest on what keeps its price: 5,000 × 0.06 = 300", () => {
    const land = yearlyCost({ investmentUsd: 5000, years: 20, rate: 0.06, salvageUsd: 5000 });
    expect(land).toMatchObject({ costUsdPerYr: 300, recoveryUsdPerYr: 0, paidUsd: 6000, interestUsd: 6000 });
  });
  it("shares the loss of value without interest: (900 - 100) / 4 = 200", () => {
    expect(yearlyCost({ investmentUsd: 900, years: 4, rate: 0, salvageUsd: 100 }).costUsdPerYr).toBe(200);
  });
});

describe("paybackYears", () => {
  it("refuses gains that do not cover the first year's interest: 1,000 × 0.08 = 80", () => {
    expect(faultOf(() => paybackYears({ investmentUsd: 1000, yearlyGainUsd: 80, rate: 0.08 }))).toEqual({
      kind: "refused",
      argument: "yearlyGain",
      because: "interest alone is 80 $/yr, so this never pays it back; got 80.",
    });
    expect(faultOf(() => paybackYears({ investmentUsd: 1000, yearlyGainUsd: -5, rate: 0 }))).toMatchObject({
      because: "must be above 0 to pay anything back; got -5.",
    });
  });
});

describe("investments after tax", () => {
  it("move money once a year: -900, 500, 500 + 100", () => {
    expect(investmentFlows(plain).flowsUsd).toEqual([-900, 500, 600]);
  });
  it("are taxed on gain and salvage and spared tax on the write-off: 500 × 0.8 + 0.2 × 900 / 2 = 490", () => {
    expect(investmentFlows({ ...plain, taxRate: 0.2 }).flowsUsd).toEqual([-900, 490, 570]);
  });
  it("say what is not written off at the end: 900 × (1 - 2 / 3) = 300", () => {
    expect(investmentFlows({ ...plain, taxRate: 0.2, taxYears: 3 }).notWrittenOffUsd).toBeCloseTo(300, 10);
    expect(investmentFlows({ ...plain, taxYears: 3 }).notWrittenOffUsd).toBe(0);
  });
  it("take whole years only", () => {
    expect(faultOf(() => investmentFlows({ ...plain, years: 2.5 }))).toMatchObject({
      kind: "refused",
      argument: "years",
    });
    expect(faultOf(() => investmentFlows({ ...plain, taxYears: 0 }))).toMatchObject({ argument: "taxYears" });
  });
});

describe("netPresentValue and internalRate", () => {
  it("discounts year by year: -900 + 500 / 1.25 + 600 / 1.5625 = -116", () => {
    expect(netPresentValue([-900, 500, 600], 0.25)).toBeCloseTo(-900 + 400 + 384, 10);
    expect(investmentValue(plain, 0.25).inflowsTodayUsd).toBeCloseTo(784, 10);
    // As a level amount a year: -116 × 0.25 × 1.5625 / (1.5625 - 1) = -116 × 0.69444…
    expect(investmentValue(plain, 0.25).valueUsdPerYr).toBeCloseTo((-116 * 0.390625) / 0.5625, 10);
  });
  it("finds the rate: 660 / 1.1 + 484 / 1.21 = 600 + 400 = 1,000", () => {
    expect(internalRate([-1000, 660, 484])).toBeCloseTo(0.1, 12);
  });
  it("finds losses too: 1,000 becomes 250 in two years, half each year", () => {
    expect(internalRate([-1000, 0, 250])).toBeCloseTo(-0.5, 12);
  });
  it("tells what a dollar brings back: (500 + 600) / 900", () => {
    expect(investmentReturn(plain).returnedPerDollar).toBeCloseTo(11 / 9, 12);
  });
  it("has none when nothing comes back, and none for no money at all", () => {
    expect(internalRate([-1000, 0, 0])).toBeNull();
    expect(internalRate([0, 0, 0])).toBeNull();
    expect(faultOf(() => investmentReturn({ ...plain, yearlyGainUsd: 0, salvageUsd: 0 }))).toMatchObject({
      because: "brings nothing back, so there is no return.",
    });
    const noMoneyIn = faultOf(() => investmentReturn({ ...plain, investmentUsd: 0 }));
    expect(noMoneyIn).toMatchObject({ kind: "refused", argument: "investment" });
  });
  it("looks no further than 1,000 % a year, also for an upkeep that the salvage alone pays", () => {
    const noRate = { kind: "refused", argument: "yearlyGain", because: expect.stringContaining("no rate between") };
    expect(faultOf(() => investmentReturn({ ...plain, yearlyGainUsd: 1e8 }))).toMatchObject(noRate);
    expect(faultOf(() => investmentReturn({ ...plain, yearlyGainUsd: -100, salvageUsd: 1e7 }))).toMatchObject(noRate);
  });
});

describe("neededGain", () => {
  it("adds the upkeep: (900 - 100) / 2 + 30 = 430 without interest", () => {
    expect(neededGain({ ...plain, rate: 0, upkeepUsdPerYr: 30 }).gainUsdPerYr).toBeCloseTo(430, 10);
  });
  it("is nothing where salvage pays for everything", () => {
    const kept = neededGain({ ...plain, salvageUsd: 2000, rate: 0, upkeepUsdPerYr: 0 });
    expect(kept).toMatchObject({ gainUsdPerYr: 0, isCovered: true, spareTodayUsd: 2000 });
    // Just paid for counts as paid for.
    expect(neededGain({ ...plain, salvageUsd: 900, rate: 0, upkeepUsdPerYr: 0 }).isCovered).toBe(true);
  });
});

describe("realRate", () => {
  it("is the part above inflation: 1.10 / 1.10 is nothing, 1.08 / 1 is 8 %", () => {
    expect(realRate(0.1, 0.1)).toBe(0);
    expect(realRate(0.08, 0)).toBe(0.08);
  });
});
