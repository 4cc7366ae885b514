import { within } from "../limit";
import { fluidOuncePerGallon } from "../units/units";
import { inchMphMinutePerAcre } from "./nozzle-flow";
import { sprayLimits } from "./spray-limits";

export interface SprayVolumeInput {
  readonly flowGalPerMin: number;
  readonly speedMph: number;
  readonly spacingIn: number;
}

export interface SprayVolume {
  readonly volumeGalPerAc: number;
  readonly ouncesPerMin: number;
  readonly acresPerMinute: number;
}

/**
 * Spray that lands on an acre.
 *
 *   5,940 × gal/min / (mph × spacing)      spacing in inches
 *
 * @source ufl-sprayer-calibration
 */
export function sprayVolume({ flowGalPerMin, speedMph, spacingIn }: SprayVolumeInput): SprayVolume {
  within("flow", flowGalPerMin, sprayLimits.flow);
  within("mph", speedMph, sprayLimits.speed);
  within("spacing", spacingIn, sprayLimits.spacing);

  const acresPerMinute = (speedMph * spacingIn) / inchMphMinutePerAcre;
  return {
    volumeGalPerAc: flowGalPerMin / acresPerMinute,
    ouncesPerMin: flowGalPerMin * fluidOuncePerGallon,
    acresPerMinute,
  };
}
