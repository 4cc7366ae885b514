import { cornEmergence, cornTemperatures, lateHybrid, leafPaces } from "../../../src/reference/seed/corn-heat";

describe("corn and heat", () => {
  it("is frozen as printed", () => {
    expect([cornTemperatures.base, cornTemperatures.cap]).toEqual([50, 86]);
    expect(cornEmergence.heatUnits).toBe(115);
    expect(leafPaces.map(({ key, toTenth, pastTenth }) => [key, toTenth, pastTenth])).toEqual([
      ["purdue", 82, 50],
      ["iowa", 84, 56],
    ]);
    expect([lateHybrid.heatUnitsPerDay, lateHybrid.from, lateHybrid.to]).toEqual([6.8, [5, 1], [6, 15]]);
  });
  it("was all seen in its source", () => {
    expect([cornTemperatures, cornEmergence, lateHybrid, ...leafPaces].every(({ mark }) => mark === "V")).toBe(true);
  });
});
