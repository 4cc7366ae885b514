import { readFileSync } from "node:fs";
import path from "node:path";
import { betaCdf, betaQuantile } from "../../../src/core/statistics/beta";
import { chiSquaredCdf } from "../../../src/core/statistics/chi-squared";
import { fCdf, fQuantile, fUpperTail } from "../../../src/core/statistics/f-distribution";
import { noncentralFCdf } from "../../../src/core/statistics/noncentral-f";
import { noncentralTCdf } from "../../../src/core/statistics/noncentral-t";
import { normalCdf, normalQuantile } from "../../../src/core/statistics/normal";
import { studentTCdf, studentTQuantile } from "../../../src/core/statistics/student-t";
import { studentizedRangeQuantile } from "../../../src/core/statistics/studentized-range";

interface CheckValues {
  readonly madeBy: string;
  readonly rows: readonly (readonly [string, readonly number[], number])[];
}

// JSON.parse knows no types; the script beside the file writes this shape.
const checks = JSON.parse(readFileSync(path.join(__dirname, "distribution-values.json"), "utf8")) as CheckValues;

type Distribution = (...values: [number, number, number, number]) => number;

/** Largest difference allowed: of a chance as it stands, of a quantile relative to its size. */
const distributions: readonly { name: string; of: Distribution; within: number }[] = [
  { name: "normalCdf", of: normalCdf, within: 1e-15 },
  { name: "normalQuantile", of: normalQuantile, within: 1e-14 },
  { name: "studentTCdf", of: studentTCdf, within: 1e-11 },
  { name: "studentTQuantile", of: studentTQuantile, within: 1e-10 },
  { name: "fCdf", of: fCdf, within: 1e-12 },
  { name: "fUpperTail", of: fUpperTail, within: 1e-12 },
  { name: "fQuantile", of: fQuantile, within: 1e-11 },
  { name: "chiSquaredCdf", of: chiSquaredCdf, within: 1e-13 },
  { name: "betaCdf", of: betaCdf, within: 1e-12 },
  { name: "betaQuantile", of: betaQuantile, within: 1e-12 },
  { name: "noncentralTCdf", of: noncentralTCdf, within: 1e-11 },
  { name: "noncentralFCdf", of: noncentralFCdf, within: 1e-12 },
  { name: "studentizedRangeQuantile", of: studentizedRangeQuantile, within: 1e-8 },
];

test.each(distributions)("$name agrees with SciPy at every check value", ({ name, of, within }) => {
  const rows = checks.rows.filter(([fn]) => fn === name);
  expect(rows.length).toBeGreaterThan(15);
  const apart = rows.filter(([, given, expected]) => {
    const [first = 0, second = 0, third = 0, fourth = 0] = given;
    const size = name.endsWith("Quantile") ? Math.max(1, Math.abs(expected)) : 1;
    return !(Math.abs(of(first, second, third, fourth) - expected) <= within * size);
  });
  expect(apart).toEqual([]);
});

test("the studentized range comes back from SciPy's chance of it", () => {
  const rows = checks.rows.filter(
    ([fn, , chance]) => fn === "studentizedRangeCdf" && chance > 1e-6 && chance < 1 - 1e-6,
  );
  expect(rows.length).toBeGreaterThan(200);
  for (const [, [q = 0, groups = 0, df = 0], chance] of rows) {
    expect(studentizedRangeQuantile(chance, groups, df) / q).toBeCloseTo(1, 6);
  }
});

test("far normal tails keep their digits", () => {
  for (const [fn, [z = 0], expected] of checks.rows) {
    if (fn === "normalCdf") expect(normalCdf(z) / expected).toBeCloseTo(1, 12);
  }
});

test("printed table values come out", () => {
  expect(normalCdf(1.96)).toBeCloseTo(0.9750021, 7);
  expect(studentTQuantile(0.975, 9)).toBeCloseTo(2.2621572, 7);
  expect(fQuantile(0.95, 2, 3)).toBeCloseTo(9.5520945, 7);
  expect(chiSquaredCdf(11.0704977, 5)).toBeCloseTo(0.95, 8);
  // NIST/SEMATECH e-Handbook of Statistical Methods, table of the studentized range: q(0.95; 5, 10) = 4.65.
  expect(studentizedRangeQuantile(0.95, 5, 10)).toBeCloseTo(4.654293, 6);
  expect(studentizedRangeQuantile(0.95, 4, 16)).toBeCloseTo(4.046093, 6);
});

test("outside its domain a distribution gives no number", () => {
  const outside = [
    normalQuantile(1.1),
    studentTCdf(1, 0),
    studentTQuantile(-0.1, 5),
    fCdf(1, 0, 4),
    chiSquaredCdf(1, -1),
    betaCdf(0.5, 0, 1),
    noncentralTCdf(1, 0, 1),
    noncentralFCdf(1, 2, 5, -1),
    studentizedRangeQuantile(0.5, 1, 10),
  ];
  expect(outside.every(Number.isNaN)).toBe(true);
});
