import { seedUnits } from "../../../src/reference/seed/seed-units";

describe("the trade's seed units", () => {
  it("are frozen: three rows, 420,000 seeds together", () => {
    expect(seedUnits.rows).toHaveLength(3);
    expect(seedUnits.rows.reduce((sum, row) => sum + row.seedsPerUnit, 0)).toBe(420_000);
  });
  it.each([
    ["corn", 80_000, "V"],
    ["soybean", 140_000, "V"],
    ["sunflower", 200_000, "M"],
  ])("a unit of %s is %i seeds, marked %s", (crop, seeds, mark) => {
    expect(seedUnits.rows.find((row) => row.crop === crop)).toMatchObject({ seedsPerUnit: seeds, mark });
  });
});
