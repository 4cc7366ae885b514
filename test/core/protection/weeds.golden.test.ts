import { weedLoss } from "../../../src/core/protection/weed-loss";

describe("Alms and others 2016, volunteer soybean in corn", () => {
  it("4 plants in a square meter, slope 3.2 %, ceiling 56 %: 10.42 % lost", () => {
    const input = { slope: { slopePct: 3.2 }, ceilingPct: 56, daysAfterCrop: 0, fadePerDay: null };
    expect(weedLoss({ ...input, density: 4 }).lossPct).toBeCloseTo(10.42, 2);
  });
  it("the same by the weed's name", () => {
    const input = { ceilingPct: null, daysAfterCrop: 0, fadePerDay: null };
    expect(weedLoss({ ...input, slope: { curve: "volunteerSoybeanInCorn" }, density: 4 }).lossPct).toBeCloseTo(
      10.42,
      2,
    );
  });
});
