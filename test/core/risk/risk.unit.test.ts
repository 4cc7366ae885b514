import { averageNormalCdf } from "../../../src/core/risk/average-normal-cdf";
import { certaintyEquivalent, coinFlipPremium } from "../../../src/core/risk/certainty-equivalent";
import { planDominance } from "../../../src/core/risk/plan-dominance";
import type { Outlook } from "../../../src/core/risk/profit-distribution";
import { profitOdds } from "../../../src/core/risk/profit-odds";
import { profitRange } from "../../../src/core/risk/profit-range";
import { normalCdf, normalPdf } from "../../../src/core/statistics/normal";
import { faultOf } from "../fault-of";

const outlook: Outlook = {
  yieldBuPerAc: { low: 120, likely: 190, high: 230 },
  priceUsdPerBu: { low: 3.2, likely: 4.5, high: 6 },
  shape: "triangular",
  correlation: -0.3,
  costUsdPerAc: 700,
  otherIncomeUsdPerAc: 0,
  costUsdPerBu: 0,
};
const certain = (value: number) => ({ low: value, likely: value, high: value });

describe("averageNormalCdf", () => {
  it("is the difference of z Φ(z) + φ(z) over that of z", () => {
    const integral = (z: number) => z * normalCdf(z) + normalPdf(z);
    for (const [from, to] of [
      [-1, 2],
      [-3.03, -2.5],
      [0.2, 0.21],
      [8.5, -8.7],
    ] as const) {
      expect(averageNormalCdf(from, to)).toBeCloseTo((integral(to) - integral(from)) / (to - from), 5);
    }
  });
  it("is the share above 0 when the ends are far out: 3 of 7", () => {
    expect(averageNormalCdf(-4e6, 3e6)).toBeCloseTo(3 / 7, 5);
    expect(averageNormalCdf(20, 40)).toBe(1);
    expect(averageNormalCdf(-40, -20)).toBe(0);
    expect(averageNormalCdf(0.5, 0.5)).toBe(normalCdf(0.5));
  });
});

describe("profitOdds", () => {
  it("is a price alone when the yield is certain: 150 × price > 540 is a price above 3.60, (0.6)² / 2 lie below", () => {
    const odds = profitOdds(
      { ...outlook, yieldBuPerAc: certain(150), priceUsdPerBu: { low: 3, likely: 4, high: 5 }, costUsdPerAc: 540 },
      0,
    );
    expect(odds.chance).toBeCloseTo(1 - 0.18, 10);
  });
  it("is a yield alone when the price is certain, also where every bushel loses", () => {
    const yields = { low: 100, likely: 150, high: 200 };
    const sold = { ...outlook, yieldBuPerAc: yields, costUsdPerAc: 0, correlation: 0.5 };
    // 4.00 × yield > 500 is a yield above 125: 1 - 25² / (100 × 50)
    expect(profitOdds({ ...sold, priceUsdPerBu: certain(4) }, 500).chance).toBeCloseTo(0.875, 10);
    // 1.00 × yield lost: more than -125 is a yield below 125
    expect(profitOdds({ ...sold, priceUsdPerBu: certain(4), costUsdPerBu: 5 }, -125).chance).toBeCloseTo(0.125, 10);
    expect(profitOdds({ ...sold, priceUsdPerBu: certain(4), costUsdPerBu: 4 }, 0).chance).toBe(0);
  });
  it("is sure when both are certain: 150 × 4 - 540 = 60", () => {
    const sure = { ...outlook, yieldBuPerAc: certain(150), priceUsdPerBu: certain(4), costUsdPerAc: 540 };
    expect(profitOdds(sure, 59.99).chance).toBe(1);
    expect(profitOdds(sure, 60).chance).toBe(0);
  });
  it("tells worst, likeliest and best: 120 × 3.20, 190 × 4.50, 230 × 6.00, less 700", () => {
    const odds = profitOdds(outlook, 0);
    expect(odds.worstUsdPerAc).toBeCloseTo(-316, 10);
    expect(odds.likelyUsdPerAc).toBeCloseTo(155, 10);
    expect(odds.bestUsdPerAc).toBeCloseTo(680, 10);
  });
  it("counts years without a crop: a yield of 0 costs it all", () => {
    const none = { ...outlook, yieldBuPerAc: certain(0) };
    expect(profitOdds(none, -701).chance).toBe(1);
    expect(profitOdds(none, -700).chance).toBe(0);
  });
  it("refuses ranges out of order and correlations outside -1 to 1", () => {
    expect(faultOf(() => profitOdds({ ...outlook, yieldBuPerAc: { low: 200, likely: 190, high: 230 } }, 0))).toEqual({
      kind: "refused",
      argument: "lowYield",
      because: "must not be above likelyYield (190 bu/ac); got 200.",
    });
    expect(faultOf(() => profitOdds({ ...outlook, priceUsdPerBu: { low: 3, likely: 7, high: 6 } }, 0))).toMatchObject({
      argument: "likelyPrice",
      because: "must not be above highPrice (6 $/bu); got 7.",
    });
    for (const correlation of [-1.01, 1.01, Number.NaN]) {
      expect(faultOf(() => profitOdds({ ...outlook, correlation }, 0))).toMatchObject({
        kind: "outOfRange",
        argument: "correlation",
      });
    }
  });
});

