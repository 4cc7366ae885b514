import { waitFor } from "../fault";
import { within } from "../limit";
import { inchPerFoot, squareFootPerAcre } from "../units/units";
import { mean } from "../statistics/sums";
import { seedLimits } from "./seed-limits";

export interface StandHoop {
  readonly plantsPerAc: number;
  readonly meanCount: number;
  readonly counts: number;
  /** What one plant in the hoop stands for, plants/ac. */
  readonly plantsPerAcEach: number;
  readonly hoopSqFt: number;
}

/**
 * Stand from plants counted inside a hoop.
 *
 *   mean count × 43,560 / (π × (diameter / 24)²)      inside diameter in inches
 *
 * Purdue prints its factors with π = 3.14, 0.05 % above these.
 *
 * @source purdue-field-guide-2010
 */
export function standHoop({
  counts,
  hoopDiameterIn,
}: {
  counts: readonly number[];
  hoopDiameterIn: number;
}): StandHoop {
  within("hoopDiameter", hoopDiameterIn, seedLimits.hoopDiameter);
  for (const count of counts) within("counts", count, seedLimits.plantCount);
  if (counts.length === 0) waitFor("counts");

  const hoopSqFt = Math.PI * (hoopDiameterIn / 2 / inchPerFoot) ** 2;
  const plantsPerAcEach = squareFootPerAcre / hoopSqFt;
  const meanCount = mean(counts);
  return { plantsPerAc: meanCount * plantsPerAcEach, meanCount, counts: counts.length, plantsPerAcEach, hoopSqFt };
}
