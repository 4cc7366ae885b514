import { within } from "../limit";
import { fieldMachines, type FieldMachineKey } from "../../reference/machinery/machines";
import type { Cited } from "../../reference/table";
import { footPerMile, pctToFraction, squareFootPerAcre } from "../units/units";
import { machineryLimits } from "./machinery-limits";

/** Share of the time and width that does work: known, or typical of a machine. */
export type FieldEfficiency = { readonly efficiencyPct: number } | { readonly machine: FieldMachineKey };

export interface FieldCapacityInput {
  readonly widthFt: number;
  readonly mph: number;
  readonly efficiency: FieldEfficiency;
}

export interface FieldCapacity {
  readonly acPerHour: number;
  readonly hoursPerAc: number;
  readonly efficiencyPct: number;
  /** What the machine would do without turns, fills and overlap. */
  readonly fullAcPerHour: number;
  readonly cited: readonly Cited[];
}

/** Miles an hour times feet that make one acre an hour: 43,560 / 5,280 = 8.25. */
const mphFeetPerAcreHour = squareFootPerAcre / footPerMile;

/**
 * Acres that a machine works in an hour.
 *
 *   mph × width × efficiency / 8.25
 *
 * @source isu-pm696-2001
 */
export function fieldCapacity({ widthFt, mph, efficiency }: FieldCapacityInput): FieldCapacity {
  within("width", widthFt, machineryLimits.width);
  within("mph", mph, machineryLimits.mph);
  const { efficiencyPct, cited } = read(efficiency);
  within("efficiency", efficiencyPct, machineryLimits.efficiency);

  const fullAcPerHour = (mph * widthFt) / mphFeetPerAcreHour;
  const acPerHour = fullAcPerHour * pctToFraction(efficiencyPct);
  return { acPerHour, hoursPerAc: 1 / acPerHour, efficiencyPct, fullAcPerHour, cited };
}

function read(efficiency: FieldEfficiency): Pick<FieldCapacity, "efficiencyPct" | "cited"> {
  if ("efficiencyPct" in efficiency) return { efficiencyPct: efficiency.efficiencyPct, cited: [] };
  const machine = fieldMachines[efficiency.machine];
  return { efficiencyPct: machine.efficiencyPct[1], cited: [machine] };
}
