import { within } from "../limit";
import { pestLimits } from "./pest-limits";
import { lossPctAt, weedCurve, type WeedCurve, type WeedCurveInput } from "./weed-curve";

export interface WeedLoss {
  readonly lossPct: number;
  /** With half and with twice the slope: sites and years differ that much. */
  readonly lowPct: number;
  readonly highPct: number;
  readonly curve: WeedCurve;
}

/**
 * Yield lost to a density of weeds that stay.
 *
 * @source cousens-1985
 */
export function weedLoss({ density, ...input }: WeedCurveInput & { readonly density: number }): WeedLoss {
  within("density", density, pestLimits.density);
  const curve = weedCurve(input);
  const at = (times: number) => lossPctAt(density, { ...curve, slopePct: curve.slopePct * times });
  return { lossPct: at(1), lowPct: at(0.5), highPct: at(2), curve };
}
