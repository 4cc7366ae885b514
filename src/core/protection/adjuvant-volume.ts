import { within } from "../limit";
import { fluidOuncePerGallon, pctToFraction, quartPerGallon } from "../units/units";
import { sprayLimits } from "./spray-limits";

export interface AdjuvantVolume {
  readonly gallons: number;
  readonly quarts: number;
  readonly ounces: number;
}

/**
 * Adjuvant for a tank when the label gives percent by volume.
 *
 *   percent / 100 × gallons of spray
 *
 * @source tank-arithmetic
 */
export function adjuvantVolume({ volumePct, sprayGal }: { volumePct: number; sprayGal: number }): AdjuvantVolume {
  within("percentVolume", volumePct, sprayLimits.adjuvant);
  within("tankGallons", sprayGal, sprayLimits.tank);

  const gallons = pctToFraction(volumePct) * sprayGal;
  return { gallons, quarts: gallons * quartPerGallon, ounces: gallons * fluidOuncePerGallon };
}
