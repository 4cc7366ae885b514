import type { Interaction, PickRequest } from "../../../src/core/practices/pick-request";
import { practicePick } from "../../../src/core/practices/practice-pick";
import { setGain } from "../../../src/core/practices/set-gain";
import { faultOf } from "../fault-of";
import { five, pickRequest } from "./pick-cases";

const three = [
  ["drain", 20, 20],
  ["nitrogen", 10, 10],
  ["late", 5, -10],
] as const;
const all = [0, 1, 2];
const gainsOf = (interaction: Interaction, rest: Partial<PickRequest> = {}) =>
  setGain(pickRequest(three, { interaction, currentYieldBuPerAc: 160, attainableYieldBuPerAc: 200, ...rest }));
const near = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 9));

/* What a practice could still add decides how much of the search is spared: too much of it and nothing is. */
describe("the most that open practices could add", () => {
  it("additive: its own gain, with the chosen, and what open ones before it would lift", () => {
    const pairGains = [
      { first: 0, second: 1, extraBuPerAc: 3 },
      { first: 2, second: 0, extraBuPerAc: -2 },
      { first: 1, second: 2, extraBuPerAc: 1 },
    ];
    const gains = gainsOf("additive", { pairGains });
    expect(gains.most([0], [1, 2])).toEqual([10 + 3, -10 - 2 + 1]);
    expect(gains.most([], all)).toEqual([20, 10 + 3, -10 + 1]);
    expect(gains.gain(all)).toBe(20 + 2);
    expect(gains.mostInAll([], all)).toBe(Infinity);
  });
  it("multiplicative, 100 bu and factors 1.2, 1.1 and 0.9: on top of all that would rise", () => {
    const gains = gainsOf("multiplicative", { currentYieldBuPerAc: 100 });
    expect(gains.most([], all)).toEqual(near([100 * 1.1 * 0.2, 100 * 1.2 * 0.1, 0]));
    expect(gains.most([0], [1, 2])).toEqual(near([100 * 1.2 * 0.1, 0]));
    expect(gains.mostInAll([], all)).toBe(Infinity);
  });
  it("diminishing in a gap of 40: a loss of 10 widens what is left to 50", () => {
    const gains = gainsOf("diminishing");
    expect(gains.most([], all)).toEqual(near([50 * 0.5, 50 * 0.25, 0]));
    expect(gains.most([0], [1])).toEqual(near([20 * 0.25]));
    expect(gains.mostInAll([], all)).toBe(Infinity);
  });
  it("minimum: the gain alone, and in all no more than the lowest ceiling could rise", () => {
    const factors = [
      { name: "water", ceilingBuPerAc: 150, practices: [0, 2] },
      { name: "nitrogen", ceilingBuPerAc: 160, practices: [1] },
    ];
    const gains = gainsOf("minimum", { factors, attainableYieldBuPerAc: null });
    expect(gains.most([], all)).toEqual([20, 10, 0]);
    expect(gains.mostInAll([], all)).toBe(20);
    expect(gains.mostInAll([0], [1])).toBe(20);
    expect(gains.mostInAll([2], [0])).toBe(10);
    expect(gains.mostInAll([2], [1])).toBe(-10);
    expect(gainsOf("minimum", { factors, attainableYieldBuPerAc: 165 }).mostInAll([], all)).toBe(15);
  });
  it("is nothing where there is nothing to gain", () => {
    const closed = { interaction: "diminishing", currentYieldBuPerAc: 200, attainableYieldBuPerAc: 200 } as const;
    const gains = setGain(pickRequest([["none", 1, 0]], closed));
    expect([gains.gain([0]), ...gains.most([], [0])]).toEqual([0, 0]);
  });
});

/** The best net of whole-dollar costs within a whole-dollar budget, by filling a table dollar by dollar. */
function bestByTable(costs: readonly number[], nets: readonly number[], budget: number): number {
  const best = Array.from({ length: budget + 1 }, () => 0);
  costs.forEach((cost, item) => {
    for (let left = budget; left >= cost; left--)
      best[left] = Math.max(best[left] ?? 0, (best[left - cost] ?? 0) + (nets[item] ?? 0));
  });
  return best[budget] ?? 0;
}

