import type { Limit } from "../limit";

/** Accepted ranges of what risk functions take besides yields, prices and costs. */
export const riskLimits = {
  correlation: { min: -1, max: 1, unit: "" },
  target: { min: -1e6, max: 1e6, unit: "$/ac" },
  /** Share of the worst years that are looked at. */
  tail: { min: 0.001, max: 0.5, unit: "of the years" },
  /** Absolute risk aversion; what it means hangs on the dollars it is used with. */
  riskAversion: { min: 0, max: 0.1, unit: "per $" },
  /** A loss is below 0. */
  outcome: { min: -1e9, max: 1e9, unit: "$" },
  chance: { min: 0, max: 1e9, unit: "" },
} as const satisfies Record<string, Limit>;
