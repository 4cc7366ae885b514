import { FormulaError } from "../../../src/core/fault";
import { rowLength } from "../../../src/core/seed/row-length";
import { standCount } from "../../../src/core/seed/stand-count";

describe("standCount", () => {
  it("uses the thousandth of an acre when no length is given", () => {
    expect(standCount({ counts: [30], rowWidthIn: 30, feetCounted: null })).toMatchObject({
      plantsPerAc: 30_000,
      feetCounted: 17.424,
      plantsPerAcEach: 1000,
    });
  });
  it("40 plants on 20 ft of 30-in row: 40 × 17,424 / 20 = 34,848", () => {
    expect(standCount({ counts: [40], rowWidthIn: 30, feetCounted: 20 }).plantsPerAc).toBeCloseTo(34_848, 8);
  });
  it("shows the thinnest and the thickest place", () => {
    const stand = standCount({ counts: [24, 30, 33], rowWidthIn: 30, feetCounted: null });
    expect(stand).toMatchObject({ lowestPerAc: 24_000, highestPerAc: 33_000, meanCount: 29, counts: 3 });
  });
  it("takes an empty place for what it is", () => {
    expect(standCount({ counts: [0, 20], rowWidthIn: 30, feetCounted: null }).plantsPerAc).toBe(10_000);
  });
  it("refuses no counts, a negative count and no length", () => {
    expect(() => standCount({ counts: [], rowWidthIn: 30, feetCounted: null })).toThrow(FormulaError);
    expect(() => standCount({ counts: [-1], rowWidthIn: 30, feetCounted: null })).toThrow(FormulaError);
    expect(() => standCount({ counts: [30], rowWidthIn: 30, feetCounted: 0 })).toThrow(FormulaError);
  });
});

describe("rowLength", () => {
  it("30-in rows: 43.56 square feet / 2.5 ft = 17.424 ft, 17 ft 5 in on the tape", () => {
    expect(rowLength({ rowWidthIn: 30, fractionOfAcre: 0.001 })).toMatchObject({
      feet: 17.424,
      wholeFeet: 17,
      restInches: 5,
    });
  });
  it("never shows 12 in on the tape: 7-in rows, 1/1000 acre, 74.674 ft is 74 ft 8 in; 36-in rows, 14.52 ft is 14 ft 6 in", () => {
    expect(rowLength({ rowWidthIn: 7, fractionOfAcre: 0.001 })).toMatchObject({ wholeFeet: 74, restInches: 8 });
    expect(rowLength({ rowWidthIn: 36, fractionOfAcre: 0.001 })).toMatchObject({ wholeFeet: 14, restInches: 6 });
    // 522,720 / 20.1 / 1000 = 26.0060 ft; 522,720 / 20.106 / 1000 = 25.9982 ft, which rounds to 26 ft 0 in.
    expect(rowLength({ rowWidthIn: 20.106, fractionOfAcre: 0.001 })).toMatchObject({ wholeFeet: 26, restInches: 0 });
  });
  it("asks about a fraction typed upside down", () => {
    expect(() => rowLength({ rowWidthIn: 30, fractionOfAcre: 1000 })).toThrow(/"suggestion":"0.001"/);
    expect(() => rowLength({ rowWidthIn: 30, fractionOfAcre: 0 })).toThrow(FormulaError);
  });
});
