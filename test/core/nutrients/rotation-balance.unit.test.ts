import { rotationBalance, type Rotation } from "../../../src/core/nutrients/rotation-balance";
import { faultOf } from "../fault-of";

const cornSoybean: Rotation = {
  crops: ["corn", "soybean"],
  yields: [180, 60],
  parts: null,
  nutrient: "P2O5",
  appliedLbPerAc: [60, 40],
  set: null,
};

describe("rotationBalance", () => {
  it("takes removal from what was applied: 100 − (63 + 48) = −11, −5.5 a year", () => {
    const result = rotationBalance(cornSoybean);
    expect(result.balanceLbPerAc).toBeCloseTo(-11, 9);
    expect(result.balanceLbPerAcYear).toBeCloseTo(-5.5, 9);
    expect(result.years).toBe(2);
  });

  it("counts straw where it is baled: 80 bu wheat takes 40 lb P2O5, its straw 2.076 × 3.7 = 7.68 more", () => {
    const wheat = { ...cornSoybean, crops: ["wheat"], yields: [80], appliedLbPerAc: [0] } as const;
    expect(rotationBalance(wheat).balanceLbPerAc).toBeCloseTo(-40, 9);
    expect(rotationBalance({ ...wheat, parts: ["grain+straw"] }).balanceLbPerAc).toBeCloseTo(-47.6812, 9);
  });

  it("passes over a year with neither crop nor yield", () => {
    const withGap = { ...cornSoybean, crops: ["corn", null, "soybean"], yields: [180, null, 60] } as const;
    expect(rotationBalance(withGap).balanceLbPerAc).toBeCloseTo(-11, 9);
    expect(rotationBalance(withGap).years).toBe(2);
  });

  it("calls a yield above all records by the name of its argument", () => {
    expect(faultOf(() => rotationBalance({ ...cornSoybean, yields: [180, 600] }))).toMatchObject({
      kind: "outOfRange",
      argument: "yields",
      received: 600,
    });
  });

  it("waits for a yield whose crop is named, and for a crop whose yield is", () => {
    expect(faultOf(() => rotationBalance({ ...cornSoybean, yields: [180, null] }))).toMatchObject({
      kind: "waiting",
      argument: "yields",
    });
    const waitsForCrops = { kind: "waiting", argument: "crops" };
    expect(faultOf(() => rotationBalance({ ...cornSoybean, crops: ["corn", null] }))).toEqual(waitsForCrops);
    expect(faultOf(() => rotationBalance({ ...cornSoybean, crops: [null], yields: [null] }))).toEqual(waitsForCrops);
  });

  it("refuses lists of different length", () => {
    const differs = (argument: string) => ({
      kind: "sizesDiffer",
      first: { argument: "crops", size: "2 cells" },
      second: { argument, size: "1 cell" },
    });
    expect(faultOf(() => rotationBalance({ ...cornSoybean, yields: [180] }))).toEqual(differs("yields"));
    expect(faultOf(() => rotationBalance({ ...cornSoybean, parts: ["grain"] }))).toEqual(differs("parts"));
  });
});
