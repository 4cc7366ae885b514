import { practicePick, type PracticePick } from "../../../src/core/practices/practice-pick";
import { faultOf } from "../fault-of";
import { five, pickRequest } from "./pick-cases";

const picked = (pick: PracticePick) => pick.practices.filter(({ isPicked }) => isPicked).map(({ name }) => name);

describe("practicePick", () => {
  it("fills the standard ten-item knapsack of 165: 309 with items 1, 2, 3, 4 and 6", () => {
    const weights = [23, 31, 29, 44, 53, 38, 63, 85, 89, 82];
    const values = [92, 57, 49, 68, 60, 43, 67, 84, 87, 72];
    // At $1 a bushel a gain of value + weight nets the value.
    const items = weights.map((weight, index) => [String(index + 1), weight, weight + (values[index] ?? NaN)] as const);
    const pick = practicePick(pickRequest(items, { priceUsdPerBu: 1, budgetUsdPerAc: 165 }));
    expect(pick.netUsdPerAc).toBeCloseTo(309, 9);
    expect(picked(pick)).toEqual(["1", "2", "3", "4", "6"]);
  });
  it("takes stabilizer, fungicide and sulfur for $47: 15.3 bu × 4.50 - 47 = 21.85", () => {
    const pick = practicePick(pickRequest(five));
    expect(picked(pick)).toEqual(["stabilizer", "fungicide", "sulfur"]);
    expect([pick.costUsdPerAc, pick.gainBuPerAc, pick.netUsdPerAc]).toEqual(
      [47, 15.3, 21.85].map((one) => expect.closeTo(one, 9)),
    );
  });
  it("goes to starter when stabilizer and sulfur overlap by 1.5 bu: 15.7 × 4.50 - 51 = 19.65", () => {
    const pick = practicePick(pickRequest(five, { pairGains: [{ first: 0, second: 3, extraBuPerAc: -1.5 }] }));
    expect(picked(pick)).toEqual(["fungicide", "starter", "sulfur"]);
    expect(pick.netUsdPerAc).toBeCloseTo(19.65, 9);
  });
});

describe("how gains come together", () => {
  const two = [
    ["drain", 20, 20],
    ["nitrogen", 10, 10],
  ] as const;
  it("multiplicative: 100 × (1.2 × 1.1 - 1) = 32", () => {
    const pick = practicePick(pickRequest(two, { interaction: "multiplicative", currentYieldBuPerAc: 100 }));
    expect(pick.gainBuPerAc).toBeCloseTo(32, 9);
  });
  it("diminishing in a gap of 40: 40 × (1 - 0.5 × 0.75) = 25", () => {
    const pick = practicePick(
      pickRequest(two, { interaction: "diminishing", currentYieldBuPerAc: 160, attainableYieldBuPerAc: 200 }),
    );
    expect(pick.gainBuPerAc).toBeCloseTo(25, 9);
  });
  it("law of the minimum: drainage allows 150 and nitrogen 160, so both reach min(170, 170) = 170, a gain of 20", () => {
    const factors = [
      { name: "water", ceilingBuPerAc: 150, practices: [0] },
      { name: "nitrogen", ceilingBuPerAc: 160, practices: [1] },
    ];
    const pick = practicePick(pickRequest(two, { interaction: "minimum", factors }));
    expect(pick.gainBuPerAc).toBeCloseTo(20, 9);
    // Without drainage nitrogen adds nothing, so that drainage adds all 20: 90 - 20 and the 10 for nitrogen.
    expect(pick.practices[0]?.addsUsdPerAc).toBeCloseTo(70, 9);
  });
  it("law of the minimum: what is not limiting is not bought", () => {
    const factors = [
      { name: "water", ceilingBuPerAc: 200, practices: [0] },
      { name: "nitrogen", ceilingBuPerAc: 150, practices: [1] },
    ];
    const pick = practicePick(pickRequest(two, { interaction: "minimum", factors }));
    expect(picked(pick)).toEqual(["nitrogen"]);
    expect(pick.practices[0]?.reason).toEqual({ kind: "noGain" });
  });
});

describe("rules of the set", () => {
  it("two that exclude each other: the better one, and the other says why", () => {
    const pick = practicePick(pickRequest(five, { excludes: [[1, 3]] }));
    expect(picked(pick)).toEqual(["stabilizer", "fungicide", "starter"]);
    expect(pick.practices[3]?.reason).toEqual({ kind: "excluded", by: "fungicide" });
  });
  it("a practice that needs a losing one comes with it when the two together pay", () => {
    // micronutrients lose 5.25, fungicide nets 9.75: together 4.50.
    const pick = practicePick(pickRequest([five[1], five[4]], { requires: [[0, 1]] }));
    expect(picked(pick)).toEqual(["fungicide", "micronutrients"]);
    expect(pick.netUsdPerAc).toBeCloseTo(4.5, 9);
  });
  it("and stays out when they do not, naming what it needs", () => {
    const pick = practicePick(pickRequest([five[2], five[4]], { requires: [[0, 1]] }));
    expect([pick.picked, pick.netUsdPerAc]).toEqual([0, 0]);
    expect(pick.practices[0]?.reason).toEqual({ kind: "missing", needs: "micronutrients" });
  });
  it("at most two: the two that net most", () => {
    const pick = practicePick(pickRequest(five, { mostPractices: 2 }));
    expect(picked(pick)).toEqual(["fungicide", "sulfur"]);
    expect(pick.practices[0]?.reason).toEqual({ kind: "numberReached" });
  });
  it("spends nothing where nothing pays", () => {
    expect(practicePick(pickRequest(five, { priceUsdPerBu: 1 }))).toMatchObject({ picked: 0, netUsdPerAc: 0 });
  });
});

describe("what is missing", () => {
  it.each([
    ["multiplicative", {}, "currentYield"],
    ["diminishing", { currentYieldBuPerAc: 160 }, "attainableYield"],
    ["minimum", {}, "ceilings"],
  ] as const)("%s gains wait for %j", (interaction, given, argument) => {
    const fault = faultOf(() => practicePick(pickRequest(five, { interaction, ...given })));
    expect(fault).toMatchObject({ kind: "waiting", argument });
  });
  it("a gain larger than the gap is refused by name", () => {
    const small = { interaction: "diminishing", currentYieldBuPerAc: 195, attainableYieldBuPerAc: 200 } as const;
    expect(faultOf(() => practicePick(pickRequest(five, small)))).toMatchObject({
      argument: "attainableYield",
      because: expect.stringContaining("fungicide alone gains 7.5 bu/ac, more than the 5"),
    });
  });
});
