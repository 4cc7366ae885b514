import type { Limit } from "../limit";

/**
 * Accepted ranges of budget quantities. Amounts are typed as positive numbers: what they do to the result is said
 * by the argument they stand in, so a minus sign is a slip.
 */
export const moneyLimits = {
  amount: { min: 0, max: 1e12, unit: "$", slip: -1 },
  costPerAc: { min: 0, max: 1e6, unit: "$/ac", slip: -1 },
  price: { min: 0, max: 10_000, unit: "$/bu" },
  yield: { min: 0, max: 10_000, unit: "bu/ac" },
  costPerBushel: { min: 0, max: 1000, unit: "$/bu", slip: -1 },
  otherIncome: { min: 0, max: 1e6, unit: "$/ac" },
  /** Interest, a fraction a year. */
  rate: { min: 0, max: 1, unit: "a year" },
  months: { min: 0, max: 60, unit: "months", slip: -1 },
  /** Shares of a lease, fractions: 50 % is 0.5. */
  share: { min: 0, max: 1, unit: "of it" },
  rent: { min: 0, max: 1e5, unit: "$/ac", slip: -1 },
  gross: { min: 0, max: 1e8, unit: "$/ac", slip: -1 },
  landValue: { min: 0, max: 1e7, unit: "$/ac", slip: -1 },
  acres: { min: 0, max: 1e7, unit: "ac", slip: -1 },
  /** A margin may be a loss. */
  margin: { min: -1e6, max: 1e8, unit: "$/ac" },
  /** Return on the dollars of one more step, a fraction a season. */
  leastReturn: { min: 0, max: 2, unit: "a season" },
} as const satisfies Record<string, Limit>;
