import { refuseArgument } from "./fault";
import { within, type Limit } from "./limit";
import type { ThreePoints } from "./statistics/three-point";

/**
 * Refuses a lowest, likeliest and highest value outside their limit or out of order.
 *
 * @param what as the sheet ends the three names: "Yield" for lowYield, likelyYield and highYield
 */
export function threePointsWithin(what: string, { low, likely, high }: ThreePoints, limit: Limit): void {
  within(`low${what}`, low, limit);
  within(`likely${what}`, likely, limit);
  within(`high${what}`, high, limit);
  checkOrder(`low${what}`, low, `likely${what}`, likely, limit);
  checkOrder(`likely${what}`, likely, `high${what}`, high, limit);
}

function checkOrder(first: string, lower: number, second: string, higher: number, { unit }: Limit): void {
  if (lower <= higher) return;
  refuseArgument(first, `must not be above ${second} (${higher} ${unit}); got ${lower}.`);
}
