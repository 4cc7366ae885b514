import { refuseArgument } from "../fault";
import { within } from "../limit";
import { sprayLimits } from "./spray-limits";

export interface BandRateInput {
  /** Rate on the treated strip, in any unit per acre. */
  readonly broadcastRatePerAc: number;
  readonly bandWidthIn: number;
  readonly rowWidthIn: number;
}

export interface BandRate {
  readonly ratePerFieldAc: number;
  readonly treatedShare: number;
}

/**
 * Product or spray used on an acre of field when only a band over the row is treated.
 *
 *   broadcast rate × band width / row width
 *
 * @source tank-arithmetic
 */
export function bandRate({ broadcastRatePerAc, bandWidthIn, rowWidthIn }: BandRateInput): BandRate {
  within("rate", broadcastRatePerAc, sprayLimits.rate);
  within("bandWidth", bandWidthIn, sprayLimits.bandWidth);
  within("rowWidth", rowWidthIn, sprayLimits.rowWidth);
  if (bandWidthIn > rowWidthIn) {
    refuseArgument(
      "bandWidth",
      `a band of ${bandWidthIn} in is wider than the rows, ${rowWidthIn} in: that is a broadcast pass.`,
    );
  }

  const treatedShare = bandWidthIn / rowWidthIn;
  return { ratePerFieldAc: broadcastRatePerAc * treatedShare, treatedShare };
}
