import { iowaLimeRows, ontarioLimeRows } from "../../../src/reference/soil/lime-tables";
import { finenessSystems, limeMethods, type FinenessSystem, type LimeMethod } from "../../../src/reference/soil";
import { sources } from "../../../src/reference/sources";

const columnSum = (rows: readonly (readonly number[])[], column: number) =>
  rows.reduce((total, row) => total + (row[column] ?? Number.NaN), 0);

/** Sums added by hand from the printed tables. */
describe("lime tables", () => {
  it("keep the 15 rows and column sums of Ontario", () => {
    expect(ontarioLimeRows).toHaveLength(15);
    expect([1, 2, 3, 4].map((column) => columnSum(ontarioLimeRows, column))).toEqual([140, 95, 65, 36]);
  });

  it("keep the 7 rows and column sums of Iowa", () => {
    expect(iowaLimeRows).toHaveLength(7);
    expect([1, 2].map((column) => columnSum(iowaLimeRows, column))).toEqual([25_500, 41_800]);
  });
});

describe("lime methods", () => {
  const methods: readonly LimeMethod[] = Object.values(limeMethods);

  it("are eight, each with a source and a share of fully effective lime between 0 and 1", () => {
    expect(methods).toHaveLength(8);
    for (const { source, effectiveShare } of methods) {
      expect(sources).toHaveProperty([source]);
      expect(effectiveShare).toBeGreaterThan(0);
      expect(effectiveShare).toBeLessThanOrEqual(1);
    }
  });
});

describe("fineness systems", () => {
  const systems: readonly FinenessSystem[] = Object.values(finenessSystems);

  it("have one reacting share per size class, none less than a coarser one, the finest whole", () => {
    expect(systems).toHaveLength(11);
    for (const { sieves, efficiency, source } of systems) {
      expect(sources).toHaveProperty([source]);
      expect(efficiency).toHaveLength(sieves.length + 1);
      expect([...efficiency].sort((a, b) => a - b)).toEqual(efficiency);
      expect(efficiency[efficiency.length - 1]).toBe(1);
      expect([...sieves].sort((a, b) => a - b)).toEqual(sieves);
    }
  });

  it("keep the sum of their reacting shares, added by hand: 3×1.8 + 2.2 + 1.5 + 1.5 + 1.85 + 1.5 + 1.4 + 1.75 + 2.6", () => {
    const sum = systems.flatMap(({ efficiency }) => efficiency).reduce((total, share) => total + share, 0);
    expect(sum).toBeCloseTo(19.7, 9);
  });
});
