import fc from "fast-check";
import { seedCatch } from "../../../src/core/seed/seed-catch";
import { seedPounds } from "../../../src/core/seed/seed-pounds";
import { standEvenness } from "../../../src/core/seed/stand-evenness";
import { standHoop } from "../../../src/core/seed/stand-hoop";
import { standRange } from "../../../src/core/seed/stand-range";

const counts = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 2, maxLength: 20 });
const range = (values: readonly number[], confidencePct: number, withinPct = 5) =>
  standRange({ counts: values, rowWidthIn: 30, feetCounted: null, confidencePct, withinPct });

describe("stands, as laws", () => {
  it("the range holds the mean and grows with confidence", () => {
    fc.assert(
      fc.property(counts, (values) => {
        const narrow = range(values, 80);
        const wide = range(values, 99);
        expect(narrow.lowPerAc).toBeLessThanOrEqual(narrow.meanPerAc);
        expect(wide.highPerAc).toBeGreaterThanOrEqual(narrow.highPerAc);
        expect(wide.lowPerAc).toBeLessThanOrEqual(narrow.lowPerAc);
      }),
    );
  });
  it("no more counts are asked for exactly when the range is near enough already", () => {
    fc.assert(
      fc.property(counts, fc.integer({ min: 1, max: 50 }), (values, withinPct) => {
        const { halfWidthPerAc, meanPerAc, moreCounts } = range(values, 95, withinPct);
        const reachedPct = (100 * halfWidthPerAc) / meanPerAc;
        // At the very edge binary dust decides.
        fc.pre(Math.abs(reachedPct - withinPct) > 1e-9);
        expect(moreCounts === 0).toBe(reachedPct < withinPct);
      }),
    );
  });
  it("twice the hoop holds four times the ground", () => {
    fc.assert(
      fc.property(fc.double({ min: 6, max: 60, noNaN: true }), (diameter) => {
        const [one, two] = [diameter, 2 * diameter].map((hoopDiameterIn) => standHoop({ counts: [7], hoopDiameterIn }));
        expect((one?.plantsPerAc ?? 0) / (two?.plantsPerAc ?? 1)).toBeCloseTo(4, 10);
      }),
    );
  });
  it("the same distance added to every gap leaves the loss as it is", () => {
    const gaps = fc.array(fc.double({ min: 0, max: 60, noNaN: true }), { minLength: 2, maxLength: 40 });
    const loss = (gapsIn: readonly number[]) =>
      standEvenness({ gapsIn, lossPerInch: { buPerAcPerIn: 4 }, toleratedIn: 2, nominalIn: null }).lossBuPerAc;
    fc.assert(
      fc.property(gaps, fc.double({ min: 0, max: 100, noNaN: true }), (gapsIn, more) => {
        expect(loss(gapsIn.map((gap) => gap + more))).toBeCloseTo(loss(gapsIn), 8);
      }),
    );
  });
  it("seeds per pound and the weight of a thousand kernels tell the same", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 400, noNaN: true }), (grams) => {
        const byWeight = seedPounds({ seedsPerAc: 1e6, seedsPerLb: null, thousandKernelG: grams });
        const byCount = seedPounds({ seedsPerAc: 1e6, seedsPerLb: byWeight.seedsPerLb, thousandKernelG: null });
        expect(byCount.thousandKernelG / grams).toBeCloseTo(1, 12);
        expect(byCount.poundsPerAc / byWeight.poundsPerAc).toBeCloseTo(1, 12);
      }),
    );
  });
  it("a drill that lays down a pound on every square foot sows 43,560 lb", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 4, max: 30 }), (rows, rowWidthIn) => {
        const grams = ((rows * rowWidthIn) / 12) * 453.592_37;
        expect(seedCatch({ grams, rows, rowWidthIn, feet: 1 }).poundsPerAc).toBeCloseTo(43_560, 6);
      }),
    );
  });
});
