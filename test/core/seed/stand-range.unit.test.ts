import { standEvenness } from "../../../src/core/seed/stand-evenness";
import { standRange } from "../../../src/core/seed/stand-range";
import { faultOf } from "../fault-of";

const range = (counts: readonly number[], withinPct = 5, confidencePct = 95) =>
  standRange({ counts, rowWidthIn: 30, feetCounted: null, confidencePct, withinPct });

describe("standRange", () => {
  it("asks for the fewest counts that are near enough: t printed 2.776, 2.447, 2.365, 2.306, 2.262 for 4, 6 to 9 df", () => {
    // CV 6.679 %: 9 counts give 2.306 × 6.679 / 3 = 5.13 %, 10 give 2.262 × 6.679 / 3.162 = 4.78 %.
    expect(range([28, 31, 30, 26, 29])).toMatchObject({ countsNeeded: 10, moreCounts: 5 });
    // Within 10 %: 4 counts give 3.182 × 6.679 / 2 = 10.6 %, 5 give 2.776 × 6.679 / 2.236 = 8.3 %.
    expect(range([28, 31, 30, 26, 29], 10)).toMatchObject({ countsNeeded: 5, moreCounts: 0 });
  });
  it("keeps the range at or above no plants and says so little of a bare field as can be said", () => {
    expect(range([0, 10]).lowPerAc).toBe(0);
    expect(range([0, 0, 0])).toMatchObject({ meanPerAc: 0, variationPct: null, moreCounts: null });
  });
  it("needs two counts", () => {
    expect(faultOf(() => range([30]))).toMatchObject({ kind: "tooFew", argument: "counts" });
    expect(faultOf(() => range([]))).toMatchObject({ kind: "waiting" });
  });
});

describe("standEvenness", () => {
  const evenness = (gapsIn: readonly number[], nominalIn: number | null = null, lossPerInch = 2.5) =>
    standEvenness({ gapsIn, lossPerInch: { buPerAcPerIn: lossPerInch }, toleratedIn: 2, nominalIn });
  it("costs nothing below the tolerated spread: SD of 6, 7 and 8 is 1", () => {
    expect(evenness([6, 7, 8])).toMatchObject({ sdIn: 1, lossBuPerAc: 0 });
  });
  it("puts half the nominal distance with the doubles and one and a half times it with the singles", () => {
    expect(evenness([3, 9, 9.1, 6], 6).shares).toEqual({ singlesPct: 50, doublesPct: 25, skipsPct: 25 });
  });
  it("rests on the usual figure only where that is asked for", () => {
    const usual = standEvenness({ gapsIn: [2, 12], lossPerInch: { key: "purdue" }, toleratedIn: null, nominalIn: 6 });
    expect(usual.cited.map(({ source }) => source)).toEqual(["purdue-spacing", "ssmg-37", "iso-7256-1"]);
    expect(evenness([2, 12]).cited).toEqual([]);
  });
  it("needs two gaps in inches", () => {
    expect(faultOf(() => evenness([6]))).toMatchObject({ kind: "tooFew", argument: "gaps" });
    expect(faultOf(() => evenness([6, 400]))).toMatchObject({ kind: "outOfRange", argument: "gaps" });
  });
});
