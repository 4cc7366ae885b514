import { spacingClasses, spacingLosses, toleratedSpread } from "../../../src/reference/seed/spacing-loss";

describe("losses by uneven corn spacing", () => {
  it("are frozen: four rows, 12.1 bu together (2.5 + 4 + 2.2 + 3.4)", () => {
    expect(spacingLosses.rows).toHaveLength(4);
    expect(spacingLosses.rows.reduce((sum, row) => sum + row.buPerAcPerIn, 0)).toBeCloseTo(12.1, 10);
  });
  it("keep what is from memory apart", () => {
    expect(spacingLosses.rows.filter(({ mark }) => mark === "M").map(({ key }) => key)).toEqual(["purdue"]);
    expect([toleratedSpread.mark, toleratedSpread.inches]).toEqual(["V", 2]);
    expect([spacingClasses.mark, spacingClasses.doubleUpTo, spacingClasses.skipAbove]).toEqual(["M", 0.5, 1.5]);
  });
});
