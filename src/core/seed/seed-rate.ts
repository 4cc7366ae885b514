import { within } from "../limit";
import { pctToFraction } from "../units/units";
import { seedLimits } from "./seed-limits";

export interface SeedRateInput {
  readonly targetStandPerAc: number;
  readonly germinationPct: number;
  /** Share of the live seeds that become established plants. */
  readonly fieldSurvivalPct: number;
}

export interface SeedRate {
  readonly seedsPerAc: number;
  /** Plants from a hundred seeds, both losses taken together. */
  readonly plantsPerSeedPct: number;
  readonly deadSeedsPerAc: number;
  readonly lostSeedlingsPerAc: number;
  /** Fewer than half of the seeds become plants: worth a second look at the seed or the seedbed. */
  readonly isPoor: boolean;
}

/**
 * Seeds to plant for a wanted stand.
 *
 *   plants / (germination × field survival)      both as shares
 *
 * @source ndsu-seeding-rates
 */
export function seedRate({ targetStandPerAc, germinationPct, fieldSurvivalPct }: SeedRateInput): SeedRate {
  within("targetStand", targetStandPerAc, seedLimits.targetStand);
  within("germination", germinationPct, seedLimits.germination);
  within("fieldSurvival", fieldSurvivalPct, seedLimits.fieldSurvival);

  const germination = pctToFraction(germinationPct);
  const plantsPerSeed = germination * pctToFraction(fieldSurvivalPct);
  const seedsPerAc = targetStandPerAc / plantsPerSeed;
  return {
    seedsPerAc,
    plantsPerSeedPct: plantsPerSeed * 100,
    deadSeedsPerAc: seedsPerAc * (1 - germination),
    lostSeedlingsPerAc: seedsPerAc * germination - targetStandPerAc,
    isPoor: plantsPerSeed < 0.5,
  };
}
