import { within } from "../limit";
import { wholeUp } from "../units/whole-up";
import { sprayLimits } from "./spray-limits";

export interface TankLoadsInput {
  readonly acres: number;
  readonly tankGal: number;
  readonly volumeGalPerAc: number;
}

export interface TankLoads {
  /** Fills, the last one counted whole. */
  readonly loads: number;
  readonly acresPerLoad: number;
  readonly fullLoads: number;
  /** What the last load sprays; 0 when the full loads come out even. */
  readonly lastAcres: number;
  readonly lastGal: number;
  readonly totalGal: number;
}

/**
 * Fills for a field, and the last part load.
 *
 *   acres / (tank / gallons per acre)      the remainder × gallons per acre is the last load
 *
 * @source tank-arithmetic
 */
export function tankLoads({ acres, tankGal, volumeGalPerAc }: TankLoadsInput): TankLoads {
  within("acres", acres, sprayLimits.acres);
  within("tankGallons", tankGal, sprayLimits.tank);
  within("gallonsPerAcre", volumeGalPerAc, sprayLimits.volume);

  const acresPerLoad = tankGal / volumeGalPerAc;
  const exact = acres / acresPerLoad;
  const loads = wholeUp(exact);
  const isEven = loads - exact < 1e-9 * Math.max(1, loads);
  const fullLoads = isEven ? loads : loads - 1;
  const lastAcres = isEven ? 0 : acres - fullLoads * acresPerLoad;
  return {
    loads,
    acresPerLoad,
    fullLoads,
    lastAcres,
    lastGal: lastAcres * volumeGalPerAc,
    totalGal: acres * volumeGalPerAc,
  };
}
