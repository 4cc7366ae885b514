import type { Limit } from "../limit";

/** Accepted ranges of what nitrogen, sulfur and micronutrient methods read. */
export const nitrogenLimits = {
  nitrate: { min: 0, max: 600, unit: "ppm or lb/ac, as the guide reads it" },
  organicMatter: { min: 0, max: 20, unit: "%" },
  credits: { min: 0, max: 1000, unit: "lb/ac" },
  nitrogenRate: { min: 0, max: 500, unit: "lb/ac" },
  priceN: { min: 0, max: 20, unit: "$/lb" },
  priceGrain: { min: 0, max: 500, unit: "$/bu" },
  plants: { min: 0, max: 60, unit: "plants/sq ft" },
  critical: { min: 5, max: 40, unit: "ppm" },
  linear: { min: -5, max: 20, unit: "bu/lb" },
  quadratic: { min: -1, max: 1, unit: "bu/lb²" },
  season: { min: 1, max: 2, unit: "" },
  regrowth: { min: 0, max: 60, unit: "in" },
  bushels: { min: 0, max: 300, unit: "bu/ac" },
} as const satisfies Record<string, Limit>;
