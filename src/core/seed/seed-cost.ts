import { within } from "../limit";
import { seedLimits } from "./seed-limits";
import { seedUnit, type SeedUnit, type UnitSize } from "./seed-unit";

export interface SeedCostInput {
  readonly seedsPerAc: number;
  readonly unitPriceUsd: number;
  readonly unitSize: UnitSize | null;
  readonly treatmentUsdPerUnit: number;
}

export interface SeedCost {
  readonly costUsdPerAc: number;
  readonly seedUsdPerAc: number;
  readonly treatmentUsdPerAc: number;
  readonly usdPerThousandSeeds: number;
  readonly unitsPerAc: number;
  readonly unit: SeedUnit;
}

/**
 * Cost of the seed that goes on an acre, treatment included.
 *
 *   rate / seeds per unit × (unit price + treatment)
 *
 * @source illinois-seed-cost
 */
export function seedCost({ seedsPerAc, unitPriceUsd, unitSize, treatmentUsdPerUnit }: SeedCostInput): SeedCost {
  within("rate", seedsPerAc, seedLimits.seedRate);
  within("unitPrice", unitPriceUsd, seedLimits.unitPrice);
  within("treatmentPerUnit", treatmentUsdPerUnit, seedLimits.treatmentPerUnit);
  const unit = seedUnit(unitSize);

  const unitsPerAc = seedsPerAc / unit.seedsPerUnit;
  const paidPerUnit = unitPriceUsd + treatmentUsdPerUnit;
  return {
    costUsdPerAc: (seedsPerAc * paidPerUnit) / unit.seedsPerUnit,
    seedUsdPerAc: unitsPerAc * unitPriceUsd,
    treatmentUsdPerAc: unitsPerAc * treatmentUsdPerUnit,
    usdPerThousandSeeds: (paidPerUnit * 1000) / unit.seedsPerUnit,
    unitsPerAc,
    unit,
  };
}
