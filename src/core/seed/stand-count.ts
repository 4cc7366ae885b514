import { waitFor } from "../fault";
import { within } from "../limit";
import { rowFootInchPerAcre } from "../units/units";
import { mean } from "../statistics/sums";
import { seedLimits } from "./seed-limits";

export interface StandCountInput {
  readonly counts: readonly number[];
  readonly rowWidthIn: number;
  /** Feet of row behind each count; null: the thousandth of an acre at this row width. */
  readonly feetCounted: number | null;
}

export interface StandCount {
  readonly plantsPerAc: number;
  readonly meanCount: number;
  readonly counts: number;
  readonly lowestPerAc: number;
  readonly highestPerAc: number;
  readonly feetCounted: number;
  /** What one counted plant stands for, plants/ac. */
  readonly plantsPerAcEach: number;
}

/**
 * Stand from plants counted along the row.
 *
 *   mean count × 522,720 / (row width × feet of row)      row width in inches
 *
 * @source acre-geometry
 */
export function standCount({ counts, rowWidthIn, feetCounted }: StandCountInput): StandCount {
  within("rowWidth", rowWidthIn, seedLimits.rowWidth);
  if (feetCounted !== null) within("feetCounted", feetCounted, seedLimits.feetCounted);
  for (const count of counts) within("counts", count, seedLimits.plantCount);
  if (counts.length === 0) waitFor("counts");

  const rowFeetPerAc = rowFootInchPerAcre / rowWidthIn;
  const plantsPerAcEach = feetCounted === null ? 1000 : rowFeetPerAc / feetCounted;
  const meanCount = mean(counts);
  return {
    plantsPerAc: meanCount * plantsPerAcEach,
    meanCount,
    counts: counts.length,
    lowestPerAc: counts.reduce((least, count) => Math.min(least, count)) * plantsPerAcEach,
    highestPerAc: counts.reduce((most, count) => Math.max(most, count)) * plantsPerAcEach,
    feetCounted: feetCounted ?? rowFeetPerAc / 1000,
    plantsPerAcEach,
  };
}
