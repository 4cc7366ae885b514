import type { Limit } from "../limit";

/** Accepted ranges of temperatures and heat units, °F. */
export const heatLimits = {
  temperature: { min: -60, max: 135, unit: "°F" },
  base: { min: 20, max: 70, unit: "°F" },
  cap: { min: 60, max: 120, unit: "°F" },
  heatUnits: { min: 0, max: 10_000, unit: "heat units" },
  dailyHeatUnits: { min: 0, max: 80, unit: "heat units a day" },
  leaf: { min: 0, max: 22, unit: "leaves" },
  hybridNeed: { min: 1000, max: 4000, unit: "heat units" },
} as const satisfies Record<string, Limit>;
