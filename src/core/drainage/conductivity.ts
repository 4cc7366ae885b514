import { within } from "../limit";
import { hourPerDay, meterPerFoot, secondPerHour } from "../units/units";
import { conductivities, type ConductivityTextureKey } from "../../reference/drainage/conductivity";
import type { Cited } from "../../reference/table";
import { drainageLimits } from "./drainage-limits";

/** Conductivity measured in the field, or the texture whose average stands in. */
export type SoilConductivity = { readonly ftPerDay: number } | { readonly texture: ConductivityTextureKey };

export interface Conductivity {
  readonly ftPerDay: number;
  readonly cited: readonly Cited[];
}

/**
 * How fast water moves through the saturated soil.
 *
 * @source clapp-hornberger-1978
 */
export function conductivityOf(soil: SoilConductivity, argument: string): Conductivity {
  if ("ftPerDay" in soil) {
    within(argument, soil.ftPerDay, drainageLimits.conductivity);
    return { ftPerDay: soil.ftPerDay, cited: [] };
  }
  const rows = conductivities.rows.filter(({ texture }) => texture === soil.texture);
  const metersPerSecond = rows[0]?.metersPerSecond ?? Number.NaN;
  return { ftPerDay: (metersPerSecond * secondPerHour * hourPerDay) / meterPerFoot, cited: rows };
}
