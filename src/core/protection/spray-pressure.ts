import { within } from "../limit";
import { workingPressure } from "../../reference/protection/sprayer-practice";
import { sprayLimits } from "./spray-limits";

export interface SprayPressureInput {
  /** Now and wanted; two speeds at one volume stand in the same ratio as the flows they ask for. */
  readonly flowGalPerMin: number;
  readonly newFlowGalPerMin: number;
  readonly pressurePsi: number;
}

export interface SprayPressure {
  readonly pressurePsi: number;
  readonly flowRatio: number;
  /** Outside the pressures most field nozzles are made for. */
  readonly isUnusual: boolean;
}

/**
 * Pressure for another flow through the same nozzle.
 *
 *   pressure × (new flow / flow)²
 *
 * @source nozzle-orifice
 */
export function sprayPressure({ flowGalPerMin, newFlowGalPerMin, pressurePsi }: SprayPressureInput): SprayPressure {
  within("flow", flowGalPerMin, sprayLimits.flow);
  within("newFlow", newFlowGalPerMin, sprayLimits.flow);
  within("pressure", pressurePsi, sprayLimits.pressure);

  const flowRatio = newFlowGalPerMin / flowGalPerMin;
  const newPressurePsi = pressurePsi * flowRatio ** 2;
  return { pressurePsi: newPressurePsi, flowRatio, isUnusual: isUnusual(newPressurePsi) };
}

export interface PressedFlowInput {
  readonly flowGalPerMin: number;
  readonly pressurePsi: number;
  readonly newPressurePsi: number;
}

export interface PressedFlow {
  readonly flowGalPerMin: number;
  readonly flowRatio: number;
  readonly isUnusual: boolean;
}

/**
 * Flow of the same nozzle at another pressure.
 *
 *   flow × √(new pressure / pressure)
 *
 * @source nozzle-orifice
 */
export function pressedFlow({ flowGalPerMin, pressurePsi, newPressurePsi }: PressedFlowInput): PressedFlow {
  within("flow", flowGalPerMin, sprayLimits.flow);
  within("pressure", pressurePsi, sprayLimits.pressure);
  within("newPressure", newPressurePsi, sprayLimits.pressure);

  const flowRatio = Math.sqrt(newPressurePsi / pressurePsi);
  return { flowGalPerMin: flowGalPerMin * flowRatio, flowRatio, isUnusual: isUnusual(newPressurePsi) };
}

function isUnusual(psi: number): boolean {
  return psi < workingPressure.lowPsi || psi > workingPressure.highPsi;
}
