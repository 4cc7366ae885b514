import fc from "fast-check";
import { certaintyEquivalent } from "../../../src/core/risk/certainty-equivalent";
import { planDominance } from "../../../src/core/risk/plan-dominance";
import { profitDistribution, type Outlook } from "../../../src/core/risk/profit-distribution";
import { profitOdds } from "../../../src/core/risk/profit-odds";
import { riskMeasures } from "../../../src/core/risk/risk-measures";

/** Three whole numbers in order, turned into a unit. */
const points = (max: number, unit: number) =>
  fc
    .tuple(fc.integer({ min: 1, max }), fc.integer({ min: 0, max }), fc.integer({ min: 0, max }))
    .map(([low, rise, more]) => ({ low: low * unit, likely: (low + rise) * unit, high: (low + rise + more) * unit }));
const correlation = fc.integer({ min: -100, max: 100 }).map((hundredths) => hundredths / 100);
const outlook: fc.Arbitrary<Outlook> = fc.record({
  yieldBuPerAc: points(150, 1),
  priceUsdPerBu: points(600, 0.01),
  shape: fc.constantFrom("triangular", "pert"),
  correlation,
  costUsdPerAc: fc.integer({ min: 0, max: 1000 }),
  otherIncomeUsdPerAc: fc.integer({ min: 0, max: 100 }),
  costUsdPerBu: fc.integer({ min: 0, max: 100 }).map((cents) => cents / 100),
});
/** A table of measures takes some milliseconds. */
const few = { numRuns: 25 };
/** Steps of the sum move a little with the target. */
const hair = 1e-4;

describe("odds of a profit, as laws", () => {
  it("lie between 0 and 1 and fall as the cost rises", () => {
    fc.assert(
      fc.property(outlook, fc.integer({ min: 1, max: 200 }), (plan, more) => {
        const { chance } = profitOdds(plan, 0);
        const dearer = profitOdds({ ...plan, costUsdPerAc: plan.costUsdPerAc + more }, 0).chance;
        expect(chance).toBeGreaterThanOrEqual(0);
        expect(chance).toBeLessThanOrEqual(1);
        expect(dearer).toBeLessThanOrEqual(chance + hair);
      }),
    );
  });
  it("a dollar of cost is a dollar of target", () => {
    fc.assert(
      fc.property(outlook, fc.integer({ min: 0, max: 300 }), (plan, dollars) => {
        const dearer = { ...plan, costUsdPerAc: plan.costUsdPerAc + dollars };
        expect(profitOdds(dearer, 0).chance).toBeCloseTo(profitOdds(plan, dollars).chance, 9);
      }),
    );
  });
  it("are the same each time they are asked", () => {
    fc.assert(fc.property(outlook, (plan) => expect(profitOdds(plan, 10)).toEqual(profitOdds({ ...plan }, 10))));
  });
  it("are 1 below the worst and 0 at the best", () => {
    fc.assert(
      fc.property(outlook, (plan) => {
        const { worstUsdPerAc, bestUsdPerAc } = profitOdds(plan, 0);
        expect(profitOdds(plan, worstUsdPerAc - 0.01).chance).toBeCloseTo(1, 6);
        expect(profitOdds(plan, bestUsdPerAc + 0.01).chance).toBeCloseTo(0, 6);
      }),
    );
  });
});

describe("the range of profit, as laws", () => {
  it("percentiles rise, the tail mean lies below its percentile, and caution takes from the mean", () => {
    fc.assert(
      fc.property(outlook, (plan) => {
        const { lowest, highest, cdf } = profitDistribution(plan);
        const measures = riskMeasures({ lowest, highest, cdf });
        const [worst = 0, low = 0, middle = 0, high = 0] = [0.05, 0.1, 0.5, 0.9].map((share) =>
          measures.percentile(share),
        );
        const dollars = 1e-6 + 1e-3 * (highest - lowest);
        expect(measures.tailMean(0.05)).toBeLessThanOrEqual(worst + dollars);
        expect(worst).toBeLessThanOrEqual(low + 1e-9);
        expect(low).toBeLessThanOrEqual(middle + 1e-9);
        expect(middle).toBeLessThanOrEqual(high + 1e-9);
        expect(measures.certaintyEquivalent(0.01)).toBeLessThanOrEqual(measures.mean + dollars);
        expect(measures.mean).toBeGreaterThanOrEqual(lowest - dollars);
        expect(measures.mean).toBeLessThanOrEqual(highest + dollars);
      }),
      few,
    );
  });
  it("spread and mean rise with the correlation, where a bushel never loses money", () => {
    fc.assert(
      fc.property(outlook, correlation, correlation, (plan, first, second) => {
        fc.pre(first < second);
        const at = (value: number) =>
          riskMeasures(profitDistribution({ ...plan, correlation: value, costUsdPerBu: 0 }));
        const [lower, higher] = [at(first), at(second)];
        const dollars = 1e-6 + 0.02 * lower.sd;
        expect(higher.sd).toBeGreaterThanOrEqual(lower.sd - dollars);
        expect(higher.mean).toBeGreaterThanOrEqual(lower.mean - dollars);
      }),
      few,
    );
  });
});

describe("certain worth and dominance, as laws", () => {
  const outcomes = fc.array(fc.integer({ min: -500, max: 500 }), { minLength: 2, maxLength: 8 });
  it("nobody prefers a plan to itself, in whatever order its outcomes stand", () => {
    fc.assert(
      fc.property(outcomes, (plan) => {
        const same = planDominance({ first: plan, second: [...plan].reverse() });
        expect([same.everyone, same.cautious]).toEqual(["alike", "alike"]);
      }),
    );
  });
  it("plans changed round change the answer round", () => {
    const turned = { first: "second", second: "first", neither: "neither", alike: "alike" } as const;
    fc.assert(
      fc.property(outcomes, outcomes, (first, second) => {
        const one = planDominance({ first, second });
        const other = planDominance({ first: second, second: first });
        expect(other.everyone).toBe(turned[one.everyone]);
        expect(other.cautious).toBe(turned[one.cautious]);
      }),
    );
  });
  it("whom everyone prefers, the cautious prefer; and whom they prefer has the higher certain worth", () => {
    fc.assert(
      fc.property(outcomes, outcomes, fc.integer({ min: 1, max: 20 }), (first, second, thousandths) => {
        const { everyone, cautious } = planDominance({ first, second });
        if (everyone === "first" || everyone === "second") expect(cautious).toBe(everyone);
        const worth = (plan: readonly number[]) =>
          certaintyEquivalent({ outcomesUsd: plan, chances: null, riskAversion: thousandths / 1000 }).certainUsd;
        if (cautious === "first") expect(worth(first)).toBeGreaterThanOrEqual(worth(second) - 1e-9);
        if (cautious === "alike") expect(worth(first)).toBeCloseTo(worth(second), 9);
      }),
    );
  });
  it("all outcomes raised by a sum raise the certain worth by that sum", () => {
    fc.assert(
      fc.property(outcomes, fc.integer({ min: -300, max: 300 }), (plan, sum) => {
        const worth = (outcomesUsd: readonly number[]) =>
          certaintyEquivalent({ outcomesUsd, chances: null, riskAversion: 0.01 }).certainUsd;
        expect(worth(plan.map((outcome) => outcome + sum))).toBeCloseTo(worth(plan) + sum, 7);
      }),
    );
  });
});
