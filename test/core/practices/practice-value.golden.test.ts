import { practiceStrips } from "../../../src/core/practices/practice-strips";
import { practiceTestValue } from "../../../src/core/practices/practice-test-value";
import { unitNormalLoss } from "../../../src/core/practices/unit-normal-loss";
import { practiceUpdate } from "../../../src/core/practices/practice-update";
import { practiceOdds } from "../../../src/core/practices/practice-odds";

describe("unitNormalLoss", () => {
  /* As tabulated in Raiffa and Schlaifer (1961). */
  it.each([
    [0, 0.39894],
    [0.1, 0.35094],
    [0.2, 0.30689],
    [0.3, 0.26676],
    [0.4, 0.23044],
    [0.5, 0.1978],
    [0.6, 0.16867],
    [0.7, 0.14288],
    [0.8, 0.12021],
    [0.9, 0.10043],
    [1, 0.08332],
    [1.1, 0.06862],
    [1.2, 0.0561],
    [1.3, 0.04553],
    [1.4, 0.03667],
    [1.6, 0.02324],
    [1.7, 0.01829],
    [1.8, 0.01428],
    [1.9, 0.01105],
    [2, 0.00849],
    [2.1, 0.00647],
    [2.2, 0.00489],
    [2.3, 0.00366],
    [2.4, 0.00272],
    [2.5, 0.002],
    [2.6, 0.00146],
    [2.7, 0.00106],
    [2.8, 0.00076],
    [2.9, 0.00054],
    [3, 0.00038],
  ])("L(%d) = %d", (u, loss) => {
    expect(Math.abs(unitNormalLoss(u) - loss)).toBeLessThanOrEqual(0.000_005_1);
  });
  it("is never below 0, however far", () => {
    expect(unitNormalLoss(9)).toBeGreaterThanOrEqual(0);
    expect([unitNormalLoss(50), unitNormalLoss(Infinity)]).toEqual([0, 0]);
  });
});

describe("what a trial is worth", () => {
  /** Mean net $6/ac, SD $20, 500 acre-seasons: at $1 a bushel and no cost dollars are bushels. */
  const stake = {
    gainBuPerAc: 6,
    gainErrorBuPerAc: 20,
    costUsdPerAc: 0,
    priceUsdPerBu: 1,
    acres: 500,
    seasons: 1,
    seasonSdBuPerAc: 0,
  };
  it.each([
    [6, 14.7292, 1678.5],
    [12, 16.7726, 2057.46],
  ])("%d pairs with an SD of 45: moves the mean by %d, worth $%d", (pairs, move, value) => {
    const trial = practiceTestValue({ ...stake, trialErrorBuPerAc: 45 / Math.sqrt(pairs) });
    expect(trial.moveSdUsdPerAc).toBeCloseTo(move, 4);
    expect(trial.valueUsd).toBeCloseTo(value, 2);
  });
  it("a season that differs counts as error: 15² + 10.607² = 337.5 is the error of 6 pairs, worth $1,678.50", () => {
    const trial = practiceTestValue({ ...stake, trialErrorBuPerAc: 15, seasonSdBuPerAc: Math.sqrt(112.5) });
    expect(trial.moveSdUsdPerAc).toBeCloseTo(14.7292, 4);
    expect(trial.valueUsd).toBeCloseTo(1678.5, 2);
    expect(trial.certaintyUsd).toBeCloseTo(2667.61, 2);
  });
  it("certainty is worth 500 × 20 × L(0.3) = $2,667.61", () => {
    expect(practiceTestValue({ ...stake, trialErrorBuPerAc: 10 }).certaintyUsd).toBeCloseTo(2667.61, 2);
  });
  it("strips weigh that against their cost: 1,678.50 - 6 × 100 and 2,057.46 - 12 × 100", () => {
    const strips = practiceStrips({
      ...stake,
      pairSdBuPerAc: 45,
      pairCostUsd: 100,
      setUpCostUsd: 0,
      seasonSdBuPerAc: 0,
      mostPairs: 12,
    });
    const at = (pairs: number) => strips.counts.find((count) => count.pairs === pairs)?.leftUsd;
    expect(at(6)).toBeCloseTo(1078.5, 2);
    expect(at(12)).toBeCloseTo(857.46, 2);
    expect(strips.best.leftUsd).toBe(Math.max(...strips.counts.map(({ leftUsd }) => leftUsd)));
  });
  it("season-to-season variation is an error that strips do not lessen: √(45² / 9 + 8²) = 17", () => {
    const strips = practiceStrips({
      ...stake,
      pairSdBuPerAc: 45,
      pairCostUsd: 0,
      setUpCostUsd: 0,
      seasonSdBuPerAc: 8,
      mostPairs: 9,
    });
    expect(strips.counts.at(-1)?.trialErrorBuPerAc).toBeCloseTo(17, 12);
  });
});

