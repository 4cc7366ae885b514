import fc from "fast-check";
import { FormulaError } from "../../../src/core/fault";
import { leastCostMix, type LeastCostMix } from "../../../src/core/materials/least-cost-mix";
import type { MixRequest } from "../../../src/core/materials/mix-request";

const nutrients = ["N", "P2O5", "K2O", "S"] as const;
const whole = (max: number) => fc.integer({ min: 0, max });

/** Requests with ties and zeros in plenty: whole percents, prices and needs, few enough to try every pair. */
function anyRequest({ mayCap }: { readonly mayCap: boolean }): fc.Arbitrary<MixRequest> {
  const cap = mayCap ? fc.option(whole(40), { nil: null }) : fc.constant(null);
  return fc.integer({ min: 1, max: 4 }).chain((count) =>
    fc.record({
      nutrients: fc.tuple(...nutrients.slice(0, count).map((nutrient) => nutrientOf(nutrient, cap))),
      materials: fc.array(materialOf(count, mayCap), { minLength: 1, maxLength: 6 }),
      saltLimitLbPerAc: fc.constant(null),
      totalLimitLbPerAc: mayCap ? fc.option(whole(600), { nil: null }) : fc.constant(null),
    }),
  );
}

function nutrientOf(nutrient: (typeof nutrients)[number], overshootLbPerAc: fc.Arbitrary<number | null>) {
  return fc.record({ nutrient: fc.constant(nutrient), needLbPerAc: whole(120), overshootLbPerAc });
}

function materialOf(count: number, mayCap: boolean) {
  return fc.record({
    name: fc.constant("material"),
    priceUsdPerTon: whole(900),
    analysisPct: fc.array(fc.oneof(fc.constant(0), whole(25)), { minLength: count, maxLength: count }),
    leastLbPerAc: fc.constant(0),
    mostLbPerAc: mayCap ? fc.option(whole(400), { nil: null }) : fc.constant(null),
  });
}

/** The mix, or null where none is possible. Anything but a refusal fails the law. */
function mixOf(request: MixRequest): LeastCostMix | null {
  try {
    return leastCostMix(request);
  } catch (thrown) {
    if (thrown instanceof FormulaError && thrown.fault.kind === "refused") return null;
    throw thrown;
  }
}

/** Every condition on two rates x and y as a x + b y ≥ c. */
function conditionsOf({ nutrients: wanted, materials, totalLimitLbPerAc }: MixRequest, i: number, j: number) {
  const share = (material: number, nutrient: number) => (materials[material]?.analysisPct[nutrient] ?? 0) / 100;
  const most = (material: number) => materials[material]?.mostLbPerAc ?? null;
  return [
    [1, 0, 0],
    [0, 1, 0],
    ...(i === j ? [[0, -1, 0]] : []),
    ...wanted.map(({ needLbPerAc }, n) => [share(i, n), share(j, n), needLbPerAc]),
    ...wanted.flatMap(({ needLbPerAc, overshootLbPerAc }, n) =>
      overshootLbPerAc === null ? [] : [[-share(i, n), -share(j, n), -needLbPerAc - overshootLbPerAc]],
    ),
    ...(most(i) === null ? [] : [[-1, 0, -Number(most(i))]]),
    ...(most(j) === null ? [] : [[0, -1, -Number(most(j))]]),
    ...(totalLimitLbPerAc === null ? [] : [[-1, -1, -totalLimitLbPerAc]]),
  ] as [number, number, number][]; // built of threes
}

/** Least cost of any mix of one or two materials, by trying every corner; Infinity where none is possible. */
function bestOfPairs(request: MixRequest): number {
  let best = Infinity;
  request.materials.forEach((first, i) =>
    request.materials.slice(i).forEach((second, offset) => {
      const conditions = conditionsOf(request, i, i + offset);
      for (const [a, b, c] of conditions) {
        for (const [d, e, f] of conditions) {
          const determinant = a * e - b * d;
          if (Math.abs(determinant) < 1e-9) continue;
          const x = (c * e - b * f) / determinant;
          const y = (a * f - c * d) / determinant;
          if (!conditions.every(([p, q, r]) => p * x + q * y >= r - 1e-9)) continue;
          best = Math.min(best, (x * first.priceUsdPerTon + y * second.priceUsdPerTon) / 2000);
        }
      }
    }),
  );
  return best;
}

