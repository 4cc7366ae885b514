import type { Limit } from "../limit";
import { moneyLimits } from "../money/money-limits";

/** Accepted ranges of pest and weed quantities. */
export const pestLimits = {
  cost: moneyLimits.costPerAc,
  price: moneyLimits.price,
  yield: moneyLimits.yield,
  lossPerPest: { min: 0, max: 1000, unit: "bu/ac for one pest" },
  control: { min: 1, max: 100, unit: "%", slip: 0.01 },
  injuryLevel: { min: 0, max: 1e8, unit: "pests, as counted" },
  count: { min: 0, max: 1e8, unit: "pests, as counted" },
  growth: { min: 0, max: 500, unit: "% a day" },
  days: { min: 0, max: 365, unit: "days" },
  density: { min: 0, max: 1e6, unit: "weeds per area, as counted" },
  slope: { min: 0.0001, max: 10_000, unit: "% for one weed per area" },
  ceiling: { min: 0.1, max: 100, unit: "%", slip: 0.01 },
  daysAfterCrop: { min: -60, max: 200, unit: "days" },
  fade: { min: 0, max: 5, unit: "per day" },
} as const satisfies Record<string, Limit>;
