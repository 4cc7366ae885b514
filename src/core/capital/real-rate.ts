import { within } from "../limit";
import { capitalLimits } from "./capital-limits";

/**
 * Rate with inflation taken off, for gains stated in the dollars of today.
 *
 *   (1 + rate) / (1 + inflation) - 1
 *
 * @param rate fraction a year, -0.5 to 1
 * @param inflation fraction a year, -0.5 to 1
 * @source time-value-of-money
 */
export function realRate(rate: number, inflation: number): number {
  within("rate", rate, capitalLimits.rate);
  within("inflation", inflation, capitalLimits.inflation);
  return (rate - inflation) / (1 + inflation);
}
