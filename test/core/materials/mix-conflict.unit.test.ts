import { leastCostMix } from "../../../src/core/materials/least-cost-mix";
import type { MixRequest } from "../../../src/core/materials/mix-request";
import { faultOf } from "../fault-of";
import { request } from "./mix-under-test";

const because = (asked: MixRequest) => faultOf(() => leastCostMix(asked));
const nAndP = [
  ["N", 20, 0],
  ["P2O5", 60],
] as const;

describe("a mix that cannot be", () => {
  it("names a nutrient that nothing holds", () => {
    const asked = request(
      [
        ["N", 50],
        ["S", 10],
      ],
      [["urea", 500, [46, 0]]],
    );
    expect(because(asked)).toEqual({
      kind: "refused",
      argument: "needs",
      because: "S cannot be met: none of the materials holds any, and 10 lb/ac is needed.",
    });
  });

  it("names a nutrient out of reach within the limits, and the most there is of it: 100 × 0.60", () => {
    const asked = request(
      [
        ["N", 50],
        ["K2O", 90],
      ],
      [
        ["urea", 500, [46, 0]],
        ["potash", 420, [0, 60], 0, 100],
      ],
    );
    expect(because(asked)).toMatchObject({
      because: "K2O cannot be met: within the limits the materials supply at most 60 of the 90 lb/ac needed.",
    });
  });

  it("names a nutrient that the least rates alone overshoot: 100 × 0.46 against 20 + 5", () => {
    const asked = request([["N", 20, 5]], [["urea", 500, [46], 100]]);
    expect(because(asked)).toMatchObject({
      because: "N cannot be kept to 25 lb/ac: the least rates alone bring 46.",
    });
  });

  it("names the pair that clashes: 60 lb P2O5 from DAP bring 23.5 lb N where 20 are the most", () => {
    expect(because(request(nAndP, [["DAP", 700, [18, 46]]]))).toMatchObject({
      argument: "needs",
      because:
        "N and P2O5 can each be met alone but not together: allow more overshoot, loosen a limit or add a material.",
    });
  });

  it("leaves a third need that has no part in the clash unnamed", () => {
    const asked = request(
      [["K2O", 30], ...nAndP],
      [
        ["DAP", 700, [0, 18, 46]],
        ["potash", 420, [60, 0, 0]],
      ],
    );
    expect(because(asked)).toMatchObject({ because: expect.stringMatching(/^N and P2O5 can each/) });
  });

  it("names three that clash only together: 100 lb in all hold two of three needs of 40", () => {
    const asked = request(
      [
        ["N", 40],
        ["P2O5", 40],
        ["K2O", 40],
      ],
      [
        ["n", 1, [100, 0, 0]],
        ["p", 1, [0, 100, 0]],
        ["k", 1, [0, 0, 100]],
      ],
      { totalLimitLbPerAc: 100 },
    );
    expect(because(asked)).toMatchObject({
      because: expect.stringMatching(/^N, P2O5 and K2O cannot all be met together, though any fewer of them can/),
    });
  });

  it("says when the limits clash among themselves", () => {
    const least = [["potash", 420, [0, 60], 100]] as const;
    const needs = [
      ["N", 0],
      ["K2O", 10],
    ] as const;
    expect(because(request(needs, least, { saltLimitLbPerAc: 8 }))).toEqual({
      kind: "refused",
      argument: "limits",
      because: "the least rates alone put on more N + K2O than saltLimit allows.",
    });
    expect(because(request(needs, least, { totalLimitLbPerAc: 80 }))).toMatchObject({
      because: "the least rates alone weigh more than totalLimit allows.",
    });
  });

  it.each([
    ["a least above its most", request([["N", 1]], [["urea", 500, [46], 90, 80]]), "limits"],
    ["more than 100 % of a material", request([["N", 1], ["S", 1]], [["odd", 500, [60, 60]]]), "analyses"], // prettier-ignore
    ["a nutrient twice", request([["N", 1], ["N", 1]], [["urea", 500, [46, 46]]]), "needs"], // prettier-ignore
    ["a ragged analysis", request([["N", 1], ["S", 1]], [["urea", 500, [46]]]), "analyses"], // prettier-ignore
    ["salt without potash", request([["N", 1]], [["urea", 500, [46]]], { saltLimitLbPerAc: 8 }), "saltLimit"],
    ["a need that is no number", request([["N", Number.NaN]], [["urea", 500, [46]]]), "needs"],
    ["a price below 0", request([["N", 1]], [["urea", -1, [46]]]), "prices"],
  ] as const)("refuses %s", (_what, asked, argument) => {
    expect(because(asked)).toMatchObject({ kind: expect.stringMatching(/^(refused|outOfRange)$/), argument });
  });
  it("refuses limits out of range, with one or both of them given", () => {
    const limits = [[-1], [20_001], [0, -1], [0, 20_001]] as readonly (readonly [number, number?])[];
    for (const given of limits) {
      const asked = request([["N", 1]], [["urea", 500, [46], ...given]]);
      expect(because(asked)).toMatchObject({ kind: "outOfRange", argument: "limits" });
    }
    expect(because(request([["N", 1, -1]], [["urea", 500, [46]]]))).toMatchObject({ argument: "overshoot" });
  });
  it("waits for materials", () => {
    expect(because(request([["N", 1]], []))).toEqual({ kind: "waiting", argument: "analyses" });
  });
});
