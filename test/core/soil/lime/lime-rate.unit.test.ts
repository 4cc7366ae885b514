import fc from "fast-check";
import { limeRate } from "../../../../src/core/soil/lime/lime-rate";

describe("limeRate", () => {
  it("is 2 / 0.80 / 0.95 = 2.6316 ton as delivered", () => {
    const result = limeRate({ needTonPerAc: 2, qualityPct: 80, moisturePct: 5 });
    expect(result.dryTonPerAc).toBeCloseTo(2.5, 9);
    expect(result.productTonPerAc).toBeCloseTo(2.5 / 0.95, 9);
  });

  it("scales a 90 % limestone rate the way E-2567 does: tons × 0.90 / NV", () => {
    // 3 ton of 90 % limestone, spread as an 80 % one: 3 × 0.90 / 0.80
    expect(limeRate({ needTonPerAc: 3 * 0.9, qualityPct: 80, moisturePct: 0 }).productTonPerAc).toBeCloseTo(3.375, 9);
  });

  it("says when it is more than the surface takes at once, and more than one pass with tillage", () => {
    const at = (needTonPerAc: number) => limeRate({ needTonPerAc, qualityPct: 100, moisturePct: 0 });
    expect(at(2)).toMatchObject({ isAboveSurfaceCap: false, isAboveTilledCap: false });
    expect(at(2.1)).toMatchObject({ isAboveSurfaceCap: true, isAboveTilledCap: false });
    expect(at(4.1)).toMatchObject({ isAboveSurfaceCap: true, isAboveTilledCap: true });
  });

  it("carries the need: product × quality × dry share gives it back", () => {
    const share = fc.double({ min: 1, max: 100, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 40, noNaN: true }),
        share,
        fc.integer({ min: 0, max: 60 }),
        (need, quality, wet) => {
          const { productTonPerAc } = limeRate({ needTonPerAc: need, qualityPct: quality, moisturePct: wet });
          expect((productTonPerAc * quality * (100 - wet)) / 10_000).toBeCloseTo(need, 9);
        },
      ),
    );
  });
});
