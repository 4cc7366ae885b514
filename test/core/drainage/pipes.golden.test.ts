import { leastGrade, pipeCapacity, pipeSize } from "../../../src/core/drainage/pipe-capacity";
import { acresAt, cubicFootPerSecondPerAcreInch, diameterFor } from "../../../src/core/drainage/pipe-flow";
import { tileCost, tileLength } from "../../../src/core/drainage/tile-cost";
import { roughnesses, stockSizesIn } from "../../../src/reference/drainage/pipes";
import { faultOf } from "../fault-of";
import cells from "./pipe-cells.json";

/**
 * Worked by another program (Python) from Manning's equation: diameter in, n, grade %, velocity ft/s, flow cu ft/s, acres
 * at 1/4 and at 3/8 in/day.
 */
describe("pipeCapacity, every cell of the acres table", () => {
  it.each(cells)("%d in, n %d, %d %%", (diameterIn, manningN, gradePct, velocity, flow, quarter, threeEighths) => {
    const at = (rateInPerDay: number) => pipeCapacity({ diameterIn, gradePct, rateInPerDay, wall: { manningN } });
    expect(Math.abs(at(0.25).velocityFtPerS - velocity)).toBeLessThanOrEqual(0.000_51);
    expect(Math.abs(at(0.25).flowCuFtPerS - flow)).toBeLessThanOrEqual(0.000_051);
    expect(Math.abs(at(0.25).acres - quarter)).toBeLessThanOrEqual(0.0501);
    expect(Math.abs(at(0.375).acres - threeEighths)).toBeLessThanOrEqual(0.0501);
  });
  it("takes the roughness of single-wall tubing by its size: 0.015 to 8 in, 0.017 to 12, 0.020 beyond", () => {
    const of = (diameterIn: number) =>
      pipeCapacity({ diameterIn, gradePct: 0.2, rateInPerDay: 0.375, wall: { pipe: "singleWall" } }).manningN;
    expect([3, 4, 8, 9, 10, 12, 15, 24].map(of)).toEqual([0.015, 0.015, 0.015, 0.017, 0.017, 0.017, 0.02, 0.02]);
  });
  it("says when the water runs too slow, just clean, or fast enough to wash soil in", () => {
    const verdict = (diameterIn: number, gradePct: number) =>
      pipeCapacity({ diameterIn, gradePct, rateInPerDay: 0.375, wall: { manningN: 0.015 } }).verdict;
    expect(verdict(4, 0.05)).toMatch(/^too slow/); // 0.423 ft/s
    expect(verdict(4, 0.2)).toContain("no fine sand or silt"); // 0.845
    expect(verdict(6, 0.5)).toBe("fast enough to keep itself clean"); // 1.751
    expect(verdict(8, 2)).toContain("sand and sandy loam"); // 3.000 × sqrt 2 = 4.24
    expect(verdict(8, 2)).not.toContain("silt loam");
  });
});

describe("pipeSize", () => {
  it("40 ac at 3/8 in a day and 0.2 %: 8.942 in at n 0.015, 9.372 in at the 0.017 of the 10-in pipe it takes", () => {
    expect(diameterFor(40 * 0.375 * cubicFootPerSecondPerAcreInch, 0.2, 0.015)).toBeCloseTo(8.942, 3);
    const size = pipeSize({ acres: 40, gradePct: 0.2, rateInPerDay: 0.375, wall: { pipe: "singleWall" } });
    expect(size.sizeIn).toBe(10);
    expect(size.exactIn).toBeCloseTo(9.372, 3);
  });
  it("tries every stock size for a roughness of one's own", () => {
    const need = { acres: 0.1, gradePct: 1, rateInPerDay: 0.375, wall: { manningN: 0.012 } };
    expect(pipeSize(need).sizeIn).toBe(stockSizesIn[0]);
  });
  it("starts at the smallest size on record for the pipe, and says when none is large enough", () => {
    const need = { acres: 0.1, gradePct: 1, rateInPerDay: 0.375 };
    expect(pipeSize({ ...need, wall: { pipe: "singleWall" } }).sizeIn).toBe(3);
    expect(pipeSize({ ...need, wall: { pipe: "tile" } }).sizeIn).toBe(4);
    const huge = { ...need, acres: 100_000, wall: { pipe: "singleWall" } as const };
    expect(faultOf(() => pipeSize(huge))).toMatchObject({ kind: "noSolution" });
  });
  it("knows no roughness of a 2-in tile", () => {
    const run = { diameterIn: 2, gradePct: 1, rateInPerDay: 0.375, wall: { pipe: "tile" } as const };
    expect(faultOf(() => pipeCapacity(run))).toMatchObject({ kind: "notPublished", where: `"${roughnesses.title}"` });
    expect(faultOf(() => pipeSize({ ...run, acres: 1, wall: { manningN: 0.1 } }))).toMatchObject({
      kind: "outOfRange",
      argument: "roughness",
    });
  });
});

