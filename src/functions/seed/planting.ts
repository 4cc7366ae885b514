import { seedCatch as seedCatchOf } from "../../core/seed/seed-catch";
import { seedLimits } from "../../core/seed/seed-limits";
import { seedPerFoot as seedPerFootOf } from "../../core/seed/seed-per-foot";
import { seedPounds as seedPoundsOf } from "../../core/seed/seed-pounds";
import { seedRate as seedRateOf } from "../../core/seed/seed-rate";
import { seedSpacing as seedSpacingOf } from "../../core/seed/seed-spacing";
import { line, optional, percent, quantity, worksheetFunction } from "../frame";
import { rate, rowWidth } from "./seed-arguments";
import { blockedUp, machinery, treatedSeed } from "../cautions";

export const seedRate = worksheetFunction({
  name: "SEEDRATE",
  family: "seed",
  summary: "Seeds to plant per acre for the stand you want.",
  asks: ["how many seeds per acre", "seeding rate for my stand", "seeds to drop for 32,000 plants"],
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
  asks: ["how far apart are seeds in the row", "inches between seeds", "seed spacing in 30-inch rows"],
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

export const seedPounds = worksheetFunction({
  name: "SEEDPOUNDS",
  family: "seed",
  summary: "Pounds of seed per acre for a rate in seeds, from seeds per pound or the weight of 1,000 kernels.",
  asks: ["pounds of wheat seed per acre", "seeds per pound", "thousand kernel weight seeding rate"],
  args: {
    rate,
    seedsPerPound: optional(
      quantity(seedLimits.seedsPerPound, { says: "seeds in a pound, from the tag or a count" }),
      null,
      "worked out from thousandKernelGrams",
    ),
    thousandKernelGrams: optional(
      quantity(seedLimits.thousandKernelGrams, { says: "weight of 1,000 kernels, in place of seedsPerPound" }),
      null,
      "seedsPerPound is taken",
    ),
  },
  returns: { shape: "one", unit: "lb/ac", says: "seed to drill" },
  sources: ["ndsu-seeding-rates", "kentucky-wheat-seeding", "thousand-kernel-weight"],
  example: { call: [1_524_600, 14_000], gives: 108.9, because: "by hand: 35 × 43,560 / 14,000; printed as 109" },
  cautions: [treatedSeed],
  compute: (values) =>
    seedPoundsOf({
      seedsPerAc: values.rate,
      seedsPerLb: values.seedsPerPound,
      thousandKernelG: values.thousandKernelGrams,
    }),
  value: (result) => result.poundsPerAc,
  working: (result) => [
    line("Seeds in a pound", result.seedsPerLb, "seeds/lb"),
    line("Weight of 1,000 kernels", result.thousandKernelG, "g"),
    line("Seeds on a square foot", result.seedsPerSqFt, "seeds"),
    line("Seed to drill", result.poundsPerAc, "lb/ac"),
  ],
});

export const seedPerFoot = worksheetFunction({
  name: "SEEDPERFOOT",
  family: "seed",
  summary: "Seeds in a foot of row at a seeding rate.",
  asks: ["seeds per foot of row", "check the planter setting", "how many seeds should I dig up"],
  args: { rate, rowWidth },
  returns: { shape: "one", unit: "seeds/ft", says: "seeds in a foot of row" },
  sources: ["acre-geometry", "kentucky-wheat-seeding"],
  example: {
    call: [1_524_600, 7],
    gives: 20.4167,
    tolerance: 0.0001,
    because: "by hand: 35 seeds on a square foot × 7 / 12; printed as 20.4",
  },
  compute: (values) => seedPerFootOf({ seedsPerAc: values.rate, rowWidthIn: values.rowWidth }),
  value: (result) => result.seedsPerFoot,
  working: (result) => [
    line("Seeds on a square foot", result.seedsPerSqFt, "seeds"),
    line("Row that makes a square foot", result.rowInchesPerSqFt, "in"),
    line("Seeds in a thousandth of an acre", result.seedsPerThousandthAc, "seeds"),
    line("Seeds in a foot of row", result.seedsPerFoot, "seeds/ft"),
  ],
});

export const seedCatch = worksheetFunction({
  name: "SEEDCATCH",
  family: "seed",
  summary: "Pounds per acre a drill puts out, from seed caught over a measured run.",
  asks: ["calibrate the drill", "how many pounds is the drill seeding", "drill catch test"],
  args: {
    grams: quantity(seedLimits.grams, { says: "seed caught, all rows together" }),
    rows: quantity(seedLimits.drillRows, { says: "rows the seed was caught from" }),
    rowWidth,
    feet: quantity(seedLimits.catchFeet, { says: "length of the run, or of the wheel's turns on a stand" }),
  },
  returns: { shape: "one", unit: "lb/ac", says: "measured rate" },
  sources: ["drill-catch"],
  example: {
    call: [453.592_37, 6, 7.5, 100],
    gives: 116.16,
    because: "by hand: 1 lb on 6 × 7.5 / 12 × 100 = 375 square feet; 43,560 / 375",
  },
  cautions: [treatedSeed, blockedUp, machinery],
  compute: (values) =>
    seedCatchOf({ grams: values.grams, rows: values.rows, rowWidthIn: values.rowWidth, feet: values.feet }),
  value: (result) => result.poundsPerAc,
  working: (result) => [
    line("Caught", result.poundsCaught, "lb"),
    line("Ground behind it", result.groundSqFt, "sq ft"),
    line("Measured rate", result.poundsPerAc, "lb/ac"),
  ],
});
