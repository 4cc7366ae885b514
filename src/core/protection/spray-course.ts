import { within } from "../limit";
import { fluidOuncePerGallon, inchPerFoot, squareFootPerAcre } from "../units/units";
import { sprayLimits } from "./spray-limits";

export interface SprayCourse {
  readonly feet: number;
  readonly squareFeet: number;
}

/**
 * Course on which one nozzle sprays 1/128 acre, so that the fluid ounces caught in the time it takes are the
 * gallons per acre.
 *
 *   43,560 / 128 / (spacing / 12)      spacing or row width in inches
 *
 * @source lsu-ounces-gallons
 */
export function sprayCourse({ spacingIn }: { spacingIn: number }): SprayCourse {
  within("spacing", spacingIn, sprayLimits.spacing);

  const squareFeet = squareFootPerAcre / fluidOuncePerGallon;
  return { feet: (squareFeet * inchPerFoot) / spacingIn, squareFeet };
}
