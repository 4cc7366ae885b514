import { crops } from "../../src/reference/crops";
import { bushelWeights, grains, marketMoistures } from "../../src/reference/grain";
import { sources } from "../../src/reference/sources";

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe("trade bushel weights", () => {
  it("are frozen: 22 rows that add up to 1,169 lb", () => {
    expect(bushelWeights.rows).toHaveLength(22);
    expect(sum(bushelWeights.rows.map((row) => row.bushelWeightLb))).toBe(1169);
  });
  // Typed a second time, from the statute's own sentence and the USDA list.
  it.each([
    ["earCorn", 70],
    ["dryBean", 60],
    ["fieldPea", 60],
    ["wheat", 60],
    ["potato", 60],
    ["alfalfaSeed", 60],
    ["corn", 56],
    ["rye", 56],
    ["flax", 56],
    ["canola", 50],
    ["barley", 48],
    ["oat", 32],
    ["peanut", 22],
    ["soybean", 60],
    ["sorghum", 56],
    ["rice", 45],
  ] as const)("%s weighs %i lb", (grain, printed) => {
    expect(bushelWeights.rows.find((row) => row.grain === grain)?.bushelWeightLb).toBe(printed);
  });
  it("leave out what differs by state", () => {
    for (const grain of ["sunflower", "triticale"]) {
      expect(bushelWeights.rows.map((row): string => row.grain)).not.toContain(grain);
    }
  });
});

describe("market moistures", () => {
  it("are frozen: 14 rows that add up to 184.5", () => {
    expect(marketMoistures.rows).toHaveLength(14);
    expect(sum(marketMoistures.rows.map((row) => row.marketMoisturePct))).toBe(184.5);
  });
  it.each([
    ["corn", 15.5],
    ["soybean", 13],
    ["oat", 14],
    ["wheat", 13.5],
    ["barley", 14.5],
  ] as const)("%s is paid in full at %d %%, as the University of Wisconsin prints it", (grain, printed) => {
    expect(marketMoistures.rows.find((row) => row.grain === grain)?.marketMoisturePct).toBe(printed);
  });
});

describe("grains", () => {
  it("are the crops and a few more, under their own keys", () => {
    for (const key of Object.keys(crops)) expect(grains).toHaveProperty(key);
    expect(Object.keys(grains).length).toBe(Object.keys(crops).length + 5);
  });
  it.each([bushelWeights, marketMoistures])("each have one row, a mark and a known source: $title", ({ rows }) => {
    expect(new Set(rows.map((row) => row.grain)).size).toBe(rows.length);
    for (const row of rows) {
      expect(grains).toHaveProperty(row.grain);
      expect(Object.keys(sources)).toContain(row.source);
      expect(["V", "M"]).toContain(row.mark);
    }
  });
});
