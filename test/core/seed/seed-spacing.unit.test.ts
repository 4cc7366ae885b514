import { FormulaError } from "../../../src/core/fault";
import { seedSpacing } from "../../../src/core/seed/seed-spacing";

describe("seedSpacing", () => {
  it("32,000 seeds in 30-in rows stand 6.534 in apart: 12 × 17,424 / 32,000", () => {
    const spacing = seedSpacing({ seedsPerAc: 32_000, rowWidthIn: 30 });
    expect(spacing.rowFeetPerAc).toBe(17_424); // 522,720 / 30
    expect(spacing.spacingIn).toBeCloseTo(6.534, 10);
    expect(spacing.seedsPerFoot).toBeCloseTo(1.836_547, 6); // 32,000 / 17,424
  });
  it("140,000 soybeans in 15-in rows stand 2.987 in apart: 12 × 34,848 / 140,000", () => {
    expect(seedSpacing({ seedsPerAc: 140_000, rowWidthIn: 15 }).spacingIn).toBeCloseTo(2.986_971, 6);
  });
  it("refuses a rate in thousands and a row width in feet", () => {
    expect(() => seedSpacing({ seedsPerAc: 32, rowWidthIn: 30 })).toThrow(/"suggestion":"32000"/);
    expect(() => seedSpacing({ seedsPerAc: 32_000, rowWidthIn: 2.5 })).toThrow(FormulaError);
  });
});
