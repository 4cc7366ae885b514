import { within } from "../limit";
import { sprayLimits } from "./spray-limits";

export interface TankFillInput {
  /** In any unit per acre; the answer is in the same unit. */
  readonly ratePerAc: number;
  readonly tankGal: number;
  readonly volumeGalPerAc: number;
  /** Acres left to spray; null: the tank is filled. */
  readonly acresLeft: number | null;
}

export interface TankFill {
  readonly productPerTank: number;
  readonly acres: number;
  readonly sprayGal: number;
  readonly fullTankAcres: number;
  /** The acres left need less than a full tank. */
  readonly isPartLoad: boolean;
}

/**
 * Product to put into one fill.
 *
 *   rate × the acres this fill sprays      a full tank sprays tank / gallons per acre
 *
 * @source tank-arithmetic
 */
export function tankFill({ ratePerAc, tankGal, volumeGalPerAc, acresLeft }: TankFillInput): TankFill {
  within("ratePerAcre", ratePerAc, sprayLimits.rate);
  within("tankGallons", tankGal, sprayLimits.tank);
  within("gallonsPerAcre", volumeGalPerAc, sprayLimits.volume);
  if (acresLeft !== null) within("acresLeft", acresLeft, sprayLimits.acres);

  const fullTankAcres = tankGal / volumeGalPerAc;
  const isPartLoad = acresLeft !== null && acresLeft < fullTankAcres;
  const acres = isPartLoad ? acresLeft : fullTankAcres;
  return { productPerTank: ratePerAc * acres, acres, sprayGal: acres * volumeGalPerAc, fullTankAcres, isPartLoad };
}
