import { contourFactor } from "../../../src/core/cover/contour-factor";
import { coverCount } from "../../../src/core/cover/cover-count";
import { coverLeft, type CoverPass } from "../../../src/core/cover/cover-left";
import { residueCover } from "../../../src/core/cover/residue-cover";
import { residuePounds } from "../../../src/core/cover/residue-pounds";
import { slopeFactor } from "../../../src/core/cover/slope-factor";
import { soilLoss, soilLossRatio } from "../../../src/core/cover/soil-loss";
import { tilledShare } from "../../../src/core/cover/tilled-share";
import { cropResidue } from "../../../src/reference/cover/crop-residue";
import { slopeMethods, unitPlot } from "../../../src/reference/cover/erosion";
import { residueClasses } from "../../../src/reference/cover/residue-kinds";
import { coverKept } from "../../../src/reference/cover/tillage-residue";
import { faultOf } from "../fault-of";

describe("coverLeft", () => {
  const disk: CoverPass = { pass: "tandemFinishing" };

  it("carries both ends of every range: 70 % soybean cover × 0.25 … 0.40", () => {
    const left = coverLeft({ start: { crop: "soybean" }, passes: [disk], kind: null });
    expect(left.kind).toBe("fragile");
    expect(left.coverPct.low).toBeCloseTo(17.5, 10);
    expect(left.coverPct.middle).toBeCloseTo(22.75, 10); // × 0.325
    expect(left.coverPct.high).toBeCloseTo(28, 10);
    expect(left.isConservation).toBe(false);
  });
  it("takes the kind that is named before that of the crop: thin wheat is fragile", () => {
    const thin = coverLeft({ start: { crop: "wheat" }, passes: [disk], kind: "fragile" });
    expect(thin.coverPct.middle).toBeCloseTo(85 * 0.325, 10);
  });
  it("takes a share of one's own and a pass that moves no soil", () => {
    const left = coverLeft({
      start: { coverPct: 60 },
      passes: [{ keptPct: 73 }, { pass: "untouched" }],
      kind: "fragile",
    });
    expect(left.coverPct).toEqual({ low: 43.8, middle: 43.8, high: 43.8 });
    expect(left.cited).toEqual([coverKept.untouched, residueClasses]);
  });
  it("counts 30 % as conservation tillage and less as not", () => {
    const at = (coverPct: number) => coverLeft({ start: { coverPct }, passes: [], kind: "fragile" }).isConservation;
    expect([at(30), at(29.9)]).toEqual([true, false]);
  });
  it("waits for the kind of residue when the cover was counted", () => {
    const fault = faultOf(() => coverLeft({ start: { coverPct: 60 }, passes: [disk], kind: null }));
    expect(fault).toEqual({ kind: "waiting", argument: "residueKind" });
  });
  it("has no usual cover for a crop the table is unsure of, and refuses a share past 100", () => {
    expect(faultOf(() => coverLeft({ start: { crop: "canola" }, passes: [], kind: null }))?.kind).toBe("notPublished");
    const fault = faultOf(() => coverLeft({ start: { coverPct: 60 }, passes: [{ keptPct: 101 }], kind: "fragile" }));
    expect(fault).toMatchObject({ kind: "outOfRange", argument: "passes", max: 100 });
  });
});

describe("coverCount", () => {
  it("adds lines up and shows the barest and the best: (30 + 45 + 15) / (50 + 50 + 50)", () => {
    const count = coverCount({ hits: [30, 45, 15], points: [50], confidencePct: 95 });
    expect([count.coverPct, count.lowestLinePct, count.highestLinePct]).toEqual([60, 30, 90]);
    expect(count.marks).toBe(150);
  });
  it("has a range even when no mark was hit: 1 - 0.025^(1/50) = 7.11 %", () => {
    const bare = coverCount({ hits: [0], points: [50], confidencePct: 95 });
    expect([bare.lowPct, bare.coverPct]).toEqual([0, 0]);
    expect(bare.highPct).toBeCloseTo(7.112, 2); // ln 0.025 = -3.68888; e^(-0.0737776) = 0.928878
    const full = coverCount({ hits: [50], points: [50], confidencePct: 95 });
    expect([full.highPct, full.lowPct + bare.highPct]).toEqual([100, 100]);
  });
  it("refuses more hits than marks, and lines without their marks", () => {
    expect(faultOf(() => coverCount({ hits: [51], points: [50], confidencePct: 95 }))?.kind).toBe("refused");
    expect(faultOf(() => coverCount({ hits: [5, 6, 7], points: [50, 50], confidencePct: 95 }))).toEqual({
      kind: "sizesDiffer",
      first: { argument: "hits", size: "3 lines" },
      second: { argument: "points", size: "2 lines" },
    });
  });
});

