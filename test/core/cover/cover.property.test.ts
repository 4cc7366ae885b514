import fc from "fast-check";
import { coverCount } from "../../../src/core/cover/cover-count";
import { coverFactor } from "../../../src/core/cover/cover-factor";
import { coverLeft } from "../../../src/core/cover/cover-left";
import { residueCover } from "../../../src/core/cover/residue-cover";
import { slopeFactor } from "../../../src/core/cover/slope-factor";
import { soilLoss } from "../../../src/core/cover/soil-loss";
import { coverKept, type CoverPassKey } from "../../../src/reference/cover/tillage-residue";

const passKey = fc.constantFrom(...(Object.keys(coverKept) as CoverPassKey[])); // keys of a literal record
const passes = fc.array(
  passKey.map((pass) => ({ pass })),
  { maxLength: 8 },
);
const coverPct = fc.double({ min: 0, max: 100, noNaN: true });
/** Binary dust: a middle may end a last digit beside ends that are the same. */
const dust = 1e-9;
const kind = fc.constantFrom("fragile", "nonFragile");
const lengthFt = fc.double({ min: 15, max: 900, noNaN: true });
const steepnessPct = fc.double({ min: 0.1, max: 50, noNaN: true });

describe("cover left", () => {
  it("lies between its ends and never above the start, for any passes", () => {
    fc.assert(
      fc.property(coverPct, passes, kind, (start, list, residue) => {
        const { low, middle, high } = coverLeft({ start: { coverPct: start }, passes: list, kind: residue }).coverPct;
        expect(0 <= low && low <= middle + dust && middle <= high + dust && high <= start + dust).toBe(true);
      }),
    );
  });
  it("does not turn on the order of the passes", () => {
    fc.assert(
      fc.property(coverPct, passes, kind, (start, list, residue) => {
        const left = (order: typeof list) => coverLeft({ start: { coverPct: start }, passes: order, kind: residue });
        expect(left(list).coverPct.middle).toBeCloseTo(left([...list].reverse()).coverPct.middle, 8);
      }),
    );
  });
  it("is the same in two goes as in one", () => {
    fc.assert(
      fc.property(coverPct, passes, passes, kind, (start, first, second, residue) => {
        const after = (from: number, list: typeof first) =>
          coverLeft({ start: { coverPct: from }, passes: list, kind: residue }).coverPct.middle;
        expect(after(after(start, first), second)).toBeCloseTo(after(start, [...first, ...second]), 8);
      }),
    );
  });
  it("is no more for fragile residue than for tough residue", () => {
    fc.assert(
      fc.property(coverPct, passes, (start, list) => {
        const of = (residue: "fragile" | "nonFragile") =>
          coverLeft({ start: { coverPct: start }, passes: list, kind: residue }).coverPct.middle;
        expect(of("fragile")).toBeLessThanOrEqual(of("nonFragile") + 1e-9);
      }),
    );
  });
});

describe("counted cover", () => {
  it("stays inside its range and inside 0 to 100, and narrows with more marks", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.double({ min: 0, max: 1, noNaN: true }), (marks, share) => {
        const hits = Math.round(share * marks);
        const once = coverCount({ hits: [hits], points: [marks], confidencePct: 95 });
        const often = coverCount({ hits: [4 * hits], points: [4 * marks], confidencePct: 95 });
        expect(0 <= once.lowPct && once.lowPct <= once.coverPct && once.coverPct <= once.highPct).toBe(true);
        expect(once.highPct).toBeLessThanOrEqual(100);
        expect(often.highPct - often.lowPct).toBeLessThanOrEqual(once.highPct - once.lowPct + 1e-9);
      }),
    );
  });
});

describe("slope, cover and soil loss", () => {
  it.each(["usle", "rusle"] as const)("%s rises with length and with steepness", (method) => {
    fc.assert(
      fc.property(lengthFt, steepnessPct, (length, steepness) => {
        const at = (slope: { lengthFt: number; steepnessPct: number }) => slopeFactor(slope, method).steepnessFactor;
        const base = { lengthFt: length, steepnessPct: steepness };
        expect(at({ ...base, steepnessPct: steepness + 1 })).toBeGreaterThan(at(base));
        const { factor } = slopeFactor(base, method);
        expect(slopeFactor({ ...base, lengthFt: length + 10 }, method).factor).toBeGreaterThan(factor);
      }),
    );
  });
  it("the two forms agree within a third on the slopes both were made for", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 50, max: 300, noNaN: true }),
        fc.double({ min: 6, max: 14, noNaN: true }),
        (length, steepness) => {
          const { factor, other } = slopeFactor({ lengthFt: length, steepnessPct: steepness }, "usle");
          expect(Math.abs(factor / other.factor - 1)).toBeLessThan(1 / 3);
        },
      ),
    );
  });
  it("the cover factor of a sum is the product of the factors", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 50, noNaN: true }), fc.double({ min: 0, max: 50, noNaN: true }), (a, b) => {
        const at = (cover: number) => coverFactor(cover, "typical").factor;
        expect(at(a + b)).toBeCloseTo(at(a) * at(b), 10);
      }),
    );
  });
  it("soil loss doubles when the cover factor doubles", () => {
    const share = fc.double({ min: 0.01, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(share, share, share, (erodibility, cover, practice) => {
        const at = (coverFactorOf: number) =>
          soilLoss({ rain: 150, erodibility, slopeFactor: 1.2, coverFactor: coverFactorOf, practiceFactor: practice });
        expect(at(2 * cover).lossTonPerAc).toBeCloseTo(2 * at(cover).lossTonPerAc, 10);
      }),
    );
  });
  it("two loads of residue never cover more than they would side by side", () => {
    const pounds = fc.double({ min: 0, max: 10_000, noNaN: true });
    fc.assert(
      fc.property(pounds, pounds, (a, b) => {
        const at = (lb: number) => residueCover("corn", lb).coverPct;
        expect(at(a + b)).toBeLessThanOrEqual(at(a) + at(b) + 1e-9);
        expect(at(a + b)).toBeGreaterThanOrEqual(at(a));
        expect(100 - at(a + b)).toBeCloseTo(((100 - at(a)) * (100 - at(b))) / 100, 8);
      }),
    );
  });
});
