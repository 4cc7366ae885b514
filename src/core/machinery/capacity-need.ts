import { within } from "../limit";
import { pctToFraction } from "../units/units";
import { machineryLimits } from "./machinery-limits";

export interface CapacityNeedInput {
  readonly acres: number;
  /** Days fit for field work within the time allowed. */
  readonly days: number;
  readonly hoursPerDay: number;
  /** Of those hours, the share spent working in the field. */
  readonly inFieldPct: number;
}

export interface CapacityNeed {
  readonly acPerHour: number;
  readonly fieldHours: number;
  readonly acPerDay: number;
}

/**
 * Acres an hour that a job must run to be done in the days there are.
 *
 *   acres / (days × hours a day × share in the field)
 *
 * @source isu-pm696-2001
 */
export function capacityNeed({ acres, days, hoursPerDay, inFieldPct }: CapacityNeedInput): CapacityNeed {
  within("acres", acres, machineryLimits.acres);
  within("days", days, machineryLimits.days);
  within("hoursPerDay", hoursPerDay, machineryLimits.hoursPerDay);
  within("inField", inFieldPct, machineryLimits.inField);
  const fieldHours = days * hoursPerDay * pctToFraction(inFieldPct);
  return { acPerHour: acres / fieldHours, fieldHours, acPerDay: acres / days };
}
