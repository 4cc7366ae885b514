import fc from "fast-check";
import { sampleCost } from "../../../src/core/soil/sample-cost";

const tenths = (min: number, max: number) => fc.integer({ min, max }).map((value) => value / 10);
const sampling = fc.record({
  acres: tenths(1, 20_000),
  acresPerSample: tenths(1, 2000),
  costUsdPerSample: tenths(0, 1000),
  collectingUsdPerAc: tenths(0, 300),
  years: fc.integer({ min: 1, max: 10 }),
});
const costOf = (input: Parameters<typeof sampleCost>[0]) => sampleCost(input).costUsdPerAcYear;

describe("the cost of sampling, as laws", () => {
  it("more acres to a sample never cost more", () => {
    fc.assert(
      fc.property(sampling, tenths(0, 2000), (input, more) => {
        const coarser = { ...input, acresPerSample: input.acresPerSample + more };
        expect(costOf(coarser)).toBeLessThanOrEqual(costOf(input));
      }),
    );
  });
  it("twice the years cost half a year", () => {
    fc.assert(
      fc.property(sampling, (input) => {
        expect(costOf({ ...input, years: input.years * 2 })).toBeCloseTo(costOf(input) / 2, 9);
      }),
    );
  });
  it("a field twice as large in samples twice as large costs half the analyses an acre", () => {
    fc.assert(
      fc.property(sampling, (input) => {
        const larger = sampleCost({ ...input, acres: input.acres * 2, acresPerSample: input.acresPerSample * 2 });
        expect(larger.samples).toBe(sampleCost(input).samples);
        expect(larger.samplesUsd / input.acres).toBeCloseTo(sampleCost(input).samplesUsd / input.acres, 9);
      }),
    );
  });
  it("prices twice as high cost twice as much", () => {
    fc.assert(
      fc.property(sampling, (input) => {
        const dearer = {
          ...input,
          costUsdPerSample: input.costUsdPerSample * 2,
          collectingUsdPerAc: input.collectingUsdPerAc * 2,
        };
        expect(costOf(dearer)).toBeCloseTo(costOf(input) * 2, 9);
      }),
    );
  });
});
