import type { Limit } from "../limit";

/** Accepted ranges of the materials family. */
export const materialLimits = {
  lbPerGal: { min: 4, max: 16, unit: "lb/gal" },
  poundsCaught: { min: 0, max: 50_000, unit: "lb" },
  swath: { min: 1, max: 200, unit: "ft" },
  distance: { min: 1, max: 20_000, unit: "ft" },
  /** 0 is a fair entry in a table of analyses. */
  analysisInTable: { min: 0, max: 100, unit: "%" },
  pricePerTon: { min: 0, max: 100_000, unit: "$/ton" },
  saltWithSeed: { min: 0, max: 500, unit: "lb/ac" },
} as const satisfies Record<string, Limit>;
