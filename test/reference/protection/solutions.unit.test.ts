import { solutionDensity, solutions } from "../../../src/reference/protection/solutions";

describe("the table of solutions", () => {
  it("is frozen: 14 rows, 142.15 lb/gal and 15.38 of factor together", () => {
    expect(solutionDensity.rows).toHaveLength(14);
    expect(solutionDensity.rows.reduce((sum, row) => sum + row.lbPerGal, 0)).toBeCloseTo(142.15, 10);
    expect(solutionDensity.rows.reduce((sum, row) => sum + row.printedFactor, 0)).toBeCloseTo(15.38, 10);
  });
  it.each([
    ["uan28", 10.65, 1.13],
    ["uan32", 11.06, 1.15],
    ["polyphosphate10", 11.4, 1.17],
    ["kerosene", 6.6, 0.89],
  ])("%s weighs %d lb/gal, factor %d", (solution, lbPerGal, printedFactor) => {
    expect(solutionDensity.rows.find((row) => row.solution === solution)).toMatchObject({ lbPerGal, printedFactor });
  });
  it("has a row for every name", () => {
    for (const key of Object.keys(solutions))
      expect(solutionDensity.rows.some((row) => row.solution === key)).toBe(true);
  });
});
