import { waitFor } from "../fault";
import { within } from "../limit";
import { weedCurveTable, type WeedCurveKey, type WeedCurveRow } from "../../reference/protection/weeds";
import { pestLimits } from "./pest-limits";

/** Loss to the first weeds: typed, or a published curve's. */
export type WeedSlope = { readonly slopePct: number } | { readonly curve: WeedCurveKey };

export interface WeedCurveInput {
  readonly slope: WeedSlope;
  /** null: the published curve's, or 100. */
  readonly ceilingPct: number | null;
  /** Days from the crop's emergence to the weeds'; below 0 when the weeds are first. */
  readonly daysAfterCrop: number;
  /** Share by which a day's delay weakens the weeds; null: asked for when there is a delay. */
  readonly fadePerDay: number | null;
}

export interface WeedCurve {
  /** After the delay. */
  readonly slopePct: number;
  readonly ceilingPct: number;
  readonly published?: WeedCurveRow;
}

/**
 * The loss curve with the weeds' time of emergence worked in.
 *
 *   slope × e ^ (-fade × days after the crop)
 *
 * @source cousens-1987
 */
export function weedCurve({ slope, ceilingPct, daysAfterCrop, fadePerDay }: WeedCurveInput): WeedCurve {
  within("daysAfterCrop", daysAfterCrop, pestLimits.daysAfterCrop);
  if (fadePerDay !== null) within("fade", fadePerDay, pestLimits.fade);
  if (daysAfterCrop !== 0 && fadePerDay === null) {
    waitFor("fade", "how much a day's delay weakens the weeds, per day");
  }
  const published = "curve" in slope ? weedCurveTable.rows.find((row) => row.curve === slope.curve) : undefined;
  const typed = "slopePct" in slope ? slope.slopePct : (published?.slopePct ?? Number.NaN);
  within("slope", typed, pestLimits.slope);
  const ceiling = ceilingPct ?? published?.ceilingPct ?? 100;
  within("ceiling", ceiling, pestLimits.ceiling);

  const slopePct = typed * Math.exp(-(fadePerDay ?? 0) * daysAfterCrop);
  return { slopePct, ceilingPct: ceiling, ...(published && { published }) };
}

/**
 * Percent of the yield lost at a density of weeds, a rectangular hyperbola.
 *
 *   slope × density / (1 + slope × density / ceiling)
 *
 * @source cousens-1985
 */
export function lossPctAt(density: number, { slopePct, ceilingPct }: WeedCurve): number {
  const first = slopePct * density;
  return first / (1 + first / ceilingPct);
}