describe("a pick out of twenty", () => {
  // At $1 a bushel a gain of cost + net nets the net.
  const request = (costs: readonly number[], nets: readonly number[], budgetUsdPerAc: number) =>
    pickRequest(
      costs.map((cost, index) => [`p${index}`, cost, cost + (nets[index] ?? NaN)] as const),
      { priceUsdPerBu: 1, budgetUsdPerAc },
    );
  const costs = [31, 10, 20, 19, 4, 3, 6, 28, 17, 23, 39, 27, 8, 14, 35, 12, 25, 33, 21, 9];
  const nets = [70, 20, 39, 37, 7, 5, 10, 61, 30, 44, 81, 50, 19, 25, 77, 21, 55, 64, 46, 13];

  it.each([40, 77, 120, 163, 200, 300])("is proved best within $%i", (budget) => {
    const pick = practicePick(request(costs, nets, budget));
    expect(pick.netUsdPerAc).toBeCloseTo(bestByTable(costs, nets, budget), 9);
    expect(pick.budgetLeftUsdPerAc).toBeCloseTo(budget - pick.costUsdPerAc, 9);
  });
  it("is the most there may be", () => {
    expect(faultOf(() => practicePick(request([...costs, 5], [...nets, 5], 100)))).toEqual({
      kind: "refused",
      argument: "costs",
      because: "takes at most 20 practices at once; got 21.",
    });
  });
});

describe("why a practice stays out", () => {
  it("of two sets that net the same the cheaper is picked", () => {
    const same = [
      ["dear", 20, 7.5],
      ["cheap", 10, 5],
    ] as const;
    const pick = practicePick(pickRequest(same, { priceUsdPerBu: 4, excludes: [[0, 1]] }));
    expect(pick.practices.map(({ isPicked }) => isPicked)).toEqual([false, true]);
    expect(pick.practices[0]?.reason).toEqual({ kind: "excluded", by: "cheap" });
  });
  it("adds nothing where its gain just pays its cost", () => {
    const pick = practicePick(pickRequest([["even", 9, 2]]));
    expect(pick).toMatchObject({ picked: 0, practices: [{ addsUsdPerAc: 0, reason: { kind: "noGain" } }] });
  });
  it("is $4 short in a budget that the better one leaves $14 of", () => {
    const pick = practicePick(pickRequest([five[1], five[2]], { budgetUsdPerAc: 38 }));
    expect(pick.practices[1]).toMatchObject({ isPicked: false, reason: { kind: "overBudget", shortUsdPerAc: 4 } });
    expect(pick).toMatchObject({ plainSumBuPerAc: 7.5, budgetLeftUsdPerAc: 14 });
  });
  it("meets a practice that excludes it from either side", () => {
    const pick = practicePick(pickRequest(five, { excludes: [[3, 1]] }));
    expect(pick.practices[3]?.reason).toEqual({ kind: "excluded", by: "fungicide" });
    expect(pick.practices[1]?.reason).toEqual({ kind: "picked" });
    expect(pick.practices[4]?.reason).toEqual({ kind: "noGain" });
  });
  it("refuses a yield of 0 to multiply, and figures out of range by their name", () => {
    const nothing = { interaction: "multiplicative", currentYieldBuPerAc: 0 } as const;
    expect(faultOf(() => practicePick(pickRequest(five, nothing)))).toMatchObject({
      kind: "refused",
      argument: "currentYield",
    });
    for (const [argument, rest] of [
      ["price", { priceUsdPerBu: -1 }],
      ["budget", { budgetUsdPerAc: -1 }],
      ["mostPractices", { mostPractices: -1 }],
    ] as const) {
      expect(faultOf(() => practicePick(pickRequest(five, rest)))).toMatchObject({ kind: "outOfRange", argument });
    }
    expect(faultOf(() => practicePick(pickRequest([["a", -1, 1]])))).toMatchObject({ argument: "costs" });
    expect(faultOf(() => practicePick(pickRequest([["a", 1, NaN]])))).toMatchObject({ argument: "gains" });
  });
});
