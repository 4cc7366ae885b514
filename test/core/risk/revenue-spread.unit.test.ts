import { profitDistribution } from "../../../src/core/risk/profit-distribution";
import { revenueSpread } from "../../../src/core/risk/revenue-spread";
import { riskMeasures } from "../../../src/core/risk/risk-measures";
import { pert } from "../../../src/core/statistics/three-point";
import { faultOf } from "../fault-of";

const corn = { meanYieldBuPerAc: 190, yieldSdBuPerAc: 25, meanPriceUsdPerBu: 4.5, priceSdUsdPerBu: 0.9 };

describe("revenueSpread", () => {
  it("correlation -0.5: 855 - 11.25 = 843.75, sd √23,292.5625 = 152.6190", () => {
    const spread = revenueSpread({ ...corn, correlation: -0.5 });
    expect(spread.meanUsdPerAc).toBeCloseTo(843.75, 10);
    expect(spread.sdUsdPerAc).toBeCloseTo(152.619, 4);
  });
  it("no correlation: 855, sd √(12,656.25 + 29,241 + 506.25) = 205.9211", () => {
    const spread = revenueSpread({ ...corn, correlation: 0 });
    expect(spread.meanUsdPerAc).toBe(855);
    expect(spread.sdUsdPerAc).toBeCloseTo(205.9211, 4);
  });
  it("is near what the range of profit says for bell-like ranges of the same mean and sd", () => {
    const yields = { low: 120, likely: 190, high: 260 };
    const prices = { low: 3, likely: 4.5, high: 6 };
    const spread = revenueSpread({
      meanYieldBuPerAc: 190,
      yieldSdBuPerAc: pert(yields).sd,
      meanPriceUsdPerBu: 4.5,
      priceSdUsdPerBu: pert(prices).sd,
      correlation: -0.5,
    });
    const costs = { costUsdPerAc: 0, otherIncomeUsdPerAc: 0, costUsdPerBu: 0 };
    const measures = riskMeasures(
      profitDistribution({ yieldBuPerAc: yields, priceUsdPerBu: prices, shape: "pert", correlation: -0.5, ...costs }),
    );
    expect(Math.abs(measures.mean / spread.meanUsdPerAc - 1)).toBeLessThan(0.001);
    expect(Math.abs(measures.sd / spread.sdUsdPerAc - 1)).toBeLessThan(0.02);
  });
  it("refuses spreads below 0 and correlations outside -1 to 1", () => {
    expect(faultOf(() => revenueSpread({ ...corn, correlation: -2 }))).toMatchObject({ argument: "correlation" });
    expect(faultOf(() => revenueSpread({ ...corn, yieldSdBuPerAc: -1, correlation: 0 }))).toMatchObject({
      argument: "yieldSpread",
    });
  });
});
