import { conductivities } from "../../../src/reference/drainage/conductivity";
import {
  leastVelocities,
  mostVelocities,
  roughnesses,
  stockSizesIn,
  tubeRadii,
} from "../../../src/reference/drainage/pipes";
import {
  drainageLevels,
  drainCoefficients,
  illinoisCoefficient,
  soilSpacings,
} from "../../../src/reference/drainage/rules";
import { sources } from "../../../src/reference/sources";

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const all = [
  conductivities,
  leastVelocities,
  mostVelocities,
  roughnesses,
  tubeRadii,
  drainCoefficients,
  illinoisCoefficient,
  soilSpacings,
];

describe("drainage tables", () => {
  it.each(all)("name a mark and a known source on every row: $title", ({ rows }) => {
    for (const row of rows) {
      expect(["V", "M"]).toContain(row.mark);
      expect(Object.keys(sources)).toContain(row.source);
    }
  });
  it("freeze the conductivities: 11 textures that add up to 395.78 millionths of a meter a second", () => {
    // 176 + 156 + 34.7 + 7.2 + 6.95 + 6.3 + 1.7 + 2.45 + 2.17 + 1.03 + 1.28
    expect(conductivities.rows).toHaveLength(11);
    expect(sum(conductivities.rows.map((row) => row.metersPerSecond)) * 1e6).toBeCloseTo(395.78, 6);
  });
  it("freeze the coefficients: 12 rows, low ends 10.125, high ends 16.25", () => {
    expect(drainCoefficients.rows).toHaveLength(12);
    expect(sum(drainCoefficients.rows.map((row) => row.lowInPerDay))).toBe(10.125);
    expect(sum(drainCoefficients.rows.map((row) => row.highInPerDay))).toBe(16.25);
  });
  it("freeze the spacings by soil, wider for poorer drainage and for lighter soil", () => {
    expect(soilSpacings.rows.map(({ fair, good, excellent }) => [fair, good, excellent])).toEqual([
      [70, 50, 35],
      [95, 65, 45],
      [130, 90, 60],
      [200, 140, 95],
      [300, 210, 150],
    ]);
    expect(Object.values(drainageLevels).map(({ inPerDay }) => inPerDay)).toEqual([0.25, 0.375, 0.5]);
  });
  it("freeze roughness, velocities, radii and stock sizes", () => {
    expect(roughnesses.rows.map((row) => row.manningN)).toEqual([0.015, 0.017, 0.02, 0.012, 0.013]);
    expect(leastVelocities.rows.map((row) => row.feetPerSecond)).toEqual([0.5, 1.4]);
    expect(mostVelocities.rows.map((row) => row.feetPerSecond)).toEqual([3.5, 5, 6, 7, 9]);
    expect(tubeRadii.rows.map((row) => row.radiusIn)).toEqual([2, 0.2]);
    expect(stockSizesIn).toEqual([3, 4, 5, 6, 8, 10, 12, 15, 18, 24, 30, 36]);
  });
});
