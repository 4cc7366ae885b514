import fc from "fast-check";
import { equivalentDepth } from "../../../src/core/drainage/equivalent-depth";
import { leastGrade, longestLateral, pipeCapacity, pipeSize } from "../../../src/core/drainage/pipe-capacity";
import { tileCost, tileLength } from "../../../src/core/drainage/tile-cost";
import { drainRate, tileSpacing, type DrainSite } from "../../../src/core/drainage/tile-spacing";
import { stockSizesIn } from "../../../src/reference/drainage/pipes";

/** Field soils and depths: inside the ranges where every spacing lies between 3 and 5,000 ft. */
const site: fc.Arbitrary<DrainSite> = fc
  .record({
    drainDepthFt: fc.double({ min: 2.5, max: 6, noNaN: true }),
    over: fc.double({ min: 1, max: 2.4, noNaN: true }),
    below: fc.double({ min: 0.5, max: 30, noNaN: true }),
    ftPerDay: fc.double({ min: 1, max: 20, noNaN: true }),
    radiusIn: fc.double({ min: 0.2, max: 4, noNaN: true }),
  })
  .map(({ drainDepthFt, over, below, ftPerDay, radiusIn }) => ({
    drainDepthFt,
    midwayTableFt: drainDepthFt - over,
    depthToBarrierFt: drainDepthFt + below,
    conductivity: { ftPerDay },
    conductivityBelow: null,
    radiusIn,
  }));
const rate = fc.double({ min: 0.1, max: 1, noNaN: true });
const more = fc.double({ min: 1.01, max: 3, noNaN: true });
const grade = fc.double({ min: 0.02, max: 3, noNaN: true });
const diameter = fc.integer({ min: 3, max: 36 });
const wall = { manningN: 0.015 };
const spacingOf = (of: DrainSite, inPerDay: number) => tileSpacing(of, inPerDay).spacingFt;

describe("tile spacing, as laws", () => {
  it("a spacing and its drain rate lead back to each other", () => {
    fc.assert(
      fc.property(site, rate, (of, inPerDay) => {
        expect(drainRate(of, spacingOf(of, inPerDay)).rateInPerDay / inPerDay).toBeCloseTo(1, 8);
      }),
    );
  });
  it("falls as more water has to go, and by at least its square root", () => {
    fc.assert(
      fc.property(site, rate, more, (of, inPerDay, times) => {
        fc.pre(inPerDay * times <= 1.5);
        const before = spacingOf(of, inPerDay);
        expect(spacingOf(of, inPerDay * times)).toBeLessThan(before / Math.sqrt(times) + 1e-6);
      }),
    );
  });
  it("grows with the depth to the barrier, with faster soil and with a wider pipe", () => {
    fc.assert(
      fc.property(site, rate, more, (of, inPerDay, times) => {
        const before = spacingOf(of, inPerDay);
        const deeper = { ...of, depthToBarrierFt: of.depthToBarrierFt * times };
        const faster = {
          ...of,
          conductivity: { ftPerDay: 0.3 * times + ("ftPerDay" in of.conductivity ? of.conductivity.ftPerDay : 0) },
        };
        const wider = { ...of, radiusIn: (of.radiusIn ?? 2) * times };
        expect(spacingOf(deeper, inPerDay)).toBeGreaterThanOrEqual(before - 1e-6);
        expect(spacingOf(faster, inPerDay)).toBeGreaterThan(before);
        expect(spacingOf(wider, inPerDay)).toBeGreaterThanOrEqual(before - 1e-6);
      }),
    );
  });
  it("uses an equivalent depth no deeper than the barrier", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.double({ min: 5, max: 500, noNaN: true }),
        (barrierBelowDrain, spacing) => {
          const depth = equivalentDepth({ barrierBelowDrain, spacing, radius: 0.15 });
          expect(depth).toBeGreaterThan(0);
          expect(depth).toBeLessThanOrEqual(barrierBelowDrain);
        },
      ),
    );
  });
});

