import { holmAdjusted } from "../../../src/core/trials/holm";
import { pairedGain } from "../../../src/core/trials/paired-gain";
import { gainInWords, gainPays } from "../../../src/core/trials/gain-in-words";
import { stripYield } from "../../../src/core/trials/strip-yield";
import { trialPool } from "../../../src/core/trials/trial-pool";
import { blockPower, trialPower, trialSize } from "../../../src/core/trials/trial-power";

const pairs = { stripSdBuPerAc: 1 / Math.SQRT2, treatments: 2 };

describe("pairs needed at a power of 80 %, by the noncentral t", () => {
  const differences = [2, 3, 4, 5, 6, 8, 10];
  // Rows: residual CV, then pairs for differences of 2, 3, 4, 5, 6, 8 and 10 % of the mean.
  const at90 = [
    [2, 14, 8, 5, 4, 4, 3, 3],
    [3, 30, 14, 9, 7, 5, 4, 3],
    [4, 51, 24, 14, 10, 8, 5, 4],
    [5, 79, 36, 21, 14, 11, 7, 5],
    [6, 113, 51, 30, 20, 14, 9, 7],
    [8, 200, 90, 51, 34, 24, 14, 10],
  ];
  it.each(at90)("CV %d %%", (cvPct, ...needed) => {
    const found = differences.map(
      (gain) =>
        trialSize({ gainBuPerAc: gain, stripSdBuPerAc: cvPct ?? 0, confidencePct: 90, treatments: 2 }, 80).blocks,
    );
    expect(found).toEqual(needed);
  });
  it("SD of a difference as large as the gain, 95 %: 10 pairs, where 9 are not enough", () => {
    const plan = { gainBuPerAc: 1, ...pairs, confidencePct: 95 };
    expect(trialSize(plan, 80).blocks).toBe(10);
    expect(trialPower(plan, 9).powerPct).toBeLessThan(80);
  });
});

test("power of six pairs (gain 8, SD of a difference 9, 95 %) is 0.42202; of four (5, 6, 90 %) 0.36540", () => {
  const six = { gainBuPerAc: 8, stripSdBuPerAc: 9 / Math.SQRT2, confidencePct: 95, treatments: 2 };
  expect(trialPower(six, 6).powerPct).toBeCloseTo(42.202, 3);
  const four = { gainBuPerAc: 5, stripSdBuPerAc: 6 / Math.SQRT2, confidencePct: 90, treatments: 2 };
  expect(trialPower(four, 4).powerPct).toBeCloseTo(36.54, 3);
});

test("means 190, 195, 200 in four blocks, error mean square 64: noncentrality 3.125, power 0.21802", () => {
  expect(blockPower((4 * 50) / 64, 2, 6, 95)).toBeCloseTo(0.21802, 5);
  // The same as a plan: three treatments, the outer two 10 apart, SD 8.
  const plan = { gainBuPerAc: 10, stripSdBuPerAc: 8, confidencePct: 95, treatments: 3 };
  expect(trialPower(plan, 4).powerPct).toBeCloseTo(21.802, 3);
});

test("Student (1908), hours of sleep: t -4.0621, p 0.002833, 95 % range -2.4599 to -0.7001", () => {
  const result = pairedGain({
    treated: [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2],
    check: [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4],
    confidencePct: 95,
  });
  expect(result.gain).toBeCloseTo(-1.58, 10);
  expect(result.t).toBeCloseTo(-4.0621, 4);
  expect(result.df).toBe(9);
  expect(result.chance).toBeCloseTo(0.002833, 6);
  expect(result.low).toBeCloseTo(-2.4599, 4);
  expect(result.high).toBeCloseTo(-0.7001, 4);
});

