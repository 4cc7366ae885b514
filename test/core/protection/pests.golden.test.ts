import { pestDays } from "../../../src/core/protection/pest-growth";
import { pestInjuryLevel } from "../../../src/core/protection/pest-injury-level";

describe("South Dakota State University, bean leaf beetle on seedling soybean", () => {
  // 0.00125 of the yield for a beetle in a foot of row: 0.00125 × 40 bu = 0.05 bu.
  it.each([
    [10, 40],
    [4, 16],
  ])("$%d an acre, $5 a bushel, 40 bu: %d beetles in a foot", (costUsdPerAc, beetles) => {
    const input = { costUsdPerAc, priceUsdPerBu: 5, lossBuPerAcEach: 0.00125 * 40, controlPct: 100 };
    expect(pestInjuryLevel(input).injuryLevel).toBeCloseTo(beetles, 9);
  });
});

describe("soybean aphid, Ragsdale and others 2007", () => {
  it("from 250 to 674 with a doubling time of 6.8 days: 9.73 days", () => {
    const { days } = pestDays({ count: 250, injuryLevel: 674, growth: { pest: "soybeanAphid" } });
    expect(days).toBeCloseTo(9.73, 2);
  });
});
