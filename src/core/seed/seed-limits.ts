import type { Limit } from "../limit";
import { limits } from "../limits";

/** Accepted ranges of seeding and stand quantities. Small grains set the ceilings, sugar beet and corn the floors. */
export const seedLimits = {
  targetStand: { min: 1000, max: 3_000_000, unit: "plants/ac", slip: 0.001 },
  seedRate: { min: 1000, max: 6_000_000, unit: "seeds/ac", slip: 0.001 },
  germination: limits.germination,
  fieldSurvival: { min: 1, max: 100, unit: "%", slip: 0.01 },
  rowWidth: limits.rowWidth,
  acres: limits.acres,
  seedsPerUnit: { min: 1000, max: 50_000_000, unit: "seeds/unit", slip: 0.001 },
  unitPrice: { min: 0, max: 100_000, unit: "$/unit" },
  treatmentPerUnit: { min: 0, max: 100_000, unit: "$/unit" },
  fractionOfAcre: { min: 0.000_01, max: 1, unit: "of an acre" },
  plantCount: { min: 0, max: 100_000, unit: "plants" },
  feetCounted: { min: 0.1, max: 10_000, unit: "ft" },
} as const satisfies Record<string, Limit>;
