import type { Limit } from "../limit";
import { limits } from "../limits";

/** Accepted ranges of drain depth, soil, water and pipe. */
export const drainageLimits = {
  drainDepth: { min: 1, max: 15, unit: "ft" },
  midwayTable: { min: 0, max: 15, unit: "ft" },
  conductivity: { min: 0.01, max: 500, unit: "ft/day" },
  drainRate: { min: 0.01, max: 6, unit: "in/day" },
  depthToBarrier: { min: 1, max: 200, unit: "ft" },
  radius: { min: 0.05, max: 18, unit: "in" },
  spacing: { min: 3, max: 5000, unit: "ft" },
  pricePerFoot: { min: 0, max: 10_000, unit: "$/ft" },
  mainFeet: { min: 0, max: 1e7, unit: "ft" },
  fixedCost: { min: 0, max: 1e9, unit: "$" },
  acresDrained: { min: 0.01, max: 1e6, unit: "ac" },
  acres: limits.acres,
  diameter: { min: 2, max: 72, unit: "in" },
  grade: { min: 0.01, max: 20, unit: "%" },
  roughness: { min: 0.008, max: 0.05, unit: "" },
} as const satisfies Record<string, Limit>;
