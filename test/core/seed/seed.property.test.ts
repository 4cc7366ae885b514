import fc from "fast-check";
import { rowLength } from "../../../src/core/seed/row-length";
import { seedCost } from "../../../src/core/seed/seed-cost";
import { seedRate } from "../../../src/core/seed/seed-rate";
import { seedSpacing } from "../../../src/core/seed/seed-spacing";
import { standCount } from "../../../src/core/seed/stand-count";
import { unitsToBuy } from "../../../src/core/seed/units-to-buy";

/** From sugar beet to thickly drilled wheat. */
const seedsPerAc = fc.double({ min: 5000, max: 2_000_000, noNaN: true });
const rowWidthIn = fc.double({ min: 4, max: 60, noNaN: true });
const pct = fc.double({ min: 1, max: 100, noNaN: true });
const seedsPerUnit = fc.integer({ min: 1000, max: 1_000_000 });
const close = (got: number, wanted: number) => expect(got / wanted - 1).toBeCloseTo(0, 11);

describe("seeding, as laws", () => {
  it("spacing times seeds per foot is a foot", () => {
    fc.assert(
      fc.property(seedsPerAc, rowWidthIn, (rate, width) => {
        const { spacingIn, seedsPerFoot } = seedSpacing({ seedsPerAc: rate, rowWidthIn: width });
        close(spacingIn * seedsPerFoot, 12);
      }),
    );
  });
  it("one seed's spacing times the row width is its share of 6,272,640 square inches", () => {
    fc.assert(
      fc.property(seedsPerAc, rowWidthIn, (rate, width) => {
        close(seedSpacing({ seedsPerAc: rate, rowWidthIn: width }).spacingIn * width * rate, 6_272_640);
      }),
    );
  });
  it("the rate less both losses is the stand", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1000, max: 2_000_000 }), pct, pct, (stand, germinationPct, fieldSurvivalPct) => {
        const rate = seedRate({ targetStandPerAc: stand, germinationPct, fieldSurvivalPct });
        close(rate.seedsPerAc - rate.deadSeedsPerAc - rate.lostSeedlingsPerAc, stand);
        expect(rate.seedsPerAc).toBeGreaterThanOrEqual(stand);
      }),
    );
  });
  it("the units bought are enough, and one fewer is not", () => {
    fc.assert(
      fc.property(seedsPerAc, fc.double({ min: 0.1, max: 5000, noNaN: true }), seedsPerUnit, (rate, acres, size) => {
        const { units, exactUnits } = unitsToBuy({ seedsPerAc: rate, acres, unitSize: { seedsPerUnit: size } });
        expect(Number.isInteger(units)).toBe(true);
        expect(units).toBeGreaterThanOrEqual(exactUnits * (1 - 1e-14));
        expect(units - 1).toBeLessThan(exactUnits);
      }),
    );
  });
  it("cost is seed and treatment, and grows in step with the rate", () => {
    fc.assert(
      fc.property(
        seedsPerAc,
        fc.integer({ min: 1, max: 500 }),
        fc.integer({ min: 0, max: 50 }),
        seedsPerUnit,
        (rate, price, treatment, size) => {
          const at = (seeds: number) =>
            seedCost({
              seedsPerAc: seeds,
              unitPriceUsd: price,
              unitSize: { seedsPerUnit: size },
              treatmentUsdPerUnit: treatment,
            });
          close(at(rate).costUsdPerAc, at(rate).seedUsdPerAc + at(rate).treatmentUsdPerAc);
          close(at(2 * rate).costUsdPerAc, 2 * at(rate).costUsdPerAc);
        },
      ),
    );
  });
  it("a count over the measured length gives back the stand that stood there", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 500 }),
        rowWidthIn,
        fc.constantFrom(0.001, 0.0001, 0.01),
        (count, width, fraction) => {
          const { feet } = rowLength({ rowWidthIn: width, fractionOfAcre: fraction });
          close(standCount({ counts: [count], rowWidthIn: width, feetCounted: feet }).plantsPerAc, count / fraction);
        },
      ),
    );
  });
  it("the mean stand lies between the thinnest and the thickest place, in any order", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 1, maxLength: 30 }),
        rowWidthIn,
        (counts, width) => {
          const stand = standCount({ counts, rowWidthIn: width, feetCounted: 10 });
          const turned = standCount({ counts: [...counts].reverse(), rowWidthIn: width, feetCounted: 10 });
          expect(stand.plantsPerAc).toBeGreaterThanOrEqual(stand.lowestPerAc * (1 - 1e-12));
          expect(stand.plantsPerAc).toBeLessThanOrEqual(stand.highestPerAc * (1 + 1e-12));
          expect(turned.plantsPerAc).toBeCloseTo(stand.plantsPerAc, 6);
        },
      ),
    );
  });
});
