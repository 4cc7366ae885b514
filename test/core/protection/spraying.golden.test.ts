import { carrierDensity } from "../../../src/core/protection/carrier-density";
import { nozzleFlow } from "../../../src/core/protection/nozzle-flow";
import { productFromActive } from "../../../src/core/protection/product-from-active";
import { sprayCourse } from "../../../src/core/protection/spray-course";
import { pressedFlow, sprayPressure } from "../../../src/core/protection/spray-pressure";
import { sprayVolume } from "../../../src/core/protection/spray-volume";
import { solutionDensity } from "../../../src/reference/protection/solutions";

describe("University of Florida, nozzle flow and spray volume", () => {
  it("20 gal/ac at 6 mph, nozzles 20 in apart: 0.4040 gal/min", () => {
    expect(nozzleFlow({ volumeGalPerAc: 20, speedMph: 6, spacingIn: 20 }).flowGalPerMin).toBeCloseTo(0.404, 3);
  });
  it("0.3 gal/min at 5 mph, nozzles 20 in apart: 17.82 gal/ac", () => {
    expect(sprayVolume({ flowGalPerMin: 0.3, speedMph: 5, spacingIn: 20 }).volumeGalPerAc).toBeCloseTo(17.82, 3);
  });
});

describe("University of Nebraska and University of Georgia, factors for solutions other than water", () => {
  it.each(solutionDensity.rows.map((row) => [row.lbPerGal, row.printedFactor] as const))(
    "%d lb/gal: factor %d, printed to two places",
    (lbPerGal, printed) => {
      const { factor } = carrierDensity({ rateGalPerAc: 20, weight: { lbPerGal } });
      expect(Math.abs(factor - printed)).toBeLessThanOrEqual(0.0051);
    },
  );
  it("28-0-0 at 20 gal/ac: 22.6 gal/ac of water", () => {
    expect(carrierDensity({ rateGalPerAc: 20, weight: { solution: "uan28" } }).waterGalPerAc).toBeCloseTo(22.6, 1);
  });
});

describe("Louisiana State University and Clemson University, course lengths, in whole feet", () => {
  it.each([
    [10, 408],
    [12, 340],
    [14, 291],
    [16, 255],
    [18, 227],
    [20, 204],
    [22, 185],
    [24, 170],
    [26, 157],
    [28, 146],
    [30, 136],
    [32, 127],
    [34, 120],
    [36, 113],
    [38, 107],
    [40, 102],
  ])("%d in: %d ft", (spacingIn, printedFt) => {
    // Some were cut to whole feet and not rounded.
    expect(Math.abs(sprayCourse({ spacingIn }).feet - printedFt)).toBeLessThan(0.75);
  });
  it("a square of 18.5 ft is that area too: 40 oz caught are 40 gal/ac", () => {
    expect(Math.abs(sprayCourse({ spacingIn: 20 }).squareFeet / 18.5 ** 2 - 1)).toBeLessThan(0.01);
  });
});

describe("printed cases", () => {
  it("2 lb of active from an 80 % dry product: 2.5 lb", () => {
    expect(productFromActive({ activeLbPerAc: 2, concentration: 80, form: "dry" }).productPerAc).toBeCloseTo(2.5, 12);
  });
  it("0.4 gal/min at 40 psi gives 0.2828 at 20 psi", () => {
    const { flowGalPerMin } = pressedFlow({ flowGalPerMin: 0.4, pressurePsi: 40, newPressurePsi: 20 });
    expect(flowGalPerMin).toBeCloseTo(0.2828, 3);
  });
  it("from 6 to 8 mph at one volume 40 psi become 71.1", () => {
    const { pressurePsi } = sprayPressure({ flowGalPerMin: 6, newFlowGalPerMin: 8, pressurePsi: 40 });
    expect(pressurePsi).toBeCloseTo(71.1, 1);
  });
});
