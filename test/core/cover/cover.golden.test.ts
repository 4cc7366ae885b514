import { contourFactor } from "../../../src/core/cover/contour-factor";
import { coverCount } from "../../../src/core/cover/cover-count";
import { coverFactor } from "../../../src/core/cover/cover-factor";
import { coverLeft } from "../../../src/core/cover/cover-left";
import { residueCover } from "../../../src/core/cover/residue-cover";
import { residuePounds } from "../../../src/core/cover/residue-pounds";
import { slopeFactor } from "../../../src/core/cover/slope-factor";
import { soilLoss } from "../../../src/core/cover/soil-loss";
import { tilledShare } from "../../../src/core/cover/tilled-share";

const usle = (lengthFt: number, steepnessPct: number) => slopeFactor({ lengthFt, steepnessPct }, "usle").factor;
const rusle = (lengthFt: number, steepnessPct: number) => slopeFactor({ lengthFt, steepnessPct }, "rusle").factor;

describe("Agriculture Handbook 537, slope factor", () => {
  it.each([
    [72.6, 9, 1.0, 0.01],
    [100, 5, 0.536, 0.0015],
    [400, 12, 3.61, 0.005],
  ])("%d ft at %d %% prints %d", (lengthFt, steepnessPct, printed, within) => {
    expect(Math.abs(usle(lengthFt, steepnessPct) - printed)).toBeLessThan(within);
  });
});

describe("Agriculture Handbook 703, slope factor", () => {
  it("is near 1 on the unit plot: 16.8 × sin(atan 0.09) - 0.50 = 1.0059", () => {
    expect(rusle(72.6, 9)).toBeCloseTo(1.0059, 3);
  });
  it("takes 3 sin^0.8 + 0.56 on slopes under 15 ft", () => {
    // sin 0.089638; sin^0.8 0.145209; 3 × that + 0.56 = 0.995626; β = 1.000421 / 0.995626 = 1.004816; m = β / (1 + β) = 0.501201;
    // (10 / 72.6)^0.501201 = 0.370252
    expect(rusle(10, 9)).toBeCloseTo(0.370252 * 0.995626, 5);
  });
});

describe("line-transect method", () => {
  it("45 marks of 100 are 45 %, give or take 1.96 √(0.45 × 0.55 / 100) = 9.75", () => {
    const count = coverCount({ hits: [45], points: [100], confidencePct: 95 });
    expect(count.coverPct).toBeCloseTo(45, 10);
    expect(count.lowPct).toBeCloseTo(35.249, 2);
    expect(count.highPct).toBeCloseTo(54.751, 2);
  });
});

describe("cover left after passes, 1992 estimates", () => {
  it("corn 95 % × 0.875 × 0.70 × 0.85 × 0.90 leaves 44.5 %", () => {
    const left = coverLeft({
      start: { crop: "corn" },
      passes: [
        { pass: "winterAfterFall" },
        { pass: "chiselStraight" },
        { pass: "cultivatorWide" },
        { pass: "planterDoubleDisk" },
      ],
      kind: null,
    });
    expect(left.coverPct.middle).toBeCloseTo(44.5, 1);
  });
  it("two field cultivations in spring and planting leave about 50 % (USDA photo guide, 1992)", () => {
    const left = coverLeft({
      start: { crop: "corn" },
      passes: [{ pass: "winterAfterFall" }, { keptPct: 80 }, { keptPct: 80 }, { pass: "planterDoubleDisk" }],
      kind: null,
    });
    expect(left.coverPct.middle).toBeCloseTo(47.88, 2); // 95 × 0.875 × 0.8 × 0.8 × 0.9
    expect(Math.abs(left.coverPct.middle - 50)).toBeLessThan(3);
  });
});

describe("mass and cover of corn residue, Agriculture Handbook 703", () => {
  it.each([
    [950, 30],
    [2400, 60],
    [6050, 90],
  ])("%i lb/ac cover about %i %%", (pounds, printed) => {
    expect(Math.abs(residueCover("corn", pounds).coverPct - printed)).toBeLessThan(0.5);
  });
  it("130 bu of corn leave about 7,300 lb and 40 bu of soybean 3,600", () => {
    expect(Math.round(residuePounds("corn", 130, "cover").residueLbPerAc / 100)).toBe(73);
    expect(residuePounds("soybean", 40, "cover").residueLbPerAc).toBe(3600);
  });
  it("baled: a ton of stover from 40 bu of corn, and about one from 30 bu of soybean", () => {
    expect(residuePounds("corn", 40, "baling").residueLbPerAc).toBe(2000);
    expect(Math.abs(residuePounds("soybean", 30, "baling").residueLbPerAc - 2000)).toBeLessThan(15);
  });
});

describe("soil loss", () => {
  it("R 175, K 0.32, 200 ft at 5 %, C 0.20, P 0.5: 4.24 ton/ac", () => {
    const { factor: practiceFactor } = contourFactor(5, 200);
    const loss = soilLoss({
      rain: 175,
      erodibility: 0.32,
      slopeFactor: usle(200, 5),
      coverFactor: 0.2,
      practiceFactor,
    });
    expect(loss.lossTonPerAc).toBeCloseTo(4.24, 2);
  });
  it.each([
    ["interrill", 47],
    ["typical", 35],
    ["rill", 22],
  ] as const)("30 %% cover where %s erosion rules leaves %i %% of the loss", (effect, printed) => {
    expect(Math.round(100 * coverFactor(30, effect).factor)).toBe(printed);
    expect(Math.round(coverFactor(30, "typical").ofBareSoilPct[effect])).toBe(printed);
  });
  it("ten tons are 0.07 inch (University of Missouri)", () => {
    const loss = soilLoss({ rain: 100, erodibility: 0.1, slopeFactor: 1, coverFactor: 1, practiceFactor: 1 });
    expect([loss.lossTonPerAc, loss.depthIn]).toEqual([10, 0.07]);
  });
});

it("an 8-in strip on 30-in rows disturbs 0.27 of the surface", () => {
  expect(tilledShare({ bandWidthIn: 8, rowWidthIn: 30 }).tilledPct).toBeCloseTo(27, 0);
});
