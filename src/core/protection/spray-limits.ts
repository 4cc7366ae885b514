import type { Limit } from "../limit";
import { limits } from "../limits";

/** Accepted ranges of spraying quantities: from band sprayers and spot work to liquid fertilizer in wide swaths. */
export const sprayLimits = {
  volume: { min: 0.1, max: 1000, unit: "gal/ac" },
  speed: { min: 0.5, max: 40, unit: "mph" },
  /** The swath of a boomless nozzle counts as its spacing. */
  spacing: { min: 2, max: 1500, unit: "in" },
  flow: { min: 0.001, max: 500, unit: "gal/min" },
  feet: { min: 1, max: 50_000, unit: "ft" },
  seconds: { min: 0.5, max: 36_000, unit: "s" },
  pressure: { min: 0.5, max: 2000, unit: "psi" },
  weight: { min: 5, max: 20, unit: "lb/gal" },
  bandWidth: { min: 1, max: 120, unit: "in" },
  rowWidth: limits.rowWidth,
  rate: { min: 0, max: 1_000_000, unit: "per ac" },
  acres: limits.acres,
  tank: { min: 0.5, max: 20_000, unit: "gal" },
  activeRate: { min: 0, max: 1000, unit: "lb/ac" },
  concentration: { min: 0.001, max: 100, unit: "lb/gal or %" },
  activePerGallon: { min: 0.001, max: 15, unit: "lb/gal" },
  activePct: { min: 0.001, max: 100, unit: "%" },
  adjuvant: { min: 0, max: 50, unit: "%" },
} as const satisfies Record<string, Limit>;
