import fc from "fast-check";
import { limeQuality, type LimeQualityInput } from "../../../../src/core/soil/lime/lime-quality";
import { finenessSystems, type FinenessSystemKey } from "../../../../src/reference/soil";
import { faultOf } from "../../fault-of";

const dry = { report: "shares", moisturePct: null } as const;
const at = (system: FinenessSystemKey, ccePct: number, sievesPct: readonly number[]) =>
  limeQuality({ ...dry, system, ccePct, sievesPct }).effectivePct;

/** Each by hand: CCE × Σ share × the part of it that reacts. */
describe("limeQuality", () => {
  it.each([
    ["oh", 90, [5, 15, 30, 50], 0.9 * (0.2 * 15 + 0.6 * 30 + 50)],
    ["mn", 90, [5, 15, 30, 50], 0.9 * (0.2 * 15 + 0.6 * 30 + 50)],
    ["wi", 90, [5, 15, 30, 50], 0.9 * (0.2 * 15 + 0.6 * 30 + 50)],
    ["ny", 95, [10, 20, 30, 40], 0.95 * (0.4 * 20 + 0.8 * 30 + 40)],
    ["mo", 92, [5, 25, 20, 50], 0.92 * (0.25 * 25 + 0.6 * 20 + 50)],
    ["ky", 88, [10, 40, 50], 0.88 * (0.5 * 40 + 50)],
    ["on", 90, [5, 45, 50], 0.9 * (0.4 * 45 + 50)],
    ["il1", 95, [10, 20, 30, 40], 0.95 * (0.05 * 10 + 0.2 * 20 + 0.5 * 30 + 40)],
    ["il4", 95, [10, 20, 30, 40], 0.95 * (0.15 * 10 + 0.45 * 20 + 30 + 40)],
    ["ks", 90, [5, 45, 50], 0.9 * (0.5 * 95 + 0.5 * 50)],
    ["ia", 90, [2, 8, 40, 50], 0.9 * (0.1 * 98 + 0.3 * 90 + 0.6 * 50)],
  ] as const)("%s of %d %% lime sieved %j is %d %%", (system, ccePct, sievesPct, byHand) => {
    expect(at(system, ccePct, sievesPct)).toBeCloseTo(byHand, 9);
  });

  it("takes what passes each sieve as well: 8, 20 and 60 mesh pass 95, 80 and 50 %", () => {
    const passing: LimeQualityInput = {
      ccePct: 90,
      sievesPct: [95, 80, 50],
      system: "oh",
      report: "passing",
      moisturePct: null,
    };
    expect(limeQuality(passing).effectivePct).toBeCloseTo(63.9, 9);
  });

  it("takes the shares without the coarsest, which is the rest", () => {
    expect(at("oh", 90, [15, 30, 50])).toBeCloseTo(63.9, 9);
  });

  it("prints Ohio's own figure: 2000 × 0.639 = 1,278 lb ENP, at 5 % moisture 1,214.1", () => {
    const lime = { ccePct: 90, sievesPct: [5, 15, 30, 50], system: "oh", report: "shares" } as const;
    expect(limeQuality({ ...lime, moisturePct: null }).ownFigure).toBeCloseTo(1278, 9);
    expect(limeQuality({ ...lime, moisturePct: 5 }).ownFigure).toBeCloseTo(1214.1, 9);
  });

  it("prints Missouri's own figure: 800 × 0.92 × 0.6825 = 502.32 lb ENM", () => {
    expect(limeQuality({ ...dry, ccePct: 92, sievesPct: [5, 25, 20, 50], system: "mo" }).ownFigure).toBeCloseTo(
      502.32,
      9,
    );
  });

  it("refuses a moisture where the measure stands on dry lime", () => {
    const lime = { ...dry, ccePct: 90, sievesPct: [10, 40, 50], system: "ky", moisturePct: 5 } as const;
    expect(faultOf(() => limeQuality(lime))).toMatchObject({ argument: "moisture" });
  });

  it("refuses shares typed as fractions, shares that miss 100, and a wrong count", () => {
    expect(faultOf(() => at("oh", 90, [0.05, 0.15, 0.3, 0.5]))).toMatchObject({
      because: "shares are in percent: enter 40, not 0.40.",
    });
    expect(faultOf(() => at("oh", 90, [5, 15, 30, 40]))).toMatchObject({
      because: expect.stringContaining("they add to 90"),
    });
    expect(faultOf(() => at("oh", 90, [60, 30, 20]))).toMatchObject({ because: expect.stringContaining("110") });
    expect(faultOf(() => at("oh", 90, [50, 50]))).toMatchObject({ because: expect.stringContaining("got 2") });
  });

  it("takes shares that miss 100 by the rounding of a report", () => {
    expect(at("oh", 90, [5, 15, 30, 49.5])).toBeCloseTo(0.9 * (3 + 18 + 49.5), 9);
  });

  it("refuses sieves listed fine to coarse", () => {
    const lime = { ccePct: 90, sievesPct: [50, 80, 95], system: "oh", report: "passing", moisturePct: null } as const;
    expect(faultOf(() => limeQuality(lime))).toMatchObject({ because: expect.stringContaining("coarse to fine") });
  });

  it("waits for a blank share", () => {
    const lime = { ...dry, ccePct: 90, sievesPct: [5, null, 30, 50], system: "oh" } as const;
    expect(faultOf(() => limeQuality(lime))).toEqual({ kind: "waiting", argument: "finenessShares" });
  });
});

const anySystem = fc.constantFrom(...(Object.keys(finenessSystems) as FinenessSystemKey[]));
const anyCce = fc.double({ min: 1, max: 250, noNaN: true });

describe("lime quality laws", () => {
  it("stone that is all fine counts at its full CCE in every system", () => {
    fc.assert(
      fc.property(anySystem, anyCce, (system, ccePct) => {
        const sizes = finenessSystems[system].efficiency.length;
        const allFine = Array.from({ length: sizes }, (_, size) => (size === sizes - 1 ? 100 : 0));
        expect(at(system, ccePct, allFine)).toBeCloseTo(ccePct, 9);
      }),
    );
  });

  it("grinding finer never lowers it", () => {
    fc.assert(
      fc.property(anySystem, fc.integer({ min: 0, max: 100 }), (system, coarse) => {
        const sizes = finenessSystems[system].efficiency.length;
        const sieved = (place: number) =>
          Array.from({ length: sizes }, (_, size) => (size === place ? coarse : size === sizes - 1 ? 100 - coarse : 0));
        for (let place = 0; place + 2 < sizes; place++) {
          expect(at(system, 90, sieved(place))).toBeLessThanOrEqual(at(system, 90, sieved(place + 1)) + 1e-9);
        }
      }),
    );
  });

  it("shares and what passes are two ways to say the same", () => {
    const byHalves = fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(byHalves, (values) => {
        const [coarse = 0, middle = 0, fine = 0] = [...values].sort((a, b) => b - a);
        const shares = [100 - coarse, coarse - middle, middle - fine, fine];
        const sieves = { ccePct: 90, system: "oh", moisturePct: null } as const;
        const fromShares = limeQuality({ ...sieves, sievesPct: shares, report: "shares" }).effectivePct;
        const fromPassing = limeQuality({
          ...sieves,
          sievesPct: [coarse, middle, fine],
          report: "passing",
        }).effectivePct;
        expect(fromPassing).toBeCloseTo(fromShares, 9);
      }),
    );
  });
});
