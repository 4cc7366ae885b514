import type { Limit } from "../limit";
import { limits } from "../limits";

/** Accepted ranges for weighing practices. Gains are over doing nothing and may fall below 0. */
export const practiceLimits = {
  gain: { min: -1000, max: 1000, unit: "bu/ac" },
  gainError: { min: 0, max: 1000, unit: "bu/ac" },
  cost: { min: 0, max: 1e5, unit: "$/ac", slip: -1 },
  price: { min: 0, max: 10_000, unit: "$/bu" },
  budget: { min: 0, max: 1e6, unit: "$/ac" },
  acres: { min: 0, max: 1e7, unit: "ac" },
  seasons: { min: 1, max: 50, unit: "seasons" },
  stripCost: { min: 0, max: 1e6, unit: "$" },
  pairAcres: { min: 0.01, max: 1000, unit: "ac" },
  mostPairs: { min: 2, max: 60, unit: "pairs" },
  mostPractices: { min: 0, max: 100, unit: "practices" },
  yield: { min: 0, max: 10_000, unit: "bu/ac" },
  confidence: limits.confidence,
} as const satisfies Record<string, Limit>;
