import fc from "fast-check";
import { weedBenefit, weedThreshold } from "../../../src/core/protection/weed-benefit";
import { weedLoss } from "../../../src/core/protection/weed-loss";
import { faultOf } from "../fault-of";

const from = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const together = { daysAfterCrop: 0, fadePerDay: null };

describe("weeds, as laws", () => {
  it("loss starts with the slope, grows with the weeds and stays below the ceiling", () => {
    fc.assert(
      fc.property(from(0.5, 50), from(20, 100), fc.integer({ min: 1, max: 500 }), (slopePct, ceilingPct, density) => {
        const at = (weeds: number) => weedLoss({ density: weeds, slope: { slopePct }, ceilingPct, ...together });
        expect(at(1e-6).lossPct / (slopePct * 1e-6)).toBeCloseTo(1, 4);
        expect(at(density + 1).lossPct).toBeGreaterThan(at(density).lossPct);
        expect(at(density).lossPct).toBeLessThan(ceilingPct);
        expect(at(density).lowPct).toBeLessThan(at(density).lossPct);
        expect(at(density).highPct).toBeGreaterThan(at(density).lossPct);
      }),
    );
  });
  it("the density found from the loss is the one it came from", () => {
    fc.assert(
      fc.property(from(0.5, 50), from(20, 100), from(0.1, 100), (slopePct, ceilingPct, density) => {
        const { lossPct } = weedLoss({ density, slope: { slopePct }, ceilingPct, ...together });
        expect(lossPct / (slopePct * (1 - lossPct / ceilingPct)) / density).toBeCloseTo(1, 6);
      }),
    );
  });
  it("later weeds take less, and early ones more", () => {
    fc.assert(
      fc.property(from(0.1, 20), fc.integer({ min: 1, max: 30 }), from(0.01, 0.3), (density, days, fadePerDay) => {
        const at = (daysAfterCrop: number) =>
          weedLoss({ density, slope: { slopePct: 3 }, ceilingPct: 60, daysAfterCrop, fadePerDay }).lossPct;
        expect(at(days)).toBeLessThan(at(0));
        expect(at(-days)).toBeGreaterThan(at(0));
      }),
    );
  });
  it("at the density where it begins to pay, what is saved is the cost; below it, less", () => {
    fc.assert(
      fc.property(
        from(0.5, 20),
        from(30, 100),
        from(50, 100),
        from(1, 60),
        (slopePct, ceilingPct, controlPct, cost) => {
          const input = {
            slope: { slopePct },
            ceilingPct,
            ...together,
            yieldBuPerAc: 180,
            controlPct,
            priceUsdPerBu: 4.5,
            costUsdPerAc: cost,
          };
          const fault = faultOf(() => weedThreshold(input));
          fc.pre(fault === undefined);
          const { density } = weedThreshold(input);
          expect(weedBenefit({ ...input, density }).netUsdPerAc).toBeCloseTo(0, 6);
          expect(weedBenefit({ ...input, density: density * 0.9 }).netUsdPerAc).toBeLessThan(0);
        },
      ),
    );
  });
  it("a search over densities finds none that pays where the formula says so", () => {
    const input = {
      slope: { slopePct: 5 },
      ceilingPct: 40,
      ...together,
      yieldBuPerAc: 50,
      controlPct: 60,
      priceUsdPerBu: 10,
      costUsdPerAc: 60,
    };
    expect(faultOf(() => weedThreshold(input))).toMatchObject({ kind: "noSolution" });
    for (let density = 0.1; density < 1000; density *= 1.1) {
      expect(weedBenefit({ ...input, density }).netUsdPerAc).toBeLessThan(0);
    }
  });
});