describe("residue", () => {
  it("says what its tables hold when asked for something else", () => {
    expect(faultOf(() => residuePounds("sunflower", 20, "cover"))).toMatchObject({
      kind: "notPublished",
      where: `"${cropResidue.title}"`,
    });
    expect(faultOf(() => residuePounds("oat", 80, "baling"))).toMatchObject({ kind: "notPublished" });
    expect(faultOf(() => residueCover("canola", 2000))).toMatchObject({ kind: "notPublished" });
  });
  it("tells the pounds that cover 30 %: -ln 0.7 / 0.00038 = 938.6", () => {
    expect(residueCover("corn", 2000).poundsForThirtyPct).toBeCloseTo(938.6, 1);
  });
});

describe("slopeFactor", () => {
  const exponent = (steepnessPct: number) => slopeFactor({ lengthFt: 200, steepnessPct }, "usle").exponent;

  it("changes the exponent of length at 1, 3.5 and 5 %", () => {
    expect([0.9, 1, 3.4, 3.5, 4.9, 5, 30].map(exponent)).toEqual([0.2, 0.3, 0.3, 0.4, 0.4, 0.5, 0.5]);
  });
  it("is 0.065 on level ground of 72.6 ft by USLE and 0.03 by RUSLE", () => {
    expect(slopeFactor({ lengthFt: 72.6, steepnessPct: 0 }, "usle").factor).toBeCloseTo(0.065, 12);
    expect(slopeFactor({ lengthFt: 72.6, steepnessPct: 0 }, "rusle").factor).toBeCloseTo(0.03, 12);
  });
  it("shows the other form beside it, cites its own, and tells slopes past 400 ft", () => {
    const slope = { lengthFt: 401, steepnessPct: 6 };
    expect(slopeFactor(slope, "usle").cited).toEqual([slopeMethods.usle, unitPlot]);
    expect(slopeFactor(slope, "usle").other.factor).toBe(slopeFactor(slope, "rusle").factor);
    expect(slopeFactor(slope, "rusle").other.factor).toBe(slopeFactor(slope, "usle").factor);
    expect([slopeFactor(slope, "usle").isLong, slopeFactor({ ...slope, lengthFt: 400 }, "usle").isLong]).toEqual([
      true,
      false,
    ]);
  });
});

describe("contourFactor", () => {
  it.each([
    [1, 0.6],
    [2.4, 0.6],
    [2.5, 0.5],
    [8, 0.5],
    [8.6, 0.6],
    [14, 0.7],
    [18, 0.8],
    [25, 0.9],
  ])("%d %% takes the row of its whole percent: %d", (steepnessPct, factor) => {
    expect(contourFactor(steepnessPct, null).factor).toBe(factor);
  });
  it("stops where the table stops and where a slope is too long", () => {
    for (const steepnessPct of [0.4, 26]) {
      expect(faultOf(() => contourFactor(steepnessPct, null))?.kind).toBe("notPublished");
    }
    expect(faultOf(() => contourFactor(4, 301))).toMatchObject({ kind: "refused", argument: "length" });
    expect(faultOf(() => contourFactor(4, 0))).toMatchObject({ kind: "outOfRange", argument: "length" });
    expect(contourFactor(4, 300).longestFt).toBe(300);
  });
});

describe("soil loss", () => {
  it("takes a share typed as a whole for K: 32 was 0.32", () => {
    const input = { rain: 175, erodibility: 32, slopeFactor: 1, coverFactor: 1, practiceFactor: 1 };
    expect(faultOf(() => soilLoss(input))).toMatchObject({ argument: "erodibility", suggestion: "0.32" });
  });
  it("does not take a percent of cover for C", () => {
    const input = { rain: 175, erodibility: 0.3, slopeFactor: 1, coverFactor: 30, practiceFactor: 1 };
    const fault = faultOf(() => soilLoss(input));
    expect(fault).toMatchObject({ argument: "cover", max: 1 });
    expect(fault).not.toHaveProperty("suggestion");
  });
  it("is compared with the tolerance: 8 over 5 is 1.6, to cut by 37.5 %", () => {
    expect(soilLossRatio(8, 5).ratio).toBeCloseTo(1.6, 12);
    expect(soilLossRatio(8, 5).cutPct).toBeCloseTo(37.5, 10);
    expect(soilLossRatio(4, 5).cutPct).toBe(0);
  });
  it("knows no years to an inch when nothing is lost", () => {
    const none = soilLoss({ rain: 175, erodibility: 0.3, slopeFactor: 1, coverFactor: 0, practiceFactor: 1 });
    expect([none.lossTonPerAc, none.yearsPerInch]).toEqual([0, null]);
  });
});

it("what a band leaves is the rest of the row: 10 of 40 in tills 25 % and leaves 75", () => {
  expect(tilledShare({ bandWidthIn: 10, rowWidthIn: 40 })).toEqual({ tilledPct: 25, untilledPct: 75 });
});

it("a band wider than its row is refused", () => {
  const fault = faultOf(() => tilledShare({ bandWidthIn: 31, rowWidthIn: 30 }));
  expect(fault).toMatchObject({ kind: "refused", argument: "bandWidth" });
});
