import { drainFlow, spacingFor } from "../../../src/core/drainage/drain-flow";
import { drainRate, tileSpacing, type DrainSite } from "../../../src/core/drainage/tile-spacing";
import { faultOf } from "../fault-of";

const loam: DrainSite = {
  drainDepthFt: 4,
  midwayTableFt: 1.5,
  depthToBarrierFt: 10,
  conductivity: { ftPerDay: 1.97 },
  conductivityBelow: null,
  radiusIn: 2,
};

/** Worked by another program (Python) from Hooghoudt's equation with the equivalent depth in closed form. */
describe("tile spacing, worked cases", () => {
  it("3/8 in a day in loam, drains at 4 ft, table at 1.5 ft, barrier at 10 ft: 82.37 ft, equivalent depth 4.131 ft", () => {
    const result = tileSpacing(loam, 0.375);
    expect(result.spacingFt).toBeCloseTo(82.37, 2);
    expect(result.equivalentDepthFt).toBeCloseTo(4.131, 3);
    expect([result.tableOverDrainFt, result.barrierBelowDrainFt]).toEqual([2.5, 6]);
  });
  it("with an effective radius of 0.0167 ft: 73.37 ft", () => {
    expect(tileSpacing({ ...loam, radiusIn: 0.0167 * 12 }, 0.375).spacingFt).toBeCloseTo(73.37, 2);
    expect(tileSpacing(loam, 0.375).entryLossFt).toBeCloseTo(73.37, 1);
  });
  it("at 60 ft: 0.6503 in/day, equivalent depth 3.7013 ft", () => {
    const result = drainRate(loam, 60);
    expect(result.rateInPerDay).toBeCloseTo(0.6503, 4);
    expect(result.equivalentDepthFt).toBeCloseTo(3.7013, 4);
  });
  it("in meters, 7 mm a day, table 0.6 m over the drain, barrier 3 m below, 0.5 m/day, radius 0.05 m: 25.467 m", () => {
    const soil = {
      tableOverDrain: 0.6,
      barrierBelowDrain: 3,
      conductivityAbove: 0.5,
      conductivityBelow: 0.5,
      radius: 0.05,
    };
    const spacing = spacingFor(soil, 0.007, 1, 1000);
    expect(spacing).toBeCloseTo(25.467, 3);
    expect(drainFlow(soil, spacing).equivalentDepth).toBeCloseTo(1.5917, 4);
  });
  it("on the barrier itself is 2 h sqrt(K / q): 2 × 2.5 × sqrt(2 / 0.04) = 35.355 ft at 0.48 in/day", () => {
    const onBarrier = { ...loam, depthToBarrierFt: 4, conductivity: { ftPerDay: 2 } };
    expect(tileSpacing(onBarrier, 0.48).spacingFt).toBeCloseTo(35.3553, 4);
  });
  it("reads a texture: loam is 6.95 millionths of a meter a second, 1.970 ft/day; silt loam 2.041, clay loam 0.694", () => {
    const of = (texture: "loam" | "siltLoam" | "clayLoam") =>
      tileSpacing({ ...loam, conductivity: { texture } }, 0.375).conductivityFtPerDay;
    expect(of("loam")).toBeCloseTo(1.97, 3);
    expect(of("siltLoam")).toBeCloseTo(2.041, 3);
    expect(of("clayLoam")).toBeCloseTo(0.694, 3); // within half of the last digit
  });
});

describe("what stands beside a spacing", () => {
  it("half as fast a soil drains as at twice the rate, twice as fast a soil as at half of it", () => {
    const result = tileSpacing(loam, 0.375);
    expect(result.halfConductivityFt).toBeCloseTo(tileSpacing(loam, 0.75).spacingFt, 6);
    expect(result.twiceConductivityFt).toBeCloseTo(tileSpacing(loam, 0.1875).spacingFt, 6);
  });
  it("is left out where it would lie outside 3 to 5,000 ft", () => {
    // On the barrier, 2 h √(K / q) is exact: 2 × 2.5 × √(K / 0.5) with K 500,000 times q is 3,536 ft.
    const fast = { ...loam, depthToBarrierFt: 4, conductivity: { ftPerDay: 416.666_667 } };
    const result = tileSpacing(fast, 0.01);
    expect(result.spacingFt).toBeCloseTo(5 * Math.sqrt((416.666_667 * 12) / 0.01), 3);
    expect(result.twiceConductivityFt).toBeNull();
    expect(result.halfConductivityFt).toBeCloseTo(result.spacingFt / Math.SQRT2, 3);
  });
  it("cites the textures and the radius it took itself, and no figures of the person", () => {
    const radius = expect.objectContaining({ key: "outside" });
    const cited = (site: Partial<DrainSite>) => drainRate({ ...loam, ...site }, 60).cited;
    expect(cited({})).toEqual([]);
    expect(cited({ radiusIn: null })).toEqual([radius]);
    const textures = cited({
      conductivity: { texture: "loam" },
      conductivityBelow: { texture: "clay" },
      radiusIn: null,
    });
    expect(textures).toEqual([
      expect.objectContaining({ texture: "loam" }),
      expect.objectContaining({ texture: "clay" }),
      radius,
    ]);
  });
});

describe("tile spacing that cannot be", () => {
  it.each([
    ["midwayTable", { ...loam, midwayTableFt: 4 }],
    ["depthToBarrier", { ...loam, depthToBarrierFt: 3.9 }],
  ])("refuses a %s on the wrong side of the drain", (argument, site) => {
    expect(faultOf(() => tileSpacing(site, 0.375))).toMatchObject({ kind: "refused", argument });
    expect(faultOf(() => drainRate(site, 60))).toMatchObject({ kind: "refused", argument });
  });
  it("has no solution where drains would lie nearer than 3 ft", () => {
    const tight = { ...loam, midwayTableFt: 3.9, conductivity: { ftPerDay: 0.01 } };
    expect(faultOf(() => tileSpacing(tight, 4))).toMatchObject({ kind: "noSolution" });
  });
  it("has no solution past 5,000 ft, nor where pipes of 18 in radius lie 3 ft apart", () => {
    const fast = { ...loam, conductivity: { ftPerDay: 500 } };
    expect(faultOf(() => tileSpacing(fast, 0.01))).toMatchObject({ kind: "noSolution" });
    expect(faultOf(() => drainRate({ ...loam, radiusIn: 18 }, 3))).toMatchObject({ kind: "noSolution" });
  });
  it.each([0, -1, Number.NaN])("refuses a drain rate of %p", (rate) => {
    expect(faultOf(() => tileSpacing(loam, rate))).toMatchObject({ kind: "outOfRange", argument: "drainRate" });
  });
});