describe("leastCostMix, for any request", () => {
  it("is never dearer than any mix of one or two materials, nor refused where such a mix exists", () => {
    fc.assert(
      fc.property(anyRequest({ mayCap: true }), (request) => {
        const best = bestOfPairs(request);
        const cost = mixOf(request)?.costUsdPerAc ?? Infinity;
        if (best < Infinity) expect(cost).toBeLessThanOrEqual(best + 1e-6);
        if (request.materials.length <= 2 && cost < Infinity) expect(Math.abs(cost - best)).toBeLessThanOrEqual(1e-6);
      }),
      { numRuns: 1500, seed: 41 },
    );
  });

  it("meets every need and keeps every limit to a millionth of a pound", () => {
    fc.assert(
      fc.property(anyRequest({ mayCap: true }), (request) => {
        const mix = mixOf(request);
        if (!mix) return;
        mix.nutrients.forEach(({ suppliedLbPerAc }, n) => {
          const { needLbPerAc = 0, overshootLbPerAc = null } = request.nutrients[n] ?? {};
          const bySum = mix.materials.reduce(
            (sum, { rateLbPerAc }, m) => sum + (rateLbPerAc * (request.materials[m]?.analysisPct[n] ?? 0)) / 100,
            0,
          );
          expect(suppliedLbPerAc).toBeCloseTo(bySum, 9);
          expect(bySum).toBeGreaterThanOrEqual(needLbPerAc - 1e-6);
          expect(bySum).toBeLessThanOrEqual(needLbPerAc + (overshootLbPerAc ?? Infinity) + 1e-6);
        });
        mix.materials.forEach(({ rateLbPerAc }, m) => {
          expect(rateLbPerAc).toBeGreaterThanOrEqual(0);
          expect(rateLbPerAc).toBeLessThanOrEqual((request.materials[m]?.mostLbPerAc ?? Infinity) + 1e-6);
        });
        expect(mix.totalLbPerAc).toBeLessThanOrEqual((request.totalLimitLbPerAc ?? Infinity) + 1e-6);
      }),
      { numRuns: 500, seed: 42 },
    );
  });

  it("costs in proportion to the prices", () => {
    fc.assert(
      fc.property(anyRequest({ mayCap: true }), fc.double({ min: 1e-6, max: 100, noNaN: true }), (request, times) => {
        const scaled = request.materials.map((one) => ({ ...one, priceUsdPerTon: one.priceUsdPerTon * times }));
        const cost = mixOf(request)?.costUsdPerAc;
        if (cost === undefined) return;
        const dearer = mixOf({ ...request, materials: scaled })?.costUsdPerAc ?? Number.NaN;
        expect(Math.abs(dearer - cost * times)).toBeLessThanOrEqual(1e-6 * Math.max(1, times));
      }),
      { numRuns: 500, seed: 43 },
    );
  });

  it("never gets cheaper when more is needed, where nothing caps the overshoot", () => {
    fc.assert(
      fc.property(anyRequest({ mayCap: false }), whole(3), whole(50), (request, at, more) => {
        const wanted = request.nutrients.map((one, n) =>
          n === at ? { ...one, needLbPerAc: one.needLbPerAc + more } : one,
        );
        const before = mixOf(request);
        const after = mixOf({ ...request, nutrients: wanted });
        if (!after) return;
        expect(before).not.toBeNull();
        expect(after.costUsdPerAc).toBeGreaterThanOrEqual((before?.costUsdPerAc ?? Number.NaN) - 1e-6);
      }),
      { numRuns: 500, seed: 44 },
    );
  });
});
