import { refuseArgument } from "../fault";
import { within } from "../limit";
import { pairsOf } from "../money/pairs";
import { cornTemperatures } from "../../reference/seed/corn-heat";
import { sum } from "../statistics/sums";
import { heatLimits } from "./heat-limits";

export interface HeatUnitsInput {
  /** °F, day by day; null keeps the place of a blank cell. */
  readonly maxTemps: readonly (number | null)[];
  readonly minTemps: readonly (number | null)[];
  /** null: 50, the base of corn. */
  readonly base: number | null;
  /** null: 86 on corn's base, none on another. */
  readonly cap: number | null;
}

export interface HeatUnits {
  readonly heatUnits: number;
  readonly days: number;
  readonly meanPerDay: number;
  readonly base: number;
  /** null: days are not held between base and cap. */
  readonly cap: number | null;
}

/**
 * Heat units (growing degree days) of a run of days, °F.
 *
 *   with a cap:     (maximum + minimum) / 2 − base, both first held between base and cap (corn: 50 and 86)
 *   without a cap:  (maximum + minimum) / 2 − base, never below 0
 *
 * A field-guide article prints 17.5 for a day of 90 and 55 °F; the 86/50 rule it states gives 20.5, as here.
 *
 * @source osu-agf-101
 */
export function heatUnits({ maxTemps, minTemps, base, cap }: HeatUnitsInput): HeatUnits {
  const baseF = base ?? cornTemperatures.base;
  const capF = cap ?? (baseF === cornTemperatures.base ? cornTemperatures.cap : null);
  within("base", baseF, heatLimits.base);
  if (capF !== null) within("cap", capF, heatLimits.cap);
  if (capF !== null && capF <= baseF) refuseArgument("cap", "must be above base.");

  const days = pairsOf({ argument: "maxTemps", values: maxTemps }, { argument: "minTemps", values: minTemps });
  const total = sum(days.map(({ first, second }) => dayOf(first, second, baseF, capF)));
  return { heatUnits: total, days: days.length, meanPerDay: total / days.length, base: baseF, cap: capF };
}

function dayOf(maxTemp: number, minTemp: number, base: number, cap: number | null): number {
  within("maxTemps", maxTemp, heatLimits.temperature);
  within("minTemps", minTemp, heatLimits.temperature);
  if (minTemp > maxTemp) {
    refuseArgument("minTemps", `${minTemp} is above that day's maximum of ${maxTemp}.`);
  }
  if (cap === null) return Math.max(0, (maxTemp + minTemp) / 2 - base);
  const held = (temperature: number) => Math.min(cap, Math.max(base, temperature));
  return (held(maxTemp) + held(minTemp)) / 2 - base;
}
