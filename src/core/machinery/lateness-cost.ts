import { within } from "../limit";
import { bestDays, type BestDayKey } from "../../reference/machinery/best-days";
import { pctToFraction } from "../units/units";
import { machineryLimits } from "./machinery-limits";

export interface LatenessCostInput {
  readonly acres: number;
  readonly yieldPerAc: number;
  readonly priceUsd: number;
  /** Of the yield, for each day off the best one; the person's own. */
  readonly lossPctPerDay: number;
  readonly acresPerHour: number;
  readonly hoursPerDay: number;
  readonly workableDaysPct: number;
  readonly bestDay: BestDayKey;
}

export interface LatenessCost {
  readonly costUsd: number;
  readonly costUsdPerAc: number;
  /** Calendar days from the first acre to the last. */
  readonly spanDays: number;
  /** What one more acre an hour would save. */
  readonly nextAcrePerHourUsd: number;
}

/**
 * Crop lost because the job takes days and not all acres get the best one.
 *
 *   loss a day × acres² × yield × price / (z × ac/h × hours a day × share of workable days)
 *
 * z is 4 when the best day falls in the middle of the work, 2 when it falls at one end.
 *
 * @source asabe-ep496
 */
export function latenessCost(input: LatenessCostInput): LatenessCost {
  check(input);
  const spanDays = spanAt(input, input.acresPerHour);
  const costAt = (acresPerHour: number) =>
    (pctToFraction(input.lossPctPerDay) *
      input.acres *
      input.yieldPerAc *
      input.priceUsd *
      spanAt(input, acresPerHour)) /
    bestDays[input.bestDay].divisor;
  const costUsd = costAt(input.acresPerHour);
  return {
    costUsd,
    costUsdPerAc: costUsd / input.acres,
    spanDays,
    nextAcrePerHourUsd: costUsd - costAt(input.acresPerHour + 1),
  };
}

function spanAt({ acres, hoursPerDay, workableDaysPct }: LatenessCostInput, acresPerHour: number): number {
  return acres / (acresPerHour * hoursPerDay * pctToFraction(workableDaysPct));
}

function check(input: LatenessCostInput): void {
  within("acres", input.acres, machineryLimits.acres);
  within("yield", input.yieldPerAc, machineryLimits.yield);
  within("price", input.priceUsd, machineryLimits.cropPrice);
  within("lossPerDay", input.lossPctPerDay, machineryLimits.lossPerDay);
  within("acresPerHour", input.acresPerHour, machineryLimits.acresPerHour);
  within("hoursPerDay", input.hoursPerDay, machineryLimits.hoursPerDay);
  within("workableDays", input.workableDaysPct, machineryLimits.workableDays);
}
