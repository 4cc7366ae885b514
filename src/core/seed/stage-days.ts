import { refuseArgument, waitFor } from "../fault";
import { within } from "../limit";
import { wholeUp } from "../units/whole-up";
import { heatLimits } from "./heat-limits";

export interface StageDays {
  /** Whole days. */
  readonly days: number;
  readonly reached: number;
}

/**
 * Days until a sum of heat units is reached: day by day along a list, or at one steady figure.
 */
export function stageDays({ needed, daily }: { needed: number; daily: readonly number[] }): StageDays {
  within("heatUnitsNeeded", needed, heatLimits.heatUnits);
  for (const units of daily) within("dailyHeatUnits", units, heatLimits.dailyHeatUnits);
  const [steady] = daily;
  if (steady === undefined) waitFor("dailyHeatUnits");
  if (needed === 0) return { days: 0, reached: 0 };
  return daily.length === 1 ? steadily(needed, steady) : dayByDay(needed, daily);
}

function steadily(needed: number, steady: number): StageDays {
  if (steady === 0) refuseArgument("dailyHeatUnits", "must be above 0.");
  const days = wholeUp(needed / steady);
  return { days, reached: days * steady };
}

function dayByDay(needed: number, daily: readonly number[]): StageDays {
  let reached = 0;
  for (const [index, units] of daily.entries()) {
    reached += units;
    if (reached >= needed) return { days: index + 1, reached };
  }
  refuseArgument(
    "dailyHeatUnits",
    `adds up to ${Math.round(reached)} in ${daily.length} days; ${needed} are needed. List more days.`,
  );
}
