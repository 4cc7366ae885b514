import { practiceDecision, type PracticeDecisionInput } from "../../../src/core/practices/practice-decision";
import { practiceUpdate } from "../../../src/core/practices/practice-update";
import { faultOf } from "../fault-of";

/** 4, 6 or 8 bu/ac; $4.50. */
const given: PracticeDecisionInput = {
  lowGainBuPerAc: 4,
  likelyGainBuPerAc: 6,
  highGainBuPerAc: 8,
  shape: "triangular",
  costUsdPerAc: 18,
  priceUsdPerBu: 4.5,
  acres: 100,
  seasons: 1,
  pairCostUsd: null,
  pairSdBuPerAc: null,
  pairAcres: 1,
  seasonSdBuPerAc: 0,
};

describe("practiceDecision without the cost of a trial", () => {
  it("adopts at 8 chances in 10: at $18 even the lowest gain pays", () => {
    expect(practiceDecision(given)).toMatchObject({ decision: "adopt", pairs: 0, testAcres: 0, strips: null });
  });
  it("skips at 2 in 10: at $33 it takes 7.33 bu, above which lies 0.667² / 8 = 0.056", () => {
    const found = practiceDecision({ ...given, costUsdPerAc: 33 });
    expect(found.decision).toBe("skip");
    expect(found.odds.chance).toBeCloseTo((8 - 33 / 4.5) ** 2 / 8, 9);
  });
  it("tests between, on 6 pairs: at $27 it takes the likeliest 6 bu", () => {
    expect(practiceDecision({ ...given, costUsdPerAc: 27, pairAcres: 1.5 })).toMatchObject({
      decision: "test",
      pairs: 6,
      testAcres: 9,
    });
  });
  it("tests on no more than the acres there are", () => {
    expect(practiceDecision({ ...given, costUsdPerAc: 27, acres: 4 }).testAcres).toBe(4);
  });
});

describe("practiceDecision with strips priced", () => {
  it("tests what is close to call on many acres, and decides at once on few", () => {
    const close = { ...given, costUsdPerAc: 26, pairCostUsd: 60, pairSdBuPerAc: 2 };
    expect(practiceDecision({ ...close, acres: 2000 }).decision).toBe("test");
    // 10 acres: certainty is worth 10 × 3.674 × L(0.272) = $10.2, less than two pairs cost.
    expect(practiceDecision({ ...close, acres: 10 })).toMatchObject({ decision: "adopt", pairs: 0 });
  });
  it("tests no longer where seasons differ so much that one of them says little", () => {
    // √(2² / n + 40²) > 40: a trial moves the mean by under 4.5 × 0.667 / 40 = $0.075/ac, far less than the $1 it nets.
    const close = { ...given, costUsdPerAc: 26, pairCostUsd: 60, pairSdBuPerAc: 2, acres: 2000 };
    expect(practiceDecision({ ...close, seasonSdBuPerAc: 40 })).toMatchObject({ decision: "adopt", pairs: 0 });
    expect(practiceDecision({ ...close, seasonSdBuPerAc: 1 }).strips?.best.valueUsd).toBeLessThan(
      practiceDecision(close).strips?.best.valueUsd ?? 0,
    );
  });
  it("waits for the other of cost and scatter", () => {
    expect(faultOf(() => practiceDecision({ ...given, pairCostUsd: 60 }))).toEqual({
      kind: "waiting",
      argument: "pairSd",
    });
    expect(faultOf(() => practiceDecision({ ...given, pairSdBuPerAc: 2 }))).toEqual({
      kind: "waiting",
      argument: "pairCost",
    });
  });
});

describe("beliefs refuse", () => {
  it("a low gain above the likely one and a likely one above the high one, naming both", () => {
    expect(faultOf(() => practiceDecision({ ...given, lowGainBuPerAc: 7 }))).toEqual({
      kind: "refused",
      argument: "lowGain",
      because: "must not be above likelyGain (6 bu/ac); got 7.",
    });
    expect(faultOf(() => practiceDecision({ ...given, highGainBuPerAc: 5 }))).toMatchObject({ argument: "likelyGain" });
  });
  it("a price of 0, at which nothing pays", () => {
    expect(faultOf(() => practiceDecision({ ...given, priceUsdPerBu: 0 }))).toMatchObject({ argument: "price" });
  });
  const certain = { ...given, lowGainBuPerAc: 6, highGainBuPerAc: 6, trialGainBuPerAc: 9, confidencePct: 90 };
  it("two certainties", () => {
    expect(faultOf(() => practiceUpdate({ ...certain, trialErrorBuPerAc: 0 }))).toMatchObject({
      argument: "trialError",
    });
  });
  it("but take one: a certain range stays, a certain trial replaces the range", () => {
    expect(practiceUpdate({ ...certain, trialErrorBuPerAc: 2 }).after).toMatchObject({
      meanBuPerAc: 6,
      sdBuPerAc: 0,
      chance: 1,
    });
    const after = practiceUpdate({ ...certain, lowGainBuPerAc: 0, trialErrorBuPerAc: 0 }).after;
    expect(after).toMatchObject({ meanBuPerAc: 9, sdBuPerAc: 0 });
  });
});
