import { refuseArgument } from "../fault";
import { within } from "../limit";
import { machines, type Machine, type MachineKey } from "../../reference/machinery/machines";
import { machineryLimits } from "./machinery-limits";

export interface RepairCostInput {
  readonly machine: MachineKey;
  readonly listPriceUsd: number;
  readonly fromHours: number;
  readonly toHours: number;
}

export interface RepairCost {
  readonly costUsd: number;
  /** Over the hours asked about; null when there are none. */
  readonly usdPerHour: number | null;
  readonly untilFromUsd: number;
  readonly untilToUsd: number;
  readonly lifeHours: number;
  /** The curve is not meant past the wear-out life. */
  readonly isPastLife: boolean;
  readonly published: Machine;
}

/**
 * Repairs and maintenance between two readings of the hour meter.
 *
 *   list price × factor × ((to / 1000) ^ power - (from / 1000) ^ power)
 *
 * @source asabe-d497
 */
export function repairCost({ machine, listPriceUsd, fromHours, toHours }: RepairCostInput): RepairCost {
  within("listPrice", listPriceUsd, machineryLimits.listPrice);
  within("fromHours", fromHours, machineryLimits.machineHours);
  within("toHours", toHours, machineryLimits.machineHours);
  if (toHours < fromHours) {
    refuseArgument("toHours", `${toHours} h is before fromHours, ${fromHours} h.`);
  }
  const published = machines[machine];
  const until = (hours: number) => listPriceUsd * published.repairFactor * (hours / 1000) ** published.repairPower;
  const costUsd = until(toHours) - until(fromHours);
  return {
    costUsd,
    usdPerHour: toHours > fromHours ? costUsd / (toHours - fromHours) : null,
    untilFromUsd: until(fromHours),
    untilToUsd: until(toHours),
    lifeHours: published.lifeHours,
    isPastLife: toHours > published.lifeHours,
    published,
  };
}
