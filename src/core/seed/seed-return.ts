import { within } from "../limit";
import { seedCost, type SeedCost, type SeedCostInput } from "./seed-cost";
import { seedLimits } from "./seed-limits";

export interface SeedReturnInput extends SeedCostInput {
  readonly yieldBuPerAc: number;
  readonly grainPriceUsd: number;
}

export interface SeedReturn {
  readonly returnUsdPerAc: number;
  readonly grossUsdPerAc: number;
  readonly cost: SeedCost;
  /** Seeds that one bushel of grain buys; null when the seed costs nothing. */
  readonly seedsPerBushel: number | null;
}

/**
 * What an acre brings over its seed.
 *
 *   yield × grain price − seed cost
 *
 * @source msu-soybean-seed-2010
 */
export function seedReturn({ yieldBuPerAc, grainPriceUsd, ...seed }: SeedReturnInput): SeedReturn {
  within("yield", yieldBuPerAc, seedLimits.yield);
  within("grainPrice", grainPriceUsd, seedLimits.grainPrice);

  const cost = seedCost(seed);
  const grossUsdPerAc = yieldBuPerAc * grainPriceUsd;
  return {
    returnUsdPerAc: grossUsdPerAc - cost.costUsdPerAc,
    grossUsdPerAc,
    cost,
    seedsPerBushel: cost.usdPerThousandSeeds > 0 ? (grainPriceUsd / cost.usdPerThousandSeeds) * 1000 : null,
  };
}
