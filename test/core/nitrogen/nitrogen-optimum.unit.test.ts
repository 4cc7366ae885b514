import { nitrogenOptimum } from "../../../src/core/nitrogen/nitrogen-optimum";
import { faultOf } from "../fault-of";

const curve = {
  linear: 0.9,
  quadratic: -0.0025,
  priceNUsdPerLb: 0.5,
  priceGrainUsdPerBu: 5,
  plateauLbPerAc: null,
  highestLbPerAc: null,
} as const;

describe("the best rate of 0.90 N − 0.0025 N²", () => {
  it("is 160 at a ratio of 0.10 and 140 at 0.20; the curve tops out at 180", () => {
    const best = nitrogenOptimum(curve);
    expect(best.optimumLbPerAc).toBeCloseTo(160, 9);
    expect(best.mostYieldLbPerAc).toBeCloseTo(180, 9);
    expect(best.gainBuPerAc).toBeCloseTo(80, 9); // 144 − 64
    expect(best.returnUsdPerAc).toBeCloseTo(320, 9); // 5 × 80 − 0.5 × 160
    expect(nitrogenOptimum({ ...curve, priceNUsdPerLb: 1 }).optimumLbPerAc).toBeCloseTo(140, 9);
  });

  it("is within $1 of best over plus and minus the root of 1 / (5 × 0.0025), 8.944 lb", () => {
    const { lowLbPerAc, highLbPerAc } = nitrogenOptimum(curve);
    expect(lowLbPerAc).toBeCloseTo(160 - Math.sqrt(80), 9);
    expect(highLbPerAc).toBeCloseTo(160 + Math.sqrt(80), 9);
  });

  it("is a ratio of 0.15 for nitrogen at $0.30 and corn at $2.00, as printed in 2011", () => {
    const { priceRatio } = nitrogenOptimum({ ...curve, priceNUsdPerLb: 0.3, priceGrainUsdPerBu: 2 });
    expect(priceRatio).toBeCloseTo(0.15, 9);
  });

  it("is held at a plateau, at the highest rate of the trial, at nothing", () => {
    expect(nitrogenOptimum({ ...curve, plateauLbPerAc: 120 })).toMatchObject({
      optimumLbPerAc: 120,
      heldAt: "plateau",
    });
    expect(nitrogenOptimum({ ...curve, plateauLbPerAc: 180 }).optimumLbPerAc).toBeCloseTo(160, 9);
    expect(nitrogenOptimum({ ...curve, highestLbPerAc: 150 })).toMatchObject({
      optimumLbPerAc: 150,
      heldAt: "highest rate",
    });
    expect(nitrogenOptimum({ ...curve, highestLbPerAc: 200 })).toMatchObject({ heldAt: "nothing" });
    expect(nitrogenOptimum({ ...curve, highestLbPerAc: 150, plateauLbPerAc: 120 })).toMatchObject({
      heldAt: "plateau",
    });
    // A first pound brings 0.9 bu: worth $0.36 at $0.40, less than it costs.
    expect(nitrogenOptimum({ ...curve, priceGrainUsdPerBu: 0.4 })).toMatchObject({
      optimumLbPerAc: 0,
      heldAt: "no nitrogen",
    });
  });

  it("loses its dollar on a plateau after 1 / 0.5 = 2 lb", () => {
    expect(nitrogenOptimum({ ...curve, plateauLbPerAc: 120 }).highLbPerAc).toBeCloseTo(122, 9);
  });

  it("refuses a curve that does not bend down and prices of nothing", () => {
    expect(faultOf(() => nitrogenOptimum({ ...curve, quadratic: 0 }))).toMatchObject({ argument: "quadratic" });
    expect(faultOf(() => nitrogenOptimum({ ...curve, priceGrainUsdPerBu: 0 }))).toMatchObject({
      argument: "priceGrain",
    });
    expect(faultOf(() => nitrogenOptimum({ ...curve, priceNUsdPerLb: 0 }))).toMatchObject({ argument: "priceN" });
  });
});
