import { riskMeasures } from "../../../src/core/risk/risk-measures";

// Every return from $0 to $100 equally likely: each measure is a short integral by hand.
const even = riskMeasures({ lowest: 0, highest: 100, cdf: (x) => Math.min(1, Math.max(0, x / 100)) });

it("measures an even spread as calculus does", () => {
  expect(even.mean).toBeCloseTo(50, 9);
  expect(even.sd).toBeCloseTo(100 / Math.sqrt(12), 9);
  expect(even.percentile(0.3)).toBeCloseTo(30, 6);
  // The worst fifth runs from 0 to 20.
  expect(even.tailMean(0.2)).toBeCloseTo(10, 6);
});

it("counts what years fall short of a target inside, below and above all that may come", () => {
  // ∫ (50 − x) / 100 from 0 to 50
  expect(even.shortfall(50)).toBeCloseTo(12.5, 9);
  expect(even.shortfall(-10)).toBe(0);
  // Above the best year every year falls short, by 120 less the mean.
  expect(even.shortfall(120)).toBeCloseTo(70, 9);
  expect(even.semideviation(100)).toBeCloseTo(Math.sqrt(10_000 / 3), 9);
  expect(even.semideviation(120)).toBeCloseTo(Math.sqrt((120 ** 3 - 20 ** 3) / 300), 9);
});

it("takes a certain return for it that falls with risk aversion", () => {
  expect(even.certaintyEquivalent(0)).toBeCloseTo(50, 9);
  const r = 0.02;
  // The mean of e^(−r x) is (1 − e^(−100 r)) / (100 r).
  expect(even.certaintyEquivalent(r)).toBeCloseTo(-Math.log((1 - Math.exp(-100 * r)) / (100 * r)) / r, 9);
});
