import type { Limit } from "../limit";

/** Accepted ranges of sulfur, micronutrient, chlorosis, cation and manure readings, and of soil sampling. */
export const soilLimits = {
  sulfateTest: { min: 0, max: 500, unit: "lb/ac or ppm, as the guide reads it" },
  microTest: { min: 0, max: 1000, unit: "as the guide reads it" },
  carbonate: { min: 0, max: 60, unit: "%" },
  salts: { min: 0, max: 30, unit: "dS/m" },
  calcium: { min: 0, max: 20_000, unit: "ppm" },
  magnesium: { min: 0, max: 5000, unit: "ppm" },
  potassium: { min: 0, max: 3000, unit: "ppm" },
  sodium: { min: 0, max: 10_000, unit: "ppm" },
  manureRate: { min: 0, max: 60, unit: "1,000 gal/ac or ton/ac", slip: 1000 },
  manureContent: { min: 0, max: 200, unit: "lb per 1,000 gal or ton" },
  yearsSince: { min: 0, max: 2, unit: "" },
  dryMatter: { min: 0, max: 100, unit: "%", slip: 0.01 },
  acresSampled: { min: 0.1, max: 1e6, unit: "ac" },
  acresPerSample: { min: 0.1, max: 1e6, unit: "ac per sample" },
  costPerSample: { min: 0, max: 10_000, unit: "$ per sample", slip: -1 },
  collecting: { min: 0, max: 1000, unit: "$/ac", slip: -1 },
  yearsServed: { min: 1, max: 20, unit: "years" },
} as const satisfies Record<string, Limit>;
