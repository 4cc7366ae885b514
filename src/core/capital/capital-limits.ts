import { refuseArgument } from "../fault";
import { within, type Limit } from "../limit";

/** Accepted ranges of investments. Rates are fractions a year: 8 % is 0.08. */
export const capitalLimits = {
  investment: { min: 0, max: 1e9, unit: "$", slip: -1 },
  /** What is left at the end; a price, so never below 0. */
  salvage: { min: 0, max: 1e9, unit: "$", slip: -1 },
  /** A loss is a gain below 0. */
  yearlyGain: { min: -1e9, max: 1e9, unit: "$/yr" },
  upkeep: { min: 0, max: 1e9, unit: "$/yr", slip: -1 },
  /** Below 0 only for rates with inflation taken off. */
  rate: { min: -0.5, max: 1, unit: "a year" },
  inflation: { min: -0.5, max: 1, unit: "a year" },
  taxRate: { min: 0, max: 0.9, unit: "of income" },
  years: { min: 1, max: 100, unit: "years" },
} as const satisfies Record<string, Limit>;

/** Guards a number of years in which money moves once a year. */
export function withinWholeYears(argument: string, years: number): void {
  within(argument, years, capitalLimits.years);
  if (!Number.isInteger(years)) {
    refuseArgument(argument, `must be whole years, for money that comes once a year; got ${years}.`);
  }
}
