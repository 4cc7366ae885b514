import { within } from "../limit";
import { fluidOuncePerGallon, poundPerHundredweight } from "../units/units";
import { seedLimits } from "./seed-limits";

export interface PackageTreatmentInput {
  readonly packagePriceUsd: number;
  /** Seed that one package treats, and seed that goes on an acre: both in pounds, units or seeds. */
  readonly seedTreated: number;
  readonly seedPerAc: number;
}

export interface LiquidTreatmentInput {
  readonly fluidOuncePerCwt: number;
  readonly priceUsdPerGal: number;
  readonly seedLbPerAc: number;
}

/**
 * Cost of a seed treatment or inoculant sold by the package.
 *
 *   package price / seed it treats × seed on an acre
 *
 * @source treatment-arithmetic
 */
export function packageTreatmentUsdPerAc({ packagePriceUsd, seedTreated, seedPerAc }: PackageTreatmentInput): number {
  within("packagePrice", packagePriceUsd, seedLimits.packagePrice);
  within("seedTreated", seedTreated, seedLimits.seedTreated);
  within("seedPerAcre", seedPerAc, seedLimits.seedPerAc);

  return (packagePriceUsd / seedTreated) * seedPerAc;
}

/**
 * Cost of a liquid seed treatment.
 *
 *   fluid ounces per 100 lb × pounds of seed / 100 × price of a fluid ounce
 *
 * @source treatment-arithmetic
 */
export function liquidTreatment({ fluidOuncePerCwt, priceUsdPerGal, seedLbPerAc }: LiquidTreatmentInput) {
  within("rate", fluidOuncePerCwt, seedLimits.fluidOunceRate);
  within("pricePerGallon", priceUsdPerGal, seedLimits.pricePerGallon);
  within("poundsPerAcre", seedLbPerAc, seedLimits.seedPounds);

  const fluidOuncePerAc = (fluidOuncePerCwt * seedLbPerAc) / poundPerHundredweight;
  return { fluidOuncePerAc, costUsdPerAc: (fluidOuncePerAc * priceUsdPerGal) / fluidOuncePerGallon };
}
