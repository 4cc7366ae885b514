import type { Limit } from "../limit";
import { limits } from "../limits";

/** Accepted ranges of response curves. Rates run from pounds to seeds an acre; yields may be gains, and fall below 0. */
export const curveLimits = {
  rate: { min: 0, max: 1e7, unit: "per ac" },
  yield: { min: -1e6, max: 1e6, unit: "bu/ac" },
  parameter: { min: -1e12, max: 1e12, unit: "" },
  priceRatio: { min: 0, max: 1e6, unit: "bu per unit of input" },
  inputPrice: { min: 0, max: 1e6, unit: "$ per unit" },
  cropPrice: { min: 0, max: 10_000, unit: "$/bu" },
  shortfall: { min: 0, max: 1e6, unit: "$/ac" },
  confidence: limits.confidence,
} as const satisfies Record<string, Limit>;

/** Most pairs of rate and yield in one fit: each is looked at some hundred times. */
export const mostPairs = 1000;
