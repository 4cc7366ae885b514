import { within } from "../limit";
import { capitalLimits } from "./capital-limits";

/**
 * Share of an investment to earn each year so that it comes back with interest.
 *
 *   i (1+i)^n / ((1+i)^n - 1), and 1/n without interest
 *
 * @param rate fraction a year, -0.5 to 1
 * @param years 1 to 100, parts of a year too
 * @source time-value-of-money
 */
export function capitalRecoveryFactor(rate: number, years: number): number {
  return 1 / presentValueFactor(rate, years);
}

/**
 * Worth today of one dollar at the end of each year.
 *
 *   (1 - (1+i)^-n) / i, and n without interest
 *
 * @param rate fraction a year, -0.5 to 1
 * @param years 1 to 100, parts of a year too
 * @source time-value-of-money
 */
export function presentValueFactor(rate: number, years: number): number {
  within("rate", rate, capitalLimits.rate);
  within("years", years, capitalLimits.years);
  // expm1 and log1p keep every digit when the rate is nearly 0.
  return rate === 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate;
}
