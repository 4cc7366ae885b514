import fc from "fast-check";
import { nitrogenOptimum } from "../../../src/core/nitrogen/nitrogen-optimum";
import type { CropKey } from "../../../src/reference/crops";
import { crops } from "../../../src/reference/crops";
import { nitrogenGuides, type NitrogenGuide, type NitrogenGuideKey } from "../../../src/reference/nitrogen";
import { askNitrogen } from "./ask";

/** Every rule with each crop it is printed for. */
const rules = (Object.keys(nitrogenGuides) as NitrogenGuideKey[]).flatMap((guide) =>
  (nitrogenGuides[guide] as NitrogenGuide).rules.flatMap((rule) =>
    rule.crops.map((crop: CropKey) => ({
      guide,
      crop,
      yields: rule.yields ?? { min: 1, max: crops[crop].yieldCeiling },
    })),
  ),
);
const anyRule = fc.constantFrom(...rules);
const share = fc.double({ min: 0, max: 1, noNaN: true });
const ppm = fc.double({ min: 0, max: 100, noNaN: true });
const pct = fc.double({ min: 1, max: 5, noNaN: true });

type Rule = (typeof rules)[number];
const needAt = ({ guide, crop, yields }: Rule, at: number, soilNitrate: number, organicMatterPct: number) =>
  askNitrogen({
    guide,
    crop,
    yieldGoal: yields.min + at * (yields.max - yields.min),
    soilNitrate,
    organicMatterPct,
    guidelineLbPerAc: 170,
    tillage: "tilled",
    soil: "medium",
  }).needLbPerAc;

describe("nitrogen laws, for every printed rule", () => {
  it("is never below zero and never without bound", () => {
    fc.assert(
      fc.property(anyRule, share, ppm, pct, (rule, at, nitrate, organic) => {
        const need = needAt(rule, at, nitrate, organic);
        expect(need).toBeGreaterThanOrEqual(0);
        expect(need).toBeLessThan(1100);
      }),
    );
  });

  it("falls, or stays, as soil nitrate rises", () => {
    fc.assert(
      fc.property(anyRule, share, ppm, ppm, pct, (rule, at, one, other, organic) => {
        const low = needAt(rule, at, Math.min(one, other), organic);
        expect(needAt(rule, at, Math.max(one, other), organic)).toBeLessThanOrEqual(low + 1e-9);
      }),
    );
  });

  it("rises, or stays, with the yield goal", () => {
    fc.assert(
      fc.property(anyRule, share, share, ppm, pct, (rule, one, other, nitrate, organic) => {
        const low = needAt(rule, Math.min(one, other), nitrate, organic);
        expect(needAt(rule, Math.max(one, other), nitrate, organic)).toBeGreaterThanOrEqual(low - 1e-9);
      }),
    );
  });
});

/** Curves that rise by 0.2 to 1.5 bu for the first pound and bend down; trade prices. */
const curve = fc.record({
  linear: fc.double({ min: 0.2, max: 1.5, noNaN: true }),
  quadratic: fc.double({ min: -0.01, max: -0.0005, noNaN: true }),
  priceNUsdPerLb: fc.double({ min: 0.1, max: 2, noNaN: true }),
  priceGrainUsdPerBu: fc.double({ min: 2, max: 10, noNaN: true }),
  plateauLbPerAc: fc.option(fc.double({ min: 20, max: 300, noNaN: true }), { nil: null }),
  highestLbPerAc: fc.option(fc.double({ min: 50, max: 300, noNaN: true }), { nil: null }),
});

describe("the best rate", () => {
  it("is beaten by no other rate within reach, and its $1 range loses no more than $1", () => {
    fc.assert(
      fc.property(curve, share, (asked, at) => {
        const best = nitrogenOptimum(asked);
        const vertex = -asked.linear / (2 * asked.quadratic);
        const flat = Math.min(asked.plateauLbPerAc ?? vertex, vertex);
        const returnAt = (rate: number) => {
          const fed = asked.plateauLbPerAc === null ? rate : Math.min(rate, flat);
          return asked.priceGrainUsdPerBu * fed * (asked.linear + asked.quadratic * fed) - asked.priceNUsdPerLb * rate;
        };
        const reach = Math.min(asked.highestLbPerAc ?? 600, 600);
        expect(returnAt(at * reach)).toBeLessThanOrEqual(best.returnUsdPerAc + 1e-6);
        for (const rate of [best.lowLbPerAc, best.highLbPerAc]) {
          expect(returnAt(rate)).toBeGreaterThanOrEqual(best.returnUsdPerAc - 1 - 1e-6);
        }
        expect(best.lowLbPerAc).toBeLessThanOrEqual(best.optimumLbPerAc + 1e-9);
        expect(best.highLbPerAc).toBeGreaterThanOrEqual(best.optimumLbPerAc - 1e-9);
      }),
    );
  });

  it("falls, or stays, as nitrogen gets dearer", () => {
    fc.assert(
      fc.property(curve, fc.double({ min: 1, max: 3, noNaN: true }), (asked, times) => {
        const dear = nitrogenOptimum({ ...asked, priceNUsdPerLb: asked.priceNUsdPerLb * times });
        expect(dear.optimumLbPerAc).toBeLessThanOrEqual(nitrogenOptimum(asked).optimumLbPerAc + 1e-9);
      }),
    );
  });
});
