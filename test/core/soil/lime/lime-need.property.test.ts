import fc from "fast-check";
import { publishedTargets } from "../../../../src/core/soil/lime/check-readings";
import { limeMethods, type LimeMethod, type LimeMethodKey } from "../../../../src/reference/soil";
import { askLime } from "./ask";

const depthIn = 6;
/** Below every target and inside every method's range. */
const ph = 4.9;

/** Every method that reads a buffer, with its targets and the buffer pH it is printed for. */
const readers = (Object.keys(limeMethods) as LimeMethodKey[]).flatMap((method) => {
  const { form, buffer, highestTarget }: LimeMethod = limeMethods[method];
  if (!buffer) return [];
  const targets = publishedTargets(form) ?? [5.5, 6, highestTarget ?? 6.5];
  return targets.map((targetPh) => ({ method, targetPh, min: Math.max(buffer.min, 5), max: buffer.max }));
});
const anyReader = fc.constantFrom(...readers);
const anyShare = fc.double({ min: 0, max: 1, noNaN: true });

type Reader = (typeof readers)[number];
const needAt = ({ method, targetPh, min, max }: Reader, share: number, depth = depthIn) =>
  askLime({ ph, bufferPh: min + share * (max - min), targetPh, method, depthIn: depth }).needTonPerAc;

describe("lime laws, for every method that reads a buffer", () => {
  it("lime falls, or stays, as the buffer pH rises", () => {
    fc.assert(
      fc.property(anyReader, anyShare, anyShare, (reader, one, other) => {
        const low = Math.min(one, other);
        const high = Math.max(one, other);
        // Cut only at printed steps; 1e-9 is binary dust.
        expect(needAt(reader, high)).toBeLessThanOrEqual(needAt(reader, low) + 1e-9);
      }),
    );
  });

  it("is never below zero and never without bound", () => {
    fc.assert(
      fc.property(anyReader, anyShare, (reader, share) => {
        const need = needAt(reader, share);
        expect(need).toBeGreaterThanOrEqual(0);
        expect(need).toBeLessThan(40);
      }),
    );
  });

  it("goes with depth", () => {
    fc.assert(
      fc.property(anyReader, anyShare, (reader, share) => {
        expect(needAt(reader, share, 8)).toBeCloseTo(2 * needAt(reader, share, 4), 9);
      }),
    );
  });

  it("needs none at or above the target", () => {
    fc.assert(
      fc.property(anyReader, fc.double({ min: 0, max: 2, noNaN: true }), ({ method, targetPh }, above) => {
        expect(askLime({ ph: targetPh + above, targetPh, method, depthIn }).needTonPerAc).toBe(0);
      }),
    );
  });
});

describe("lime laws of single methods", () => {
  it("a higher target asks for more, on IN-MI-OH up to a lime test index of 68 (its lines cross near 69)", () => {
    fc.assert(
      fc.property(fc.double({ min: 6, max: 6.8, noNaN: true }), (bufferPh) => {
        const to = (targetPh: number) => askLime({ ph, bufferPh, targetPh, method: "inMiOh" }).needTonPerAc;
        expect(to(6.5)).toBeGreaterThan(to(6));
        expect(to(6.8)).toBeGreaterThan(to(6.5));
      }),
    );
  });

  it("more exchangeable acidity asks for as much lime or more", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(6.5, 7),
        fc.double({ min: 0, max: 29, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (targetPh, acidityMeq, more) => {
          const at = (acidity: number) => askLime({ ph, targetPh, method: "pa", acidityMeq: acidity }).needTonPerAc;
          expect(at(acidityMeq + more)).toBeGreaterThanOrEqual(at(acidityMeq));
        },
      ),
    );
  });

  it("a less acid soil asks for less by the North Carolina and Adams-Evans sums", () => {
    fc.assert(
      fc.property(
        fc.constantFrom({ method: "nc", bufferPh: 6.4 } as const, { method: "southeast", bufferPh: 7.7 } as const),
        fc.double({ min: 4.6, max: 6.3, noNaN: true }),
        (reading, soil) => {
          const at = (soilPh: number) => askLime({ ...reading, ph: soilPh, targetPh: 6.5 }).needTonPerAc;
          expect(at(soil + 0.1)).toBeLessThan(at(soil));
        },
      ),
    );
  });
});
