import { certaintyEquivalent, coinFlipPremium } from "../../../src/core/risk/certainty-equivalent";
import { planDominance } from "../../../src/core/risk/plan-dominance";
import { profitDistribution, type Outlook } from "../../../src/core/risk/profit-distribution";
import { riskMeasures } from "../../../src/core/risk/risk-measures";
import { normalCdf } from "../../../src/core/statistics/normal";
import type { RangeShape } from "../../../src/core/statistics/three-point";
import outlooks from "./profit-outlooks.fixture.json";

type Row = (typeof outlooks)[number];

const points = ([low = 0, likely = 0, high = 0]: readonly number[]) => ({ low, likely, high });

function outlookOf(row: Row): Outlook {
  const [costUsdPerAc = 0, otherIncomeUsdPerAc = 0, costUsdPerBu = 0] = row.costs;
  return {
    yieldBuPerAc: points(row.yields),
    priceUsdPerBu: points(row.prices),
    shape: row.shape as RangeShape, // the file holds the two shapes and no other word
    correlation: row.correlation,
    costUsdPerAc,
    otherIncomeUsdPerAc,
    costUsdPerBu,
  };
}

/** Chance, and share of the standard deviation, by which an answer may be off; the working of the cell says 0.003. */
const offBy = { chance: 0.003, ofSd: 0.015 };
/** Price and yield locked together, the likeliest value at an end of its range: a chance of 0.001 is then many dollars. */
const offByLocked = { chance: 0.003, ofSd: 0.06 };
/** The likeliest value well inside, as a person would mostly give it. */
const offByInside = { chance: 0.0002, ofSd: 0.01 };

function allowedFor({ yields, correlation }: Row) {
  if (yields[0] === 120) return offByInside;
  return Math.abs(correlation) === 1 ? offByLocked : offBy;
}

describe("profit against SciPy: quadrature, root finding and a grid of the joint density", () => {
  it("holds 60 outlooks", () => expect(outlooks).toHaveLength(60));
  it.each(outlooks)("$shape $yields bu at $prices, costs $costs, correlation $correlation", (row) => {
    const distribution = profitDistribution(outlookOf(row));
    const allowed = allowedFor(row);
    expect(Math.abs(distribution.cdf(0) - row.loss)).toBeLessThan(allowed.chance);
    const measures = riskMeasures(distribution);
    const off = [
      ...[0.05, 0.1, 0.5, 0.9].map((share, index) => measures.percentile(share) - (row.percentiles[index] ?? 0)),
      measures.mean - row.mean,
      measures.sd - row.sd,
      measures.tailMean(0.05) - row.tailMean,
      measures.shortfall(0) - row.shortfall,
      measures.certaintyEquivalent(0.005) - row.certain,
    ];
    expect(Math.max(...off.map(Math.abs)) / row.sd).toBeLessThan(allowed.ofSd);
  });
});

describe("measures of a normal return with mean 60 and sd 110, by the closed forms", () => {
  const [mean, sd] = [60, 110];
  const measures = () =>
    riskMeasures({
      lowest: mean - 9 * sd,
      highest: mean + 9 * sd,
      cdf: (x) => normalCdf((x - mean) / sd),
    });
  it("mean and sd come back", () => {
    expect(measures().mean).toBeCloseTo(60, 3);
    expect(measures().sd).toBeCloseTo(110, 2);
  });
  it("short of 0: (0 - 60) Φ(d) + 110 φ(d) = 20.2546 with d = -60/110, and semideviation 48.2353", () => {
    expect(measures().shortfall(0)).toBeCloseTo(20.2546, 3);
    expect(measures().semideviation(0)).toBeCloseTo(48.2353, 3);
  });
  it("worst 5 %: 60 - 110 × 1.6448536 = -120.934 and mean 60 - 110 φ(z) / 0.05 = -166.898", () => {
    expect(measures().percentile(0.05)).toBeCloseTo(-120.934, 3);
    expect(measures().tailMean(0.05)).toBeCloseTo(-166.898, 2);
  });
  it("certain worth at 0.005: 60 - 0.005 × 110² / 2 = 29.75", () => {
    expect(measures().certaintyEquivalent(0.005)).toBeCloseTo(29.75, 2);
  });
});

describe("certain worth of -80, 60 or 210 with chances 3, 5 and 2 in 10, risk aversion 0.005", () => {
  it("is -ln(0.3 e^0.4 + 0.5 e^-0.3 + 0.2 e^-1.05) / 0.005 = 23.7693, mean 48", () => {
    const worth = certaintyEquivalent({ outcomesUsd: [-80, 60, 210], chances: [0.3, 0.5, 0.2], riskAversion: 0.005 });
    expect(worth.meanUsd).toBeCloseTo(48, 10);
    expect(worth.certainUsd).toBeCloseTo(23.7693, 4);
  });
});

describe("a coin flip for plus or minus an amount (Babcock, Choi and Feinerman)", () => {
  it("costs a person what the same two outcomes cost: ln(cosh(0.005 × 100)) / 0.005", () => {
    const worth = certaintyEquivalent({ outcomesUsd: [-100, 100], chances: null, riskAversion: 0.005 });
    expect(coinFlipPremium(0.005, 100)).toBeCloseTo(worth.premiumUsd, 9);
  });
});

describe("plan A brings 40 or 60, plan B 20 or 80", () => {
  it("has no order for everyone; A for every cautious person", () => {
    expect(planDominance({ first: [40, 60], second: [20, 80] })).toMatchObject({
      everyone: "neither",
      cautious: "first",
    });
  });
});
