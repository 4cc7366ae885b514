import { pert, triangular } from "../../../src/core/statistics/three-point";

/** Worked by hand from the closed forms, 120, 190, 230. */
const points = { low: 120, likely: 190, high: 230 };

describe("triangular(120, 190, 230)", () => {
  const spread = () => triangular(points);
  it("has the mean (120 + 190 + 230) / 3 = 180", () => {
    expect(spread().mean).toBeCloseTo(180, 12);
  });
  it("has the sd √((120² + 190² + 230² - 120·190 - 120·230 - 190·230) / 18) = √(9300 / 18) = 22.7303", () => {
    expect(spread().sd).toBeCloseTo(22.7303, 4);
  });
  it("has 10 % below 120 + √(0.10 · 110 · 70) = 120 + √770 = 147.7489", () => {
    expect(spread().quantile(0.1)).toBeCloseTo(147.7489, 4);
  });
  it("has half below 120 + √(0.50 · 110 · 70) = 182.0484 and 90 % below 230 - √(0.10 · 110 · 40) = 209.0238", () => {
    expect(spread().quantile(0.5)).toBeCloseTo(182.0484, 4);
    expect(spread().quantile(0.9)).toBeCloseTo(209.0238, 4);
  });
  it("lies below the likeliest with chance 70 / 110, and inside its limits", () => {
    expect(spread().cdf(190)).toBeCloseTo(70 / 110, 12);
    expect([spread().cdf(119), spread().cdf(120), spread().cdf(230), spread().cdf(240)]).toEqual([0, 0, 1, 1]);
  });
});

describe("pert(120, 190, 230)", () => {
  const spread = () => pert(points);
  it("has the mean (120 + 4 · 190 + 230) / 6 = 185 and the sd √(65 · 45 / 7) = 20.4416", () => {
    expect(spread().mean).toBeCloseTo(185, 12);
    expect(spread().sd).toBeCloseTo(20.4416, 4);
  });
  it("has the 10 % and 90 % points of a beta curve with 3.545455 and 2.454545 (another program's)", () => {
    expect(spread().quantile(0.1)).toBeCloseTo(156.803, 4);
    expect(spread().quantile(0.9)).toBeCloseTo(211.4219, 4);
  });
  it("with the likeliest at the low end is 1 - (1 - t)^5: P(x ≤ 2 of 0 to 10) = 1 - 0.8^5 = 0.67232", () => {
    expect(pert({ low: 0, likely: 0, high: 10 }).cdf(2)).toBeCloseTo(0.67232, 12);
  });
  it("lies inside its limits, is certain when the three are equal, and is NaN out of order", () => {
    expect([spread().cdf(119), spread().cdf(231), spread().quantile(0), spread().quantile(1)]).toEqual([
      0, 1, 120, 230,
    ]);
    const certain = pert({ low: 6, likely: 6, high: 6 });
    expect([certain.mean, certain.sd, certain.cdf(6), certain.cdf(5)]).toEqual([6, 0, 1, 0]);
    expect(pert({ low: 6, likely: 2, high: 8 }).mean).toBeNaN();
  });
});

describe("three points at the edge", () => {
  it("a likeliest value at either end leaves one slope", () => {
    const falling = triangular({ low: 0, likely: 0, high: 10 });
    expect(falling.cdf(0)).toBe(0);
    expect(falling.cdf(5)).toBeCloseTo(0.75, 12);
    expect(falling.quantile(0)).toBe(0);
    const rising = triangular({ low: 0, likely: 10, high: 10 });
    expect(rising.cdf(5)).toBeCloseTo(0.25, 12);
    expect(rising.quantile(1)).toBe(10);
  });
  it("three equal values are a certainty", () => {
    const certain = triangular({ low: 6, likely: 6, high: 6 });
    expect([certain.mean, certain.sd, certain.cdf(5.99), certain.cdf(6), certain.quantile(0.3)]).toEqual([
      6, 0, 0, 1, 6,
    ]);
  });
  it("points out of order and shares outside 0 to 1 give NaN, not a number", () => {
    const crossed = triangular({ low: 8, likely: 5, high: 10 });
    expect([crossed.mean, crossed.sd, crossed.cdf(7), crossed.quantile(0.5)]).toEqual([NaN, NaN, NaN, NaN]);
    expect(triangular(points).quantile(1.2)).toBeNaN();
  });
});
