import { plantingDelay, type PlantingDelayInput } from "../../../src/core/seed/planting-delay";
import { faultOf } from "../fault-of";

/** Days since December 30, 1899 of days in May and June 2026. */
const may = (day: number) => 46_142 + day;
const june = (day: number) => 46_173 + day;
const delay = (over: Partial<PlantingDelayInput>) =>
  plantingDelay({ crop: "corn", plantedOn: may(15), region: "illinois", fullYieldBu: 200, ...over }).buPerAcPerDay;

describe("University of Illinois 2013, corn", () => {
  it.each([
    [1, 1],
    [10, 1],
    [11, 1.4],
    [20, 1.4],
    [21, 1.8],
    [30, 1.8],
  ])("May %i: 0.5, 0.7, then 0.9 % of 200 bu: %d", (day, lost) => {
    expect(delay({ plantedOn: may(day) })).toBeCloseTo(lost, 10);
  });
  it("waits for the yield, and ends with May 30", () => {
    expect(faultOf(() => delay({ fullYieldBu: null }))).toEqual({ kind: "waiting", argument: "yield" });
    expect(faultOf(() => delay({ plantedOn: may(31) }))).toMatchObject({
      kind: "notPublished",
      instead: "It runs from May 1 to May 30.",
    });
  });
});

describe("University of Wisconsin A117, corn, bushels a day on May 10, May 20 and June 1", () => {
  it.each([
    ["ashland", 0.9, 1.4, 2],
    ["spooner", 0, 0.8, 2],
    ["marshfield", 0.5, 1.5, 2.7],
    ["hancock", 0.9, 1.7, 2.7],
    ["arlington", 0.7, 1.3, 1.9],
    ["lancaster", 0.9, 0.9, 0.9],
  ] as const)("%s: %d, %d, %d", (region, first, second, third) => {
    const at = (plantedOn: number) => delay({ region, plantedOn, fullYieldBu: null });
    expect([at(may(10)), at(may(20)), at(june(1))]).toEqual([first, second, third]);
    expect(at(may(15))).toBeCloseTo((first + second) / 2, 10);
  });
});

describe("soybean by region", () => {
  it.each([
    ["illinois", june(15), 0.5],
    ["minnesota", may(25), 0.333],
    ["missouri", june(1), 3.5 / 7],
    ["missouriSouth", june(1), 2.6 / 7],
    ["virginia", june(20), 0.5],
    ["nebraskaGood", may(20), 0.63],
    ["nebraskaPoor", may(20), 0.25],
  ] as const)("%s", (region, plantedOn, lost) => {
    expect(delay({ crop: "soybean", region, plantedOn, fullYieldBu: null })).toBeCloseTo(lost, 10);
  });
  it("Minnesota, early June: a point a day, 0.6 of 60 bu", () => {
    expect(delay({ crop: "soybean", region: "minnesota", plantedOn: june(5), fullYieldBu: 60 })).toBeCloseTo(0.6, 10);
  });
  it("names the regions that know the crop", () => {
    expect(faultOf(() => delay({ crop: "soybean", region: "arlington" }))).toMatchObject({
      instead: expect.stringContaining("Minnesota, Missouri, south Missouri"),
    });
    expect(faultOf(() => delay({ crop: "wheat" }))).toMatchObject({ instead: "Corn and soybean have figures." });
  });
});
