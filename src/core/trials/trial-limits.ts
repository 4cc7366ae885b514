import type { Limit } from "../limit";
import { limits } from "../limits";
import { refuseArgument } from "../fault";

/** Accepted ranges of trial quantities. */
export const trialLimits = {
  yield: { min: 0, max: 10_000, unit: "bu/ac" },
  gain: { min: -10_000, max: 10_000, unit: "bu/ac" },
  gainToSee: { min: 0.01, max: 1000, unit: "bu/ac", slip: -1 },
  stripSd: { min: 0.01, max: 1000, unit: "bu/ac", slip: -1 },
  standardError: { min: 0.001, max: 10_000, unit: "bu/ac", slip: -1 },
  blocks: { min: 2, max: 1000, unit: "blocks" },
  layoutBlocks: { min: 2, max: 100, unit: "blocks" },
  treatments: { min: 2, max: 50, unit: "treatments" },
  confidence: limits.confidence,
  power: { min: 10, max: 99, unit: "%", slip: 0.01 },
  seed: { min: 0, max: 1e9, unit: "" },
  position: { min: -1e6, max: 1e6, unit: "" },
  weight: { min: 0.1, max: 1e6, unit: "lb" },
  feet: { min: 10, max: 20_000, unit: "ft" },
  width: { min: 1, max: 200, unit: "ft" },
  price: { min: 0, max: 10_000, unit: "$/bu" },
  cost: { min: 0, max: 1e6, unit: "$/ac", slip: -1 },
  trendShare: { min: 0, max: 100, unit: "%" },
} as const satisfies Record<string, Limit>;

/** Refuses a count with a part behind the point. */
export function wholeNumber(argument: string, value: number): void {
  if (!Number.isInteger(value)) refuseArgument(argument, `must be a whole number; got ${value}.`);
}
