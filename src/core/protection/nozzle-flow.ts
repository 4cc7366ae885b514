import { within } from "../limit";
import {
  fluidOuncePerGallon,
  footPerMinuteAtOneMph,
  inchPerFoot,
  secondPerMinute,
  squareFootPerAcre,
} from "../units/units";
import { sprayLimits } from "./spray-limits";

/** Acres a minute for one inch of spacing at one mile an hour, turned over: 43,560 × 12 / 88 = 5,940. */
export const inchMphMinutePerAcre = (squareFootPerAcre * inchPerFoot) / footPerMinuteAtOneMph;

export interface NozzleFlowInput {
  readonly volumeGalPerAc: number;
  readonly speedMph: number;
  /** Nozzle spacing; a band's width; the row width where several nozzles spray one row; a boomless swath. */
  readonly spacingIn: number;
}

export interface NozzleFlow {
  readonly flowGalPerMin: number;
  readonly ouncesPerMin: number;
  /** Seconds to fill a quart, for a check with a jar. */
  readonly secondsPerQuart: number;
  readonly acresPerHourEach: number;
}

/**
 * Flow that each nozzle (or group of nozzles on a row) has to give.
 *
 *   gal/ac × mph × spacing / 5,940      spacing in inches
 *
 * @source ufl-sprayer-calibration
 */
export function nozzleFlow({ volumeGalPerAc, speedMph, spacingIn }: NozzleFlowInput): NozzleFlow {
  within("gallonsPerAcre", volumeGalPerAc, sprayLimits.volume);
  within("mph", speedMph, sprayLimits.speed);
  within("spacing", spacingIn, sprayLimits.spacing);

  const acresPerMinute = (speedMph * spacingIn) / inchMphMinutePerAcre;
  const flowGalPerMin = volumeGalPerAc * acresPerMinute;
  return {
    flowGalPerMin,
    ouncesPerMin: flowGalPerMin * fluidOuncePerGallon,
    secondsPerQuart: secondPerMinute / (flowGalPerMin * 4),
    acresPerHourEach: acresPerMinute * 60,
  };
}
