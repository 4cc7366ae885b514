import { productRate } from "../../../src/core/materials/product-rate";

/** Printed cases; tolerance is the printed rounding. */
describe("productRate", () => {
  it.each([
    ["110 lb P2O5 as 11-52-0 (Ohio State ANR-74)", 110, 52, 210, 5],
    ["110 lb P2O5 as 18-46-0 (Ohio State ANR-74)", 110, 46, 240, 5],
    ["20 lb N as 10-34-0 (Purdue starter guidance)", 20, 10, 200, 0.1],
    ["69 lb P2O5 as 18-46-0 (University of Illinois)", 69, 46, 150, 0.1],
    ["17.5 lb S as gypsum of 17.5 % (farm press, 2014)", 17.5, 17.5, 100, 0.5],
  ])("%s", (_case, needLbPerAc, analysisPct, printed, tolerance) => {
    const { productLbPerAc } = productRate({ needLbPerAc, analysisPct });
    expect(Math.abs(productLbPerAc - printed)).toBeLessThanOrEqual(tolerance);
  });

  it("needs no product for no need", () => {
    expect(productRate({ needLbPerAc: 0, analysisPct: 46 }).productLbPerAc).toBe(0);
  });
});
