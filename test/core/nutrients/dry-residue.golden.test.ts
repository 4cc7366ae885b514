import { dryResidueLbPerBu, dryResidueTon } from "../../../src/core/nutrients/dry-residue";
import { dryResidue } from "../../../src/reference/nutrients";

const row = (crop: string) => {
  const found = dryResidue.find((each) => each.crop === crop);
  if (!found) throw new Error(`no residue row for ${crop}`);
  return found;
};

describe("dry residue per bushel", () => {
  it("is 47.3 lb for corn at one to one (University of Illinois)", () => {
    expect(Math.abs(dryResidueLbPerBu(row("corn")) - 47.3)).toBeLessThanOrEqual(0.05);
  });
  it("is 51.9 lb for wheat at one to one (University of Illinois)", () => {
    expect(Math.abs(dryResidueLbPerBu(row("wheat")) - 51.9)).toBeLessThanOrEqual(0.05);
  });
  it("follows the harvest index for soybean: 60 × 0.87 × 0.58 / 0.42 = 72.09 lb", () => {
    expect(dryResidueLbPerBu(row("soybean"))).toBeCloseTo(72.0857, 3);
  });
  it("is 4.732 ton/ac behind 200 bu of corn: 200 × 47.32 / 2000", () => {
    expect(dryResidueTon(row("corn"), 200)).toBeCloseTo(4.732, 9);
  });
});
