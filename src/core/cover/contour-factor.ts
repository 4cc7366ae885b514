import { refuse, refuseArgument } from "../fault";
import { within } from "../limit";
import { contourFactors, type ContourRow } from "../../reference/cover/erosion";
import { coverLimits } from "./cover-limits";

export interface ContourFactor {
  readonly factor: number;
  readonly longestFt: number;
  readonly row: ContourRow;
}

/**
 * Soil loss with rows on the contour against rows up and down the slope. The table runs in whole percent, so the
 * steepness is rounded to it. A slope longer than the table's limit is refused: there the contour no longer holds.
 *
 * @param lengthFt null: not checked against the limit
 * @source usda-ah537-1978
 */
export function contourFactor(steepnessPct: number, lengthFt: number | null): ContourFactor {
  within("steepness", steepnessPct, coverLimits.steepness);
  if (lengthFt !== null) within("length", lengthFt, coverLimits.slopeLength);
  const whole = Math.round(steepnessPct);
  const row = contourFactors.rows.find(({ fromPct, toPct }) => whole >= fromPct && whole <= toPct);
  if (!row) {
    refuse({
      kind: "notPublished",
      what: `contour factor at ${steepnessPct} %`,
      where: `"${contourFactors.title}"`,
      instead: "Rows up and down the slope count as 1.",
    });
  }
  if (lengthFt !== null && lengthFt > row.longestFt) {
    refuseArgument(
      "length",
      `${lengthFt} ft is past the ${row.longestFt} ft up to which contouring holds at this steepness; use 1, or the distance between terraces.`,
    );
  }
  return { factor: row.factor, longestFt: row.longestFt, row };
}