describe("drain pipe, as laws", () => {
  it("capacity rises with grade by its square root and with diameter by the power 8/3", () => {
    fc.assert(
      fc.property(diameter, grade, rate, more, (diameterIn, gradePct, rateInPerDay, times) => {
        const acres = (d: number, s: number) => pipeCapacity({ diameterIn: d, gradePct: s, rateInPerDay, wall }).acres;
        const before = acres(diameterIn, gradePct);
        expect(acres(diameterIn, gradePct * times) / before).toBeCloseTo(Math.sqrt(times), 8);
        expect(acres(diameterIn * 2, gradePct) / before).toBeCloseTo(2 ** (8 / 3), 8);
      }),
    );
  });
  it("capacity and rate trade one for one", () => {
    fc.assert(
      fc.property(diameter, grade, rate, (diameterIn, gradePct, rateInPerDay) => {
        const acres = (inPerDay: number) =>
          pipeCapacity({ diameterIn, gradePct, rateInPerDay: inPerDay, wall }).acres * inPerDay;
        expect(acres(rateInPerDay * 2) / acres(rateInPerDay)).toBeCloseTo(1, 10);
      }),
    );
  });
  it("the stock size does, and the next smaller one does not", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 300, noNaN: true }), grade, rate, (acres, gradePct, rateInPerDay) => {
        const need = { gradePct, rateInPerDay, wall: { pipe: "singleWall" } as const };
        fc.pre(pipeCapacity({ ...need, diameterIn: 36 }).acres >= acres);
        const { sizeIn, exactIn } = pipeSize({ ...need, acres });
        expect(pipeCapacity({ ...need, diameterIn: sizeIn }).acres).toBeGreaterThanOrEqual(acres);
        expect(exactIn).toBeLessThanOrEqual(sizeIn * (1 + 1e-12));
        const smaller = stockSizesIn.filter((size) => size < sizeIn).pop();
        if (smaller !== undefined) {
          expect(pipeCapacity({ ...need, diameterIn: smaller }).acres).toBeLessThan(acres);
        }
      }),
    );
  });
  it("at its least grade a pipe flows at the velocity that keeps it clean", () => {
    fc.assert(
      fc.property(diameter, fc.constantFrom("none" as const, "silt" as const), (diameterIn, sediment) => {
        const { gradePct } = leastGrade(diameterIn, sediment, wall);
        fc.pre(gradePct >= 0.01);
        const { velocityFtPerS } = pipeCapacity({ diameterIn, gradePct, rateInPerDay: 0.375, wall });
        expect(velocityFtPerS).toBeCloseTo(sediment === "none" ? 0.5 : 1.4, 10);
      }),
    );
  });
  it("the longest lateral drains just the acres of its pipe", () => {
    fc.assert(
      fc.property(
        diameter,
        grade,
        rate,
        fc.integer({ min: 20, max: 200 }),
        (diameterIn, gradePct, rateInPerDay, feet) => {
          const { lengthFt, capacity } = longestLateral({ diameterIn, gradePct, rateInPerDay, wall }, feet);
          expect((lengthFt * feet) / 43_560 / capacity.acres).toBeCloseTo(1, 10);
        },
      ),
    );
  });
});

describe("tile on an acre, as laws", () => {
  it("feet and spacing make an acre", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 500 }), (feet) => expect(tileLength(feet) * feet).toBeCloseTo(43_560, 6)),
    );
  });
  it("the parts add up, and the job is the acres' worth", () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 200 }), fc.integer({ min: 1, max: 500 }), (spacingFt, acres) => {
        const cost = tileCost({
          spacingFt,
          lateralUsdPerFt: 1.1,
          mainFt: 1000,
          mainUsdPerFt: 5,
          fixedUsd: 3000,
          acres,
        });
        expect(cost.lateralUsdPerAc + cost.mainUsdPerAc + cost.fixedUsdPerAc).toBeCloseTo(cost.costUsdPerAc, 8);
        expect(cost.jobUsd).toBeCloseTo(cost.costUsdPerAc * acres, 6);
      }),
    );
  });
});