describe("one inch a day on an acre", () => {
  it("is 0.042014 cu ft/s: 43,560 / 12 / 86,400", () => {
    expect(cubicFootPerSecondPerAcreInch).toBeCloseTo(0.042014, 6);
    expect(acresAt(0.042014, 1)).toBeCloseTo(1, 4);
  });
});

/** Printed in Wright and Sands (2001): inside diameter, n, then without and with fine sand or silt. */
describe("leastGrade, every cell of the Minnesota table", () => {
  it.each([
    [3, 0.015, 0.1, 0.81],
    [4, 0.015, 0.07, 0.55],
    [5, 0.015, 0.05, 0.41],
    [6, 0.015, 0.04, 0.32],
    [3, 0.013, 0.08, 0.6],
    [4, 0.013, 0.05, 0.41],
    [5, 0.013, 0.04, 0.3],
    [6, 0.013, 0.03, 0.24],
  ])("%d in, n %d: %d and %d %%", (diameterIn, manningN, clean, silty) => {
    const of = (sediment: "none" | "silt") => leastGrade(diameterIn, sediment, { manningN }).gradePct;
    // Two cells of tile are printed a unit of the last digit off: 0.605 as 0.60, 0.306 as 0.30.
    expect(Math.abs(of("none") - clean)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(of("silt") - silty)).toBeLessThanOrEqual(0.007);
  });
});

it("a grade of 0.1 % is a fall of 1.2 in in 100 ft, and cites the pipe and the speed it took", () => {
  const grade = leastGrade(4, "silt", { pipe: "singleWall" });
  expect(grade.fallInPer100Ft / grade.gradePct).toBeCloseTo(12, 12);
  expect(grade.cited).toEqual([expect.objectContaining({ pipe: "singleWall", manningN: 0.015 }), grade.velocity]);
});

describe("tile on an acre", () => {
  it.each([
    [15, 2904],
    [20, 2178],
    [25, 1742.4],
    [30, 1452],
    [40, 1089],
    [45, 968],
    [50, 871.2],
    [60, 726],
    [70, 622.3],
    [80, 544.5],
    [90, 484],
    [100, 435.6],
    [120, 363],
  ])("%d ft apart is %d ft", (spacingFt, feet) => {
    expect(tileLength(spacingFt)).toBeCloseTo(feet, 1);
  });
  const job = { spacingFt: 50, lateralUsdPerFt: 1.1, mainFt: 0, mainUsdPerFt: null, fixedUsd: 0, acres: null };
  it("at $0.50 for tubing and $0.60 to lay it: 871.2 × 1.10 = 958.32 $/ac", () => {
    expect(tileCost(job).costUsdPerAc).toBeCloseTo(958.32, 8);
    expect(tileCost(job).jobUsd).toBeNull();
  });
  it("waits for the acres and the price of a main", () => {
    expect(faultOf(() => tileCost({ ...job, fixedUsd: 500 }))).toEqual({ kind: "waiting", argument: "acres" });
    expect(faultOf(() => tileCost({ ...job, mainFt: 500, acres: 40 }))).toEqual({
      kind: "waiting",
      argument: "mainPrice",
    });
  });
});