describe("profitRange", () => {
  it("of a certain profit is that profit throughout", () => {
    const range = profitRange({
      outlook: { ...outlook, yieldBuPerAc: certain(150), priceUsdPerBu: certain(4), costUsdPerAc: 540 },
      targetUsdPerAc: 0,
      tail: 0.05,
      riskAversion: 0.01,
    });
    expect(range).toMatchObject({ chanceShort: 0, shortfallUsdPerAc: 0, sdUsdPerAc: 0 });
    for (const value of [
      range.lowUsdPerAc,
      range.highUsdPerAc,
      range.meanUsdPerAc,
      range.tailMeanUsdPerAc,
      range.certainUsdPerAc,
    ]) {
      expect(value).toBeCloseTo(60, 9);
    }
  });
  it("refuses a tail of 0 and a negative risk aversion", () => {
    const asked = { outlook, targetUsdPerAc: 0, tail: 0.05, riskAversion: null };
    expect(faultOf(() => profitRange({ ...asked, tail: 0 }))).toMatchObject({ argument: "tail" });
    expect(faultOf(() => profitRange({ ...asked, riskAversion: -1 }))).toMatchObject({ argument: "riskAversion" });
  });
});

describe("certaintyEquivalent", () => {
  it("is the mean without risk aversion and takes chances in any unit", () => {
    const odds = { outcomesUsd: [0, 100], chances: [1, 3] };
    expect(certaintyEquivalent({ ...odds, riskAversion: 0 }).certainUsd).toBe(75);
    const same = certaintyEquivalent({ outcomesUsd: [0, 100], chances: [25, 75], riskAversion: 0.01 });
    expect(certaintyEquivalent({ ...odds, riskAversion: 0.01 }).certainUsd).toBeCloseTo(same.certainUsd, 12);
  });
  it("leaves out what cannot happen and does not overflow", () => {
    const worth = certaintyEquivalent({ outcomesUsd: [-1e8, 5, 1e8], chances: [0, 1, 1], riskAversion: 0.1 });
    // The good outcome counts for nothing: 5 + ln(2) / 0.1
    expect(worth.certainUsd).toBeCloseTo(5 + Math.log(2) / 0.1, 9);
    expect(coinFlipPremium(0, 100)).toBe(0);
  });
  it("refuses chances that add up to 0", () => {
    const none = { outcomesUsd: [1, 2], chances: [0, 0], riskAversion: 0.01 };
    expect(faultOf(() => certaintyEquivalent(none))).toMatchObject({ argument: "chances" });
  });
});

describe("planDominance", () => {
  it("sees a plan that is better in every year: 30, 50, 70 against 20, 50, 60", () => {
    const better = planDominance({ first: [70, 30, 50], second: [60, 20, 50] });
    expect(better).toMatchObject({ everyone: "first", cautious: "first", firstLowest: 30, secondMean: 130 / 3 });
    expect(planDominance({ first: [60, 20, 50], second: [70, 30, 50] }).everyone).toBe("second");
  });
  it("compares plans with unlike numbers of outcomes: each twice is the same plan", () => {
    expect(planDominance({ first: [1, 2], second: [1, 1, 2, 2] })).toMatchObject({
      everyone: "alike",
      cautious: "alike",
    });
  });
  it("has no order when the riskier plan earns more on average", () => {
    expect(planDominance({ first: [40, 60], second: [20, 90] }).cautious).toBe("neither");
  });
  it("needs two outcomes of each", () => {
    expect(faultOf(() => planDominance({ first: [1, 2], second: [1] }))).toMatchObject({
      kind: "tooFew",
      argument: "b",
    });
  });
});
