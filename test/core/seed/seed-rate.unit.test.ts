import { FormulaError } from "../../../src/core/fault";
import { seedRate } from "../../../src/core/seed/seed-rate";

const corn = { targetStandPerAc: 32_000, germinationPct: 95, fieldSurvivalPct: 95 };

describe("seedRate", () => {
  it("divides the stand by both shares: 32,000 / (0.95 × 0.95) = 35,457.06", () => {
    expect(seedRate(corn).seedsPerAc).toBeCloseTo(35_457.064, 3);
    expect(seedRate(corn).plantsPerSeedPct).toBeCloseTo(90.25, 10);
  });
  it("splits the loss: 5 % of 35,457.06 do not germinate, the rest is lost in the field", () => {
    const { deadSeedsPerAc, lostSeedlingsPerAc } = seedRate(corn);
    expect(deadSeedsPerAc).toBeCloseTo(1772.853, 3); // 35,457.064 × 0.05
    expect(lostSeedlingsPerAc).toBeCloseTo(1684.211, 3); // 35,457.064 × 0.95 - 32,000
  });
  it("plants the target itself when nothing is lost", () => {
    expect(seedRate({ ...corn, germinationPct: 100, fieldSurvivalPct: 100 }).seedsPerAc).toBe(32_000);
  });
  it("asks for a second look when fewer than half of the seeds stand: 0.70 × 0.70 = 0.49", () => {
    expect(seedRate({ ...corn, germinationPct: 70, fieldSurvivalPct: 70 }).isPoor).toBe(true);
    expect(seedRate({ ...corn, germinationPct: 72, fieldSurvivalPct: 70 }).isPoor).toBe(false);
  });
  it.each([
    ["targetStand", { ...corn, targetStandPerAc: 32 }],
    ["germination", { ...corn, germinationPct: 0 }],
    ["germination", { ...corn, germinationPct: 101 }],
    ["fieldSurvival", { ...corn, fieldSurvivalPct: Number.NaN }],
  ])("refuses a %s outside its range", (argument, input) => {
    expect(() => seedRate(input)).toThrow(FormulaError);
    expect(() => seedRate(input)).toThrow(new RegExp(`"argument":"${argument}"`));
  });
});
