import { baledResidue, cropResidue } from "../../../src/reference/cover/crop-residue";
import { contourFactors, coverEffects, soilDepth } from "../../../src/reference/cover/erosion";
import { coverKept, type CoverKept } from "../../../src/reference/cover/tillage-residue";
import { sources } from "../../../src/reference/sources";

const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);
const passes: readonly CoverKept[] = Object.values(coverKept);

describe("cover that a pass keeps", () => {
  const published = passes.filter(({ source }) => source !== "no-soil-moved");

  it("is frozen: 73 printed rows with the sums of their four columns", () => {
    expect(published).toHaveLength(73);
    expect(sum(published.map(({ nonFragile }) => nonFragile[0]))).toBe(4335);
    expect(sum(published.map(({ nonFragile }) => nonFragile[1]))).toBe(5473);
    expect(sum(published.map(({ fragile }) => fragile[0]))).toBe(3293);
    expect(sum(published.map(({ fragile }) => fragile[1]))).toBe(4346);
  });
  it.each([
    ["moldboardPlow", [0, 10], [0, 5]],
    ["chiselStraight", [60, 80], [40, 60]],
    ["tandemFinishing", [40, 70], [25, 40]],
    ["cultivatorNarrow", [70, 80], [50, 60]],
    ["planterDoubleDisk", [85, 95], [75, 85]],
    ["winterAfterFall", [80, 95], [70, 80]],
    ["mulchTiller4", [50, 50], [33, 36]],
  ] as const)("%s keeps %j of non-fragile and %j of fragile cover", (key, nonFragile, fragile) => {
    expect(coverKept[key]).toMatchObject({ nonFragile, fragile });
  });
  it("runs from low to high within 0 and 100 %, fragile never above non-fragile", () => {
    for (const { label, nonFragile, fragile } of passes) {
      for (const [low, high] of [nonFragile, fragile]) {
        expect([label, 0 <= low && low <= high && high <= 100]).toEqual([label, true]);
      }
      expect([label, fragile[0] <= nonFragile[0] && fragile[1] <= nonFragile[1]]).toEqual([label, true]);
    }
  });
  it("has two winters, and every row of the 1992 list wants a look at the bulletin", () => {
    expect(passes.filter(({ isWinter }) => isWinter)).toHaveLength(2);
    expect(published.filter(({ mark }) => mark === "V")).toHaveLength(3); // the mulch tillers
  });
});

describe("residue by crop", () => {
  it("is frozen: six crops, 446 lb of residue and 495 % of cover together", () => {
    expect(cropResidue.rows).toHaveLength(6);
    expect(sum(cropResidue.rows.map(({ poundsPerBushel }) => poundsPerBushel))).toBe(446); // 56+56+90+102+78+64
    expect(sum(cropResidue.rows.map(({ coverPct }) => coverPct))).toBe(495); // 95+80+70+85+85+80
    expect(sum(cropResidue.rows.map(({ coverAcPerLb }) => coverAcPerLb))).toBeCloseTo(0.002_95, 9);
    expect(baledResidue.rows.map(({ poundsPerBushel }) => poundsPerBushel)).toEqual([50, 67, 52]);
  });
  it("prints a ton of stover for 40 bushels of corn and for 30 of soybean", () => {
    expect(2000 / 40).toBe(baledResidue.rows[0].poundsPerBushel);
    expect(Math.round(2000 / 30)).toBe(baledResidue.rows[1].poundsPerBushel);
  });
  it("computes no crop that the list is unsure of", () => {
    const crops: readonly string[] = cropResidue.rows.map(({ crop }) => crop);
    for (const unsure of ["barley", "rye", "sunflower", "canola", "dryBean"]) expect(crops).not.toContain(unsure);
  });
});

describe("erosion tables", () => {
  it("keep seven contour rows: factors 4.6, lengths 1,210 ft, no steepness twice", () => {
    expect(contourFactors.rows).toHaveLength(7);
    expect(sum(contourFactors.rows.map(({ factor }) => factor))).toBeCloseTo(4.6, 9); // 0.6+0.5+0.5+0.6+0.7+0.8+0.9
    expect(sum(contourFactors.rows.map(({ longestFt }) => longestFt))).toBe(1210);
    contourFactors.rows.slice(1).forEach((row, at) => {
      expect(row.fromPct).toBe((contourFactors.rows[at]?.toPct ?? 0) + 1);
    });
  });
  it("keep the three exponents of cover and the depth of ten tons", () => {
    expect(Object.values(coverEffects).map(({ exponentPerPct }) => exponentPerPct)).toEqual([0.035, 0.025, 0.05]);
    expect(soilDepth).toMatchObject({ tonPerAc: 10, depthIn: 0.07 });
  });
  it("cite publications that exist", () => {
    const cited = [...passes, ...cropResidue.rows, ...baledResidue.rows, ...contourFactors.rows];
    for (const { source } of cited) expect(sources).toHaveProperty([source]);
  });
});
