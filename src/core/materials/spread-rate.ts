import { within } from "../limit";
import { squareFootPerAcre } from "../units/units";
import { materialLimits } from "./material-limits";

export interface SpreadRateInput {
  readonly caughtLb: number;
  /** Width that one pass covers: centre to centre of the driven passes, ft. */
  readonly swathFt: number;
  readonly distanceFt: number;
}

export interface SpreadRate {
  readonly rateLbPerAc: number;
  readonly areaSqFt: number;
  readonly areaAc: number;
}

/**
 * Rate of a dry spreader from what it put out over a measured run.
 *
 *   pounds × 43,560 / (swath × distance)      swath and distance in feet
 *
 * @source spreader-catch
 */
export function spreadRate({ caughtLb, swathFt, distanceFt }: SpreadRateInput): SpreadRate {
  within("poundsCaught", caughtLb, materialLimits.poundsCaught);
  within("swath", swathFt, materialLimits.swath);
  within("distance", distanceFt, materialLimits.distance);

  const areaSqFt = swathFt * distanceFt;
  const areaAc = areaSqFt / squareFootPerAcre;
  return { rateLbPerAc: caughtLb / areaAc, areaSqFt, areaAc };
}
