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
} as const satisfies Record<string, Limit>;
