import { seedLimits } from "../../core/seed/seed-limits";
import { seedRate as seedRateOf } from "../../core/seed/seed-rate";
import { seedSpacing as seedSpacingOf } from "../../core/seed/seed-spacing";
import { line, optional, percent, quantity, worksheetFunction } from "../frame";
import { rate, rowWidth } from "./seed-arguments";

export const seedRate = worksheetFunction({
  name: "SEEDRATE",
  family: "seed",
  summary: "Seeds to plant per acre for the stand you want.",
  args: {
    targetStand: quantity(seedLimits.targetStand, { says: "plants wanted" }),
    germination: percent(seedLimits.germination, { says: "germination on the seed tag" }),
    fieldSurvival: optional(
      percent(seedLimits.fieldSurvival, { says: "share of live seeds that become established plants" }),
      100,
      "100: germination then stands for both losses together",
    ),
  },
  returns: { shape: "one", unit: "seeds/ac", says: "seeds to plant" },
  sources: ["ndsu-seeding-rates"],
  example: {
    call: [100_000, 90, 80],
    gives: 138_888.889,
    because: "by hand: 100,000 / (0.90 × 0.80) = 100,000 / 0.72",
  },
  compute: ({ targetStand, germination, fieldSurvival }) =>
    seedRateOf({ targetStandPerAc: targetStand, germinationPct: germination, fieldSurvivalPct: fieldSurvival }),
  value: (result) => result.seedsPerAc,
  working: (result) => [
    line("Plants from 100 seeds", result.plantsPerSeedPct, "plants"),
    line("Seeds that do not germinate", result.deadSeedsPerAc, "seeds/ac"),
    line("Seedlings lost before they stand", result.lostSeedlingsPerAc, "plants/ac"),
    line("Seeds to plant", result.seedsPerAc, "seeds/ac"),
    ...(result.isPoor
      ? [line("Look again", "fewer than half of the seeds become plants: check the tag and the seedbed")]
      : []),
  ],
});

export const seedSpacing = worksheetFunction({
  name: "SEEDSPACING",
  family: "seed",
  summary: "Inches between seeds in the row at a seeding rate.",
  args: { rate, rowWidth },
  returns: { shape: "one", unit: "in", says: "distance from seed to seed" },
  sources: ["acre-geometry"],
  example: {
    call: [32_000, 30],
    gives: 6.534,
    because: "by hand: 12 × 522,720 / (32,000 × 30) = 6,272,640 / 960,000",
  },
  compute: (values) => seedSpacingOf({ seedsPerAc: values.rate, rowWidthIn: values.rowWidth }),
  value: (result) => result.spacingIn,
  working: (result) => [
    line("Row in an acre", result.rowFeetPerAc, "ft"),
    line("Seeds per foot of row", result.seedsPerFoot, "seeds"),
    line("From seed to seed", result.spacingIn, "in"),
  ],
});
