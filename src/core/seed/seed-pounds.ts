import { refuseArgument, waitFor } from "../fault";
import { within } from "../limit";
import { gramPerPound, squareFootPerAcre } from "../units/units";
import { seedLimits } from "./seed-limits";

export interface SeedPoundsInput {
  readonly seedsPerAc: number;
  /** null: the weight of 1,000 kernels is given instead. */
  readonly seedsPerLb: number | null;
  readonly thousandKernelG: number | null;
}

export interface SeedPounds {
  readonly poundsPerAc: number;
  readonly seedsPerLb: number;
  readonly thousandKernelG: number;
  readonly seedsPerSqFt: number;
}

/**
 * Pounds of seed for a rate in seeds.
 *
 *   seeds per acre / seeds per pound      seeds per pound = 453,592 / grams of 1,000 kernels
 *
 * The prairie form (plants per square foot × grams / survival / 10) rounds its divisor: 453,592 / 43,560 is 10.413,
 * so the printed 10 is 4 % high. This is the exact form.
 *
 * @source ndsu-seeding-rates
 * @source thousand-kernel-weight
 */
export function seedPounds({ seedsPerAc, seedsPerLb, thousandKernelG }: SeedPoundsInput): SeedPounds {
  within("rate", seedsPerAc, seedLimits.seedRate);
  const perPound = seedsPerPoundOf(seedsPerLb, thousandKernelG);
  return {
    poundsPerAc: seedsPerAc / perPound,
    seedsPerLb: perPound,
    thousandKernelG: (gramPerPound * 1000) / perPound,
    seedsPerSqFt: seedsPerAc / squareFootPerAcre,
  };
}

function seedsPerPoundOf(seedsPerLb: number | null, thousandKernelG: number | null): number {
  if (seedsPerLb !== null && thousandKernelG !== null) {
    refuseArgument("thousandKernelGrams", "give seedsPerPound or thousandKernelGrams, not both.");
  }
  if (seedsPerLb !== null) {
    within("seedsPerPound", seedsPerLb, seedLimits.seedsPerPound);
    return seedsPerLb;
  }
  if (thousandKernelG === null) waitFor("seedsPerPound or thousandKernelGrams");
  within("thousandKernelGrams", thousandKernelG, seedLimits.thousandKernelGrams);
  return (gramPerPound * 1000) / thousandKernelG;
}
