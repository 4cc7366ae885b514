import {
  operationFuels,
  systemFuel,
  type OperationFuel,
  type OperationFuelKey,
  type SystemFuelRow,
  type TillageSystemKey,
} from "../../reference/machinery/operation-fuel";
import { sum } from "../statistics/sums";

/**
 * Diesel of one field operation as published.
 *
 * @source missouri-g1208-1993
 */
export function operationFuel(operation: OperationFuelKey): OperationFuel {
  return operationFuels[operation];
}

export interface SystemFuel {
  readonly galPerAc: number;
  readonly passes: number;
  readonly rows: readonly SystemFuelRow[];
}

/**
 * Diesel of a whole tillage system as published, from residue to the last weed pass.
 *
 * @source unl-fuel-requirements
 */
export function systemFuelOf(system: TillageSystemKey): SystemFuel {
  const rows = systemFuel.rows.filter((row) => row.system === system);
  return {
    galPerAc: sum(rows.map((row) => row.galPerAc)),
    passes: sum(rows.map((row) => row.passes)),
    rows,
  };
}
