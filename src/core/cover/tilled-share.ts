import { refuseArgument } from "../fault";
import { within } from "../limit";
import { coverLimits } from "./cover-limits";

export interface TilledShare {
  readonly tilledPct: number;
  readonly untilledPct: number;
}

/**
 * Share of the surface that a band in each row disturbs.
 *
 *   band width / row width
 *
 * @source strip-geometry
 */
export function tilledShare({ bandWidthIn, rowWidthIn }: { bandWidthIn: number; rowWidthIn: number }): TilledShare {
  within("bandWidth", bandWidthIn, coverLimits.bandWidth);
  within("rowWidth", rowWidthIn, coverLimits.rowWidth);
  if (bandWidthIn > rowWidthIn) {
    refuseArgument("bandWidth", `a band of ${bandWidthIn} in is wider than the row of ${rowWidthIn} in.`);
  }
  const tilledPct = (100 * bandWidthIn) / rowWidthIn;
  return { tilledPct, untilledPct: 100 - tilledPct };
}
