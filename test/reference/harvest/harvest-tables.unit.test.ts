import { grains } from "../../../src/reference/grain";
import { cornGrades, dryerEnergy, fuelHeat, gasPerPoint, handlingLoss } from "../../../src/reference/harvest/drying";
import {
  bushelOf,
  earLoss,
  lossCounts,
  lossCrops,
  lossTargets,
  seedsPerPound,
} from "../../../src/reference/harvest/loss-crops";
import { cornEquilibrium, grainPeaks, safeMoistures, storageTimes } from "../../../src/reference/harvest/storage";
import {
  cornEstimateSpread,
  headCounts,
  kernelsPerBushel,
  podCounts,
  soybeanSeedsPerPound,
} from "../../../src/reference/harvest/yield-counts";
import { sources } from "../../../src/reference/sources";

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const valued = [
  kernelsPerBushel,
  cornEstimateSpread,
  soybeanSeedsPerPound,
  podCounts,
  headCounts,
  handlingLoss,
  gasPerPoint,
  dryerEnergy,
  fuelHeat,
  cornGrades,
];
const all = [
  ...valued,
  earLoss,
  lossCounts,
  lossTargets,
  seedsPerPound,
  storageTimes,
  safeMoistures,
  cornEquilibrium,
  grainPeaks,
];

describe("harvest tables", () => {
  it.each(all)("name a mark and a known source on every row: $title", ({ rows }) => {
    for (const row of rows) {
      expect(["V", "M"]).toContain(row.mark);
      expect(Object.keys(sources)).toContain(row.source);
    }
  });
  it.each([
    [kernelsPerBushel, 3, 285_000],
    [cornEstimateSpread, 1, 20],
    [soybeanSeedsPerPound, 3, 9000],
    [podCounts, 2, 2502.5],
    [headCounts, 7, 16_030.4436],
    [handlingLoss, 1, 0.5],
    [gasPerPoint, 5, 0.095],
    [dryerEnergy, 3, 7341],
    [fuelHeat, 3, 95_912],
    [cornGrades, 2, 110],
  ])("are frozen: $title", ({ rows }, count, total) => {
    expect(rows).toHaveLength(count);
    expect(sum(rows.map(({ value }) => value))).toBeCloseTo(total, 9);
  });
  it("freeze the seeds of a lost bushel: 18 rows that add up to 734.5, and two counts of a pound", () => {
    expect(lossCounts.rows).toHaveLength(18);
    expect(sum(lossCounts.rows.map((row) => row.seedsPerSqFtPerBu))).toBe(734.5);
    expect(seedsPerPound.rows.map((row) => row.seedsPerLb)).toEqual([16_000, 18_000]);
  });
  it("freeze the storage times: 45 + 10 + 3 rows of 17,726 + 1,045 + 402 days", () => {
    const of = (table: string) => storageTimes.rows.filter((row) => row.table === table).map(({ days }) => days);
    expect([of("midwest").length, of("ndsu").length, of("arkansas").length]).toEqual([45, 10, 3]);
    expect([sum(of("midwest")), sum(of("ndsu")), sum(of("arkansas"))]).toEqual([17_726, 1045, 402]);
  });
  it("know a bushel, or that there is none, for every crop whose loss is counted", () => {
    expect(Object.keys(bushelOf)).toEqual(Object.keys(lossCrops));
    for (const grain of Object.values(bushelOf)) if (grain !== null) expect(grains).toHaveProperty(grain);
    const counted = [...lossCounts.rows, ...seedsPerPound.rows].map((row): string => row.crop);
    expect(counted.sort()).toEqual(Object.keys(lossCrops).sort());
  });
  it("freeze what is left: targets, peaks, storage moistures, the equilibrium constants", () => {
    expect(lossTargets.rows.map(({ lowPct, highPct }) => [lowPct, highPct])).toEqual([
      [3, 5],
      [3, 3],
      [3, 3],
    ]);
    expect(grainPeaks.rows.map((row) => row.shareOfRadius)).toEqual([0.4, 0.5, 0.47]);
    expect(safeMoistures.rows.map((row) => row.moisturePct)).toEqual([15.5, 14, 13]);
    expect(cornEquilibrium.rows[0]).toMatchObject({ scale: 312.4, moistureFactor: 0.16958, temperatureShiftC: 30.205 });
    expect(earLoss.rows[0]).toMatchObject({ earLb: 0.75, fractionOfAcre: 0.01 });
  });
});
