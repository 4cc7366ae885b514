import { within } from "../limit";
import { footPerMinuteAtOneMph, secondPerMinute } from "../units/units";
import { sprayLimits } from "./spray-limits";

export interface SpraySpeed {
  readonly speedMph: number;
  readonly feetPerMinute: number;
}

/**
 * Ground speed from a timed course.
 *
 *   feet × 60 / (seconds × 88)      88 ft/min is one mile an hour
 *
 * @source ufl-sprayer-calibration
 */
export function spraySpeed({ feet, seconds }: { feet: number; seconds: number }): SpraySpeed {
  within("feet", feet, sprayLimits.feet);
  within("seconds", seconds, sprayLimits.seconds);

  const feetPerMinute = (feet * secondPerMinute) / seconds;
  return { speedMph: feetPerMinute / footPerMinuteAtOneMph, feetPerMinute };
}
