import fc from "fast-check";
import { practiceDecision } from "../../../src/core/practices/practice-decision";
import { practiceOdds } from "../../../src/core/practices/practice-odds";
import { practiceTestValue } from "../../../src/core/practices/practice-test-value";
import { practiceUpdate } from "../../../src/core/practices/practice-update";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const range = fc
  .tuple(number(-10, 10), number(0, 15), number(0, 15), fc.constantFrom("triangular" as const, "pert" as const))
  .map(([low, up, over, shape]) => ({
    lowGainBuPerAc: low,
    likelyGainBuPerAc: low + up,
    highGainBuPerAc: low + up + over,
    shape,
  }));

const stake = fc.record({
  gainBuPerAc: number(-20, 20),
  gainErrorBuPerAc: number(0, 20),
  costUsdPerAc: number(0, 60),
  priceUsdPerBu: number(0.5, 15),
  acres: number(0, 3000),
  seasons: fc.integer({ min: 1, max: 5 }),
});

describe("odds", () => {
  it("fall, or stay, as the cost rises, and rise with the price", () => {
    fc.assert(
      fc.property(
        range,
        number(0, 60),
        number(0, 60),
        number(1, 10),
        number(1, 10),
        (gains, one, other, price, dearer) => {
          const at = (costUsdPerAc: number, priceUsdPerBu: number) =>
            practiceOdds({ ...gains, costUsdPerAc, priceUsdPerBu }).chance;
          expect(at(Math.max(one, other), price)).toBeLessThanOrEqual(at(Math.min(one, other), price) + 1e-12);
          expect(at(one, price)).toBeLessThanOrEqual(at(one, price + dearer) + 1e-12);
        },
      ),
    );
  });
});

describe("a belief after a trial", () => {
  const trial = fc.tuple(number(-15, 30), number(0.1, 20));
  it("lies between the belief before and the trial, and is surer than either", () => {
    fc.assert(
      fc.property(range, trial, number(0, 10), (gains, [trialGainBuPerAc, trialErrorBuPerAc], seasonSdBuPerAc) => {
        const { before, after } = practiceUpdate({
          ...gains,
          trialGainBuPerAc,
          trialErrorBuPerAc,
          seasonSdBuPerAc,
          costUsdPerAc: null,
          priceUsdPerBu: null,
          confidencePct: 90,
        });
        expect(after.meanBuPerAc).toBeGreaterThanOrEqual(Math.min(before.meanBuPerAc, trialGainBuPerAc) - 1e-9);
        expect(after.meanBuPerAc).toBeLessThanOrEqual(Math.max(before.meanBuPerAc, trialGainBuPerAc) + 1e-9);
        expect(after.sdBuPerAc).toBeLessThanOrEqual(
          Math.min(before.sdBuPerAc, Math.hypot(trialErrorBuPerAc, seasonSdBuPerAc)) + 1e-9,
        );
      }),
    );
  });
});

describe("the worth of a trial", () => {
  it("is never below 0 and never above certainty", () => {
    fc.assert(
      fc.property(stake, number(0, 50), (one, trialErrorBuPerAc) => {
        const { valueUsd, certaintyUsd } = practiceTestValue({ ...one, trialErrorBuPerAc, seasonSdBuPerAc: 0 });
        expect(valueUsd).toBeGreaterThanOrEqual(0);
        expect(valueUsd).toBeLessThanOrEqual(certaintyUsd * (1 + 1e-9) + 1e-9);
      }),
    );
  });
  it("falls as the trial grows less precise or seasons differ more", () => {
    fc.assert(
      fc.property(stake, number(0, 50), number(0, 50), number(0, 50), (one, error, other, still) => {
        const least = Math.min(error, other);
        const most = Math.max(error, other);
        const at = (trialErrorBuPerAc: number, seasonSdBuPerAc: number) =>
          practiceTestValue({ ...one, trialErrorBuPerAc, seasonSdBuPerAc }).valueUsd;
        expect(at(most, still)).toBeLessThanOrEqual(at(least, still) * (1 + 1e-9) + 1e-9);
        expect(at(still, most)).toBeLessThanOrEqual(at(still, least) * (1 + 1e-9) + 1e-9);
      }),
    );
  });
  it("is the mean of what decisions after simulated trials return over the decision without one", () => {
    // Quantiles of the posterior mean stand for the trials: 20,000 equally likely ones.
    const { gainBuPerAc, gainErrorBuPerAc, trialErrorBuPerAc } = {
      gainBuPerAc: 3,
      gainErrorBuPerAc: 4,
      trialErrorBuPerAc: 3,
    };
    const net = (gain: number) => 4.5 * gain - 18;
    const move = gainErrorBuPerAc ** 2 / Math.hypot(gainErrorBuPerAc, trialErrorBuPerAc);
    const steps = 20_000;
    let sum = 0;
    for (let step = 0; step < steps; step++) {
      // Midpoints of a fine grid over ± 8 SD, weighed by the normal curve.
      const z = -8 + (16 * (step + 0.5)) / steps;
      sum += Math.max(0, net(gainBuPerAc + z * move)) * Math.exp((-z * z) / 2) * (16 / steps);
    }
    const expected = 100 * (sum / Math.sqrt(2 * Math.PI) - Math.max(0, net(gainBuPerAc)));
    const { valueUsd } = practiceTestValue({
      gainBuPerAc,
      gainErrorBuPerAc,
      trialErrorBuPerAc,
      costUsdPerAc: 18,
      priceUsdPerBu: 4.5,
      acres: 100,
      seasons: 1,
      seasonSdBuPerAc: 0,
    });
    expect(valueUsd).toBeCloseTo(expected, 3);
  });
});

describe("a decision", () => {
  it("never tests on more acres than there are, and names acres only with a test", () => {
    fc.assert(
      fc.property(
        range,
        number(0, 60),
        number(0, 300),
        fc.option(number(0, 500)),
        (gains, costUsdPerAc, acres, pairCostUsd) => {
          const found = practiceDecision({
            ...gains,
            costUsdPerAc,
            priceUsdPerBu: 4.5,
            acres,
            seasons: 1,
            pairAcres: 1,
            seasonSdBuPerAc: 0,
            pairCostUsd,
            pairSdBuPerAc: pairCostUsd === null ? null : 8,
          });
          expect(found.testAcres).toBeLessThanOrEqual(acres);
          expect(found.pairs > 0).toBe(found.decision === "test");
          if (found.decision === "adopt") expect(found.odds.meanNetUsdPerAc).toBeGreaterThan(0);
          if (found.decision === "skip") expect(found.odds.meanNetUsdPerAc).toBeLessThanOrEqual(0);
        },
      ),
    );
  });
});
