import type { Limit } from "./limit";

/**
 * Accepted ranges of the quantities that several formulas share. Yield ceilings sit above published records, so
 * that only slips are refused.
 */
export const limits = {
  yieldAny: { min: 0, max: 1000, unit: "per ac" },
  soilPh: { min: 3.5, max: 9.5, unit: "", slip: 10 },
  bufferPh: { min: 5, max: 8, unit: "", slip: 10 },
  targetPh: { min: 4.5, max: 8, unit: "", slip: 10 },
  soilTestP: { min: 0, max: 500, unit: "ppm", slip: 2 },
  soilTestK: { min: 0, max: 1500, unit: "ppm", slip: 2 },
  soilTestAny: { min: 0, max: 3000, unit: "as the guide reports" },
  cec: { min: 1, max: 60, unit: "meq/100 g" },
  depth: { min: 1, max: 14, unit: "in" },
  moisture: { min: 0, max: 60, unit: "%", slip: 0.01 },
  forageMoisture: { min: 0, max: 90, unit: "%", slip: 0.01 },
  analysis: { min: 0.01, max: 100, unit: "%" },
  balance: { min: -10_000, max: 20_000, unit: "lb/ac" },
  lbPerPpm: { min: 1, max: 100, unit: "lb/ppm" },
  exchangeableAcidity: { min: 0, max: 30, unit: "meq/100 g" },
  limeTons: { min: 0, max: 40, unit: "ton/ac" },
  months: { min: 0, max: 1200, unit: "months" },
  limeQuality: { min: 1, max: 250, unit: "%", slip: 0.01 },
  neutralizingValue: { min: 1, max: 250, unit: "%", slip: 0.01 },
  germination: { min: 1, max: 100, unit: "%", slip: 0.01 },
  ratePounds: { min: 0, max: 20_000, unit: "lb/ac" },
  rowWidth: { min: 4, max: 60, unit: "in" },
  price: { min: 0, max: 1e9, unit: "$" },
  money: { min: -1e12, max: 1e12, unit: "$" },
  acres: { min: 0, max: 1e7, unit: "ac" },
  // Wide of what bushels have sold for and acres have brought: outside it a workbook is asked about, nothing is refused.
  grainPrice: { min: 0.5, max: 60, unit: "$/bu" },
  grainYield: { min: 1, max: 1000, unit: "bu/ac" },
  share: { min: 0, max: 100, unit: "%" },
  confidence: { min: 50, max: 99.9, unit: "%", slip: 0.01 },
  chance: { min: 0, max: 1, unit: "chance (0 to 1)" },
} as const satisfies Record<string, Limit>;
