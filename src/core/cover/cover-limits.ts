import type { Limit } from "../limit";
import { limits } from "../limits";

/** Accepted ranges of cover and erosion quantities. */
export const coverLimits = {
  cover: { min: 0, max: 100, unit: "%", slip: 0.01 },
  /** Of the cover before the pass. */
  kept: { min: 0, max: 100, unit: "%", slip: 0.01 },
  hits: { min: 0, max: 100_000, unit: "marks" },
  points: { min: 1, max: 100_000, unit: "marks" },
  confidence: limits.confidence,
  bandWidth: { min: 0, max: 60, unit: "in" },
  rowWidth: limits.rowWidth,
  yield: { min: 0, max: 1000, unit: "bu/ac" },
  residue: { min: 0, max: 40_000, unit: "lb/ac" },
  slopeLength: { min: 1, max: 1000, unit: "ft" },
  steepness: { min: 0, max: 60, unit: "%" },
  rain: { min: 0, max: 1000, unit: "R" },
  erodibility: { min: 0, max: 0.69, unit: "K", slip: 100 },
  slopeFactor: { min: 0, max: 100, unit: "LS" },
  coverFactor: { min: 0, max: 1, unit: "C" },
  practiceFactor: { min: 0, max: 1, unit: "P", slip: 100 },
  soilLoss: { min: 0, max: 10_000, unit: "ton/ac" },
  tolerance: { min: 0.1, max: 20, unit: "ton/ac" },
} as const satisfies Record<string, Limit>;
