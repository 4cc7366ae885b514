import type { PickPractice, PickRequest } from "../../../src/core/practices/pick-request";

/** A request of named practices as [name, cost, gain], with nothing else asked. */
export function pickRequest(
  practices: readonly (readonly [string, number, number])[],
  rest: Partial<PickRequest> = {},
): PickRequest {
  return {
    practices: practices.map(([name, costUsdPerAc, gainBuPerAc]): PickPractice => ({
      name,
      costUsdPerAc,
      gainBuPerAc,
    })),
    priceUsdPerBu: 4.5,
    budgetUsdPerAc: 60,
    excludes: [],
    requires: [],
    mostPractices: null,
    interaction: "additive",
    currentYieldBuPerAc: null,
    attainableYieldBuPerAc: null,
    factors: null,
    pairGains: [],
    ...rest,
  };
}

/** Made-up gains and costs; the answers are worked by hand where they are used. */
export const five = [
  ["stabilizer", 14, 4.2],
  ["fungicide", 24, 7.5],
  ["starter", 18, 4.6],
  ["sulfur", 9, 3.6],
  ["micronutrients", 12, 1.5],
] as const;