test("a gain of 5.1 with SE 1.57903 on 5 df pays 18.50 at 4.50 with a chance of 0.72069", () => {
  const measured = { gain: 5.1, standardError: 1.57903, df: 5, low: 1.9182, high: 8.2818 };
  const money = { priceUsdPerBu: 4.5, costUsdPerAc: 18.5 };
  expect(gainPays(measured, money).chance).toBeCloseTo(0.72069, 4);
  expect(gainInWords("The gain", measured, money)).toBe(
    "The gain is 5.1 bu/ac, likely between 1.9 and 8.3; at $4.50/bu and a cost of $18.50/ac the chance that it pays is 72 %.",
  );
  expect(gainInWords("The gain", { ...measured, low: -0.2 }, null)).toBe(
    "The gain is 5.1 bu/ac, likely between −0.2 and 8.3; it may be nothing.",
  );
});

test("3,400 lb of corn from 600 ft × 20 ft at 19.2 %: 0.27548 ac, 210.743 bu/ac", () => {
  const corn = { weightLb: 3400, lengthFt: 600, widthFt: 20, moisturePct: 19.2, marketMoisturePct: 15.5, bushelLb: 56 };
  expect(stripYield(corn).acres).toBeCloseTo(0.27548, 5);
  expect(stripYield(corn).yieldBuPerAc).toBeCloseTo(210.743, 3);
});

test("row forms: corn 110.465 and soybean 100.138 times (100 - M) lb / (ft · in · rows)", () => {
  const row = { weightLb: 900, lengthFt: 500, widthFt: (8 * 30) / 12, moisturePct: 12 };
  const form = (constant: number) => (constant * (100 - 12) * 900) / (500 * 30 * 8);
  const soybean = stripYield({ ...row, marketMoisturePct: 13, bushelLb: 60 }).yieldBuPerAc;
  const corn = stripYield({ ...row, marketMoisturePct: 15.5, bushelLb: 56 }).yieldBuPerAc;
  expect(soybean / form(100.138)).toBeCloseTo(1, 5);
  expect(corn / form(110.465)).toBeCloseTo(1, 5);
});

test("thirteen BCG trials (Colditz and others 1994), log risk ratios: the published pooled values", () => {
  const gains = [
    -0.8893, -1.5854, -1.3481, -1.4416, -0.2175, -0.7861, -1.6209, 0.012, -0.4694, -1.3713, -0.3394, 0.4459, -0.0173,
  ];
  const variances = [0.3256, 0.1946, 0.4154, 0.02, 0.0512, 0.0069, 0.223, 0.004, 0.0564, 0.073, 0.0124, 0.5325, 0.0714];
  const pool = trialPool({ gains, standardErrors: variances.map(Math.sqrt), confidencePct: 95 });
  // The inputs are printed with four decimals, which leaves Q within 0.1 %.
  expect(pool.q / 152.233).toBeCloseTo(1, 2);
  expect(pool.betweenSd ** 2).toBeCloseTo(0.30876, 2);
  expect(pool.gain).toBeCloseTo(-0.71412, 3);
  expect(pool.standardError).toBeCloseTo(0.1807, 3);
  expect(pool.low).toBeCloseTo(-1.1078, 3);
  expect(pool.high).toBeCloseTo(-0.3204, 3);
  expect(pool.realSharePct).toBeCloseTo(92.117, 0);
  expect(pool.newField?.low).toBeCloseTo(-1.9988, 2);
  expect(pool.newField?.high).toBeCloseTo(0.5706, 2);
});

test("Holm on the fifteen chances of Benjamini and Hochberg (1995): 15, 14, 13, 12 … times, and three stay below 0.05", () => {
  const chances = [
    0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.324, 0.4262, 0.5719, 0.6528, 0.759, 1,
  ];
  const adjusted = holmAdjusted(chances);
  [15 * 0.0001, 14 * 0.0004, 13 * 0.0019, 12 * 0.0095].forEach((value, index) =>
    expect(adjusted[index]).toBeCloseTo(value, 12),
  );
  expect(adjusted.filter((chance) => chance < 0.05)).toHaveLength(3);
  expect(adjusted.at(-1)).toBe(1);
});
