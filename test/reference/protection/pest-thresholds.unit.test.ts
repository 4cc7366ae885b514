import { pestGrowth, pestThresholds, type ThresholdRow } from "../../../src/reference/protection/pest-thresholds";
import { pests, pestStages } from "../../../src/reference/protection/pests";
import { stageOrder } from "../../../src/core/protection/crop-stage";

const rows: readonly ThresholdRow[] = pestThresholds.rows;

describe("the pest thresholds", () => {
  it("are frozen: 71 rows, 5 of them marked M", () => {
    expect(rows).toHaveLength(71);
    expect(rows.filter(({ mark }) => mark === "M").map(({ pest, low }) => [pest, low])).toEqual([
      ["soybeanAphid", 674],
      ["stinkBugs", 40],
      ["grasshoppers", 8],
      ["cerealAphids", 12],
      ["cerealLeafBeetle", 3],
    ]);
  });
  it("run from low to high, with what is left alone below both", () => {
    for (const { low, high, leaveAt } of rows) {
      expect(low).toBeGreaterThan(0);
      expect(high).toBeGreaterThanOrEqual(low);
      if (leaveAt !== undefined) expect(leaveAt).toBeLessThan(low);
    }
  });
  it("hold every pest, and stages whose codes are stages", () => {
    expect(new Set(rows.map(({ pest }) => pest))).toEqual(new Set(Object.keys(pests)));
    expect(new Set(rows.map(({ stage }) => stage))).toEqual(new Set(Object.keys(pestStages)));
    for (const stage of Object.values(pestStages)) {
      if (!("first" in stage)) continue;
      expect(stageOrder(stage.first)).toBeDefined();
      expect(stageOrder(stage.last)).toBeGreaterThanOrEqual(stageOrder(stage.first) ?? Number.NaN);
    }
  });
  // A second typing of some, by hand.
  it.each([
    ["soybeanAphid", "r1ToR5", "north-central states", 250, 250],
    ["defoliation", "r3ToR5", "Ohio", 10, 10],
    ["beanLeafBeetle", "v2On", "Illinois", 39, 39],
    ["stinkBugs", "r1ToR4", "North Carolina", 52, 52],
    ["blackCutworm", "toV5", "Delaware", 2, 5],
    ["cerealLeafBeetle", "bootOn", "New Jersey", 0.5, 1],
    ["greenbug", "boot", "Alberta", 10, 25],
    ["armyworm", "milk", "Tennessee", 6, 8],
    ["potatoLeafhopper", "from7In", "Delaware", 100, 100],
  ])("%s at %s in %s: %d to %d", (pest, stage, region, low, high) => {
    expect(rows.find((row) => row.pest === pest && row.stage === stage && row.region === region)).toMatchObject({
      low,
      high,
    });
  });
  it("know one doubling time: soybean aphid, 6.8 days, from memory", () => {
    expect(pestGrowth.rows).toMatchObject([{ pest: "soybeanAphid", doublingDays: 6.8, mark: "M" }]);
  });
});
