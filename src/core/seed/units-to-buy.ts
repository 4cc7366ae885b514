import { within } from "../limit";
import { wholeUp } from "../units/whole-up";
import { seedLimits } from "./seed-limits";
import { seedUnit, type SeedUnit, type UnitSize } from "./seed-unit";

export interface UnitsToBuyInput {
  readonly seedsPerAc: number;
  readonly acres: number;
  readonly unitSize: UnitSize | null;
}

export interface UnitsToBuy {
  /** Whole units. */
  readonly units: number;
  readonly exactUnits: number;
  readonly seedsNeeded: number;
  readonly seedsLeftOver: number;
  readonly acresPerUnit: number;
  readonly unit: SeedUnit;
}

/**
 * Whole units of seed for a field, with what stays over. No reserve is added: plan it as extra acres.
 *
 *   rate × acres / seeds per unit, rounded up
 */
export function unitsToBuy({ seedsPerAc, acres, unitSize }: UnitsToBuyInput): UnitsToBuy {
  within("rate", seedsPerAc, seedLimits.seedRate);
  within("acres", acres, seedLimits.acres);
  const unit = seedUnit(unitSize);

  const seedsNeeded = seedsPerAc * acres;
  const exactUnits = seedsNeeded / unit.seedsPerUnit;
  const units = wholeUp(exactUnits);
  return {
    units,
    exactUnits,
    seedsNeeded,
    seedsLeftOver: units * unit.seedsPerUnit - seedsNeeded,
    acresPerUnit: unit.seedsPerUnit / seedsPerAc,
    unit,
  };
}