describe("odds and beliefs", () => {
  const range = { lowGainBuPerAc: 0, likelyGainBuPerAc: 6, highGainBuPerAc: 12, shape: "triangular" } as const;
  it("odds of a 0 / 6 / 12 gain at $18 and $4.50: 1 - 4² / (12 × 6) = 7/9; net 4.50 × 6 - 18 = 9", () => {
    const odds = practiceOdds({ ...range, costUsdPerAc: 18, priceUsdPerBu: 4.5 });
    expect(odds.chance).toBeCloseTo(7 / 9, 12);
    expect(odds).toMatchObject({
      gainThatPaysBuPerAc: 4,
      meanNetUsdPerAc: 9,
      lowNetUsdPerAc: -18,
      highNetUsdPerAc: 36,
    });
  });
  it("PERT 0 / 0 / 10: P(gain > 2) = 0.8^5 = 0.32768", () => {
    const smooth = { lowGainBuPerAc: 0, likelyGainBuPerAc: 0, highGainBuPerAc: 10, shape: "pert" } as const;
    expect(practiceOdds({ ...smooth, costUsdPerAc: 9, priceUsdPerBu: 4.5 }).chance).toBeCloseTo(0.32768, 12);
  });
  it("a trial twice as precise counts for four fifths: variance 6 against 1.5", () => {
    const update = practiceUpdate({
      ...range,
      trialGainBuPerAc: 11,
      trialErrorBuPerAc: Math.sqrt(1.5),
      seasonSdBuPerAc: 0,
      costUsdPerAc: 45,
      priceUsdPerBu: 4.5,
      confidencePct: 90,
    });
    expect(update.trialWeight).toBeCloseTo(0.8, 12);
    expect(update.after.meanBuPerAc).toBeCloseTo(10, 12);
    expect(update.after.sdBuPerAc).toBeCloseTo(Math.sqrt(1.2), 12);
    // Exactly the gain that pays, 45 / 4.50 = 10.
    expect(update.after.chance).toBeCloseTo(0.5, 12);
    expect(update.after.netUsdPerAc).toBeCloseTo(0, 9);
  });
  it("one season among others: variance 6 against 4 of the strips and 2 of the season: half and half, (6 + 9) / 2", () => {
    const update = practiceUpdate({
      ...range,
      trialGainBuPerAc: 9,
      trialErrorBuPerAc: 2,
      seasonSdBuPerAc: Math.SQRT2,
      costUsdPerAc: null,
      priceUsdPerBu: null,
      confidencePct: 90,
    });
    expect(update.trialWeight).toBeCloseTo(0.5, 12);
    expect(update.trial.sdBuPerAc).toBeCloseTo(Math.sqrt(6), 12);
    expect(update.after.meanBuPerAc).toBeCloseTo(7.5, 12);
    expect(update.after.sdBuPerAc).toBeCloseTo(Math.sqrt(3), 12);
  });
});
