import { faultOf } from "../fault-of";
import { spreadRate } from "../../../src/core/materials/spread-rate";

describe("spreadRate", () => {
  it("is the pounds themselves when an acre is covered: 60 ft × 726 ft = 43,560 sq ft", () => {
    expect(spreadRate({ caughtLb: 210, swathFt: 60, distanceFt: 726 })).toEqual({
      rateLbPerAc: 210,
      areaSqFt: 43_560,
      areaAc: 1,
    });
  });

  it("halves when the swath doubles", () => {
    expect(spreadRate({ caughtLb: 30, swathFt: 40, distanceFt: 300 }).rateLbPerAc).toBeCloseTo(108.9, 9);
    expect(spreadRate({ caughtLb: 30, swathFt: 80, distanceFt: 300 }).rateLbPerAc).toBeCloseTo(54.45, 9);
  });

  it("refuses a swath or run of no length, and pounds below 0", () => {
    const good = { caughtLb: 30, swathFt: 40, distanceFt: 300 };
    expect(faultOf(() => spreadRate({ ...good, swathFt: 0 }))).toMatchObject({ argument: "swath" });
    expect(faultOf(() => spreadRate({ ...good, distanceFt: 0 }))).toMatchObject({ argument: "distance" });
    expect(faultOf(() => spreadRate({ ...good, caughtLb: -1 }))).toMatchObject({ argument: "poundsCaught" });
  });
});
