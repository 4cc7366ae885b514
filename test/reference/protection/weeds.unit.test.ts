import { weedCurveTable, weedFreePeriods, weedReports } from "../../../src/reference/protection/weeds";

describe("the weed tables", () => {
  it("are frozen: one curve, 17 reports, 13 weed-free rows", () => {
    expect(weedCurveTable.rows).toMatchObject([{ slopePct: 3.2, ceilingPct: 56, mark: "V" }]);
    expect(weedReports.rows).toHaveLength(17);
    expect(weedFreePeriods.rows).toHaveLength(13);
  });
  it("mark five reports and one weed-free row as from memory", () => {
    expect(weedReports.rows.filter(({ mark }) => mark === "M").map((row) => row.low)).toEqual([
      0.33, 0.66, 2, 3.33, 10,
    ]);
    expect(weedFreePeriods.rows.filter(({ mark }) => mark === "M")).toMatchObject([{ condition: "general advice" }]);
  });
  // A second typing of some, by hand.
  it.each([
    ["Palmer amaranth", 8, 78.7],
    ["waterhemp", 8, 56.2],
    ["redroot pigweed", 8, 38],
    ["giant foxtail", 5, 3],
    ["common cocklebur", 0.33, 18],
  ])("%s at %d: %d %%", (weed, density, loss) => {
    const found = weedReports.rows.find((row) => row.weed === weed && row.low === density);
    expect(found).toMatchObject({ lossLowPct: loss, lossHighPct: loss });
  });
  it.each([
    ["7.5-in rows", "V3"],
    ["30-in rows", "V1"],
    ["210 lb N/ac", "V6-V9"],
    ["residual herbicide", "V4-V10"],
  ])("%s: %s", (condition, stage) => {
    expect(weedFreePeriods.rows.find((row) => row.condition === condition)?.stage).toBe(stage);
  });
});
