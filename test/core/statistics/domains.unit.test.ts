import { betaCdf, betaQuantile } from "../../../src/core/statistics/beta";
import { chiSquaredCdf } from "../../../src/core/statistics/chi-squared";
import { fCdf, fQuantile, fUpperTail } from "../../../src/core/statistics/f-distribution";
import { noncentralFCdf } from "../../../src/core/statistics/noncentral-f";
import { noncentralTCdf } from "../../../src/core/statistics/noncentral-t";
import { normalCdf, normalQuantile } from "../../../src/core/statistics/normal";
import { studentTCdf, studentTQuantile } from "../../../src/core/statistics/student-t";
import { studentizedRangeQuantile } from "../../../src/core/statistics/studentized-range";
import { triangular } from "../../../src/core/statistics/three-point";

/** Each quantile with its other arguments right, and each of those wrong in turn. */
const quantiles: readonly (readonly [name: string, at: (p: number) => number, wrong: readonly number[]])[] = [
  ["normal", normalQuantile, []],
  ["t", (p) => studentTQuantile(p, 7), [studentTQuantile(0.3, 0), studentTQuantile(0.3, -1)]],
  ["F", (p) => fQuantile(p, 3, 9), [fQuantile(0.3, 0, 9), fQuantile(0.3, 3, 0), fQuantile(0.3, -1, 9)]],
  ["beta", (p) => betaQuantile(p, 2, 5), [betaQuantile(0.3, 0, 5), betaQuantile(0.3, 2, 0), betaQuantile(0.3, -1, 5)]],
  [
    "studentized range",
    (p) => studentizedRangeQuantile(p, 4, 12),
    [studentizedRangeQuantile(0.3, 1, 12), studentizedRangeQuantile(0.3, 4, 0)],
  ],
];

describe.each(quantiles)("the quantile of %s", (_name, at, wrong) => {
  it("is no number outside chances of 0 to 1 and where the distribution is none", () => {
    for (const value of [at(-0.01), at(1.01), at(Number.NaN), ...wrong]) expect(value).toBeNaN();
  });
});

it("has the ends of each distribution at chances of 0 and 1", () => {
  const ends = (at: (p: number) => number) => [at(0), at(1)];
  const ofAll = quantiles.map(([name, at]) => [name, ends(at)]);
  expect(ofAll).toEqual([
    ["normal", [-Infinity, Infinity]],
    ["t", [-Infinity, Infinity]],
    ["F", [0, Infinity]],
    ["beta", [0, 1]],
    ["studentized range", [0, Infinity]],
  ]);
  // Half of t lies on each side, to the last digit.
  expect(studentTQuantile(0.5, 7)).toBe(0);
});

it("gives no chance where the distribution is none or the value is no number", () => {
  const none = [
    studentTCdf(1, 0),
    studentTCdf(1, -3),
    studentTCdf(Number.NaN, 5),
    fCdf(1, 0, 5),
    fCdf(1, 5, 0),
    fCdf(Number.NaN, 5, 5),
    chiSquaredCdf(1, 0),
    chiSquaredCdf(Number.NaN, 3),
    betaCdf(0.5, 0, 1),
    betaCdf(0.5, 1, 0),
    betaCdf(Number.NaN, 1, 1),
    noncentralTCdf(1, 0, 1),
    noncentralTCdf(Number.NaN, 5, 1),
    noncentralTCdf(1, 5, Number.NaN),
    noncentralFCdf(1, 0, 5, 1),
    noncentralFCdf(1, 5, 0, 1),
    noncentralFCdf(1, 5, 5, -1),
    noncentralFCdf(Number.NaN, 5, 5, 1),
  ];
  for (const chance of none) expect(chance).toBeNaN();
});

it("has nothing below the lower end and everything above the upper", () => {
  const below = [fCdf(0, 3, 9), fCdf(-1, 3, 9), chiSquaredCdf(0, 4), chiSquaredCdf(-2, 4), betaCdf(0, 2, 5)];
  const alsoBelow = [betaCdf(-1, 2, 5), noncentralFCdf(0, 3, 9, 2), noncentralFCdf(-1, 3, 9, 2)];
  expect([...below, ...alsoBelow, normalCdf(-Infinity), studentTCdf(-Infinity, 7)]).toEqual(Array(10).fill(0));
  const above = [chiSquaredCdf(Infinity, 4), betaCdf(1, 2, 5), betaCdf(2, 2, 5), normalCdf(Infinity)];
  expect([...above, studentTCdf(Infinity, 7), fUpperTail(0, 3, 9), fUpperTail(-1, 3, 9)]).toEqual(Array(7).fill(1));
});

it("crosses the middle as symmetry asks", () => {
  expect(studentTCdf(0, 7)).toBe(0.5);
  // A t of 0 is passed when the shifted normal is at most 0: Φ(−1.5).
  expect(noncentralTCdf(0, 7, 1.5)).toBe(normalCdf(-1.5));
  expect(noncentralTCdf(-2, 7, -1.5)).toBeCloseTo(1 - noncentralTCdf(2, 7, 1.5), 12);
});

it("has no range where the likeliest value lies outside", () => {
  for (const points of [
    { low: 2, likely: 1, high: 3 },
    { low: 1, likely: 4, high: 3 },
  ]) {
    const spread = triangular(points);
    for (const value of [spread.mean, spread.sd, spread.cdf(2), spread.quantile(0.5)]) expect(value).toBeNaN();
  }
});
