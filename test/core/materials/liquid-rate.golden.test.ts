import { faultOf } from "../fault-of";
import { liquidRate } from "../../../src/core/materials/liquid-rate";
import { publishedDensity } from "../../../src/core/materials/liquid-density";

const typed = (lbPerGal: number) => ({ lbPerGal, cited: null });

describe("liquidRate", () => {
  it.each([
    ["28-0-0 holds 3.0 lb N/gal (printed field rule)", 28, 10.67, 3.0, 0.05],
    ["32-0-0 holds 3.54 lb N/gal (printed)", 32, 11.06, 3.54, 0.005],
  ])("%s", (_case, analysisPct, lbPerGal, printed, tolerance) => {
    const { nutrientLbPerGal } = liquidRate({ needLbPerAc: 100, analysisPct, gallon: typed(lbPerGal) });
    expect(Math.abs(nutrientLbPerGal - printed)).toBeLessThanOrEqual(tolerance);
  });

  it("takes 10 gal/ac of 10-34-0 at 11.65 lb/gal for 39.61 lb P2O5: 11.65 × 0.34 × 10", () => {
    const { rateGalPerAc, productLbPerAc } = liquidRate({
      needLbPerAc: 39.61,
      analysisPct: 34,
      gallon: typed(11.65),
    });
    expect(rateGalPerAc).toBeCloseTo(10, 9);
    expect(productLbPerAc).toBeCloseTo(116.5, 9);
  });

  it("needs no gallons for no need", () => {
    expect(liquidRate({ needLbPerAc: 0, analysisPct: 28, gallon: typed(10.67) }).rateGalPerAc).toBe(0);
  });

  it("refuses a gallon that weighs as much as a drum, and NaN", () => {
    const ask = (lbPerGal: number) =>
      faultOf(() => liquidRate({ needLbPerAc: 1, analysisPct: 28, gallon: typed(lbPerGal) }));
    expect(ask(106.7)).toMatchObject({ kind: "outOfRange", argument: "lbPerGallon" });
    expect(ask(Number.NaN)).toMatchObject({ kind: "outOfRange", argument: "lbPerGallon" });
  });
});

describe("publishedDensity", () => {
  it("knows liquids and says so when a material is dry", () => {
    expect(publishedDensity("uan30").lbPerGal).toBe(10.9);
    expect(faultOf(() => publishedDensity("urea"))).toMatchObject({ kind: "notPublished" });
  });
});
