import { dryResidueLbPerBu } from "../../../src/core/nutrients/dry-residue";
import { dryResidue } from "../../../src/reference/nutrients";

const perBushel = (crop: string) => {
  const row = dryResidue.rows.find((each) => each.crop === crop);
  if (!row) throw new Error(`no residue row for ${crop}`);
  return dryResidueLbPerBu(row);
};

describe("dry residue per bushel", () => {
  it("is 47.3 lb for corn at one to one: 56 × 0.845 (University of Illinois)", () => {
    expect(Math.abs(perBushel("corn") - 47.3)).toBeLessThanOrEqual(0.05);
  });
  it("is 51.9 lb for wheat at one to one: 60 × 0.865 (University of Illinois)", () => {
    expect(Math.abs(perBushel("wheat") - 51.9)).toBeLessThanOrEqual(0.05);
    expect(perBushel("springWheat")).toBe(perBushel("wheat"));
  });
  it("follows the harvest index for soybean: 60 × 0.87 × 0.58 / 0.42 = 72.09 lb", () => {
    expect(perBushel("soybean")).toBeCloseTo(72.0857, 3);
  });
  it("is known for every crop with a row", () => {
    for (const row of dryResidue.rows) expect(dryResidueLbPerBu(row)).toBeGreaterThan(0);
  });
});
