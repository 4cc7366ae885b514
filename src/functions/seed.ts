import { rowLength as rowLengthOf } from "../core/seed/row-length";
import { seedCost as seedCostOf } from "../core/seed/seed-cost";
import { seedLimits } from "../core/seed/seed-limits";
import { seedRate as seedRateOf } from "../core/seed/seed-rate";
import { seedSpacing as seedSpacingOf } from "../core/seed/seed-spacing";
import { standCount as standCountOf } from "../core/seed/stand-count";
import { unitsToBuy } from "../core/seed/units-to-buy";
import type { SeedUnit, UnitSize } from "../core/seed/seed-unit";
import { crops, type CropKey } from "../reference/crops";
import { line, list, optional, percent, quantity, worksheetFunction, type WorkingLine } from "./frame";
import { orWord } from "./number-or-word";
import { cropWords } from "./words";

const rate = quantity(seedLimits.seedRate, { says: "seeds planted" });
const rowWidth = quantity(seedLimits.rowWidth, { says: "distance from row to row" });

const saysFraction = { says: "part of an acre, such as 0.001 or 1/1000" };
/** Reads past 1, so that the formula can ask about 1000 typed for 1/1000. */
const fractionOfAcre = {
  ...quantity(seedLimits.fractionOfAcre, saysFraction),
  read: quantity({ ...seedLimits.fractionOfAcre, max: 1e9 }, saysFraction).read,
};

const seedsPerUnit = optional(
  orWord<CropKey, UnitSize>(
    quantity(seedLimits.seedsPerUnit, {
      says: "seeds in one unit, or a crop whose trade unit it is: corn, soybean or sunflower",
    }),
    cropWords,
    { ofNumber: (count) => ({ seedsPerUnit: count }), ofWord: (crop) => ({ crop }) },
  ),
  null,
  "asked for: no crop is assumed",
);

const treatedSeed =
  "Treated seed never goes into grain, feed or oil; its label says what to wear and how to dispose of leftovers.";

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

export const seedUnits = worksheetFunction({
  name: "SEEDUNITS",
  family: "seed",
  summary: "Whole units of seed to buy for a field.",
  args: { rate, acres: quantity(seedLimits.acres, { says: "acres to plant" }), seedsPerUnit },
  returns: { shape: "one", unit: "units", says: "whole units to buy; no reserve is added" },
  sources: ["illinois-seed-cost", "msu-soybean-seed-2010", "trade-seed-units"],
  example: {
    call: [32_000, 154, "corn"],
    gives: 62,
    because: "by hand: 32,000 × 154 / 80,000 = 61.6, rounded up",
  },
  cautions: [treatedSeed],
  compute: (values) => unitsToBuy({ seedsPerAc: values.rate, acres: values.acres, unitSize: values.seedsPerUnit }),
  value: (result) => result.units,
  working: (result) => [
    unitLine(result.unit),
    line("Seeds needed", result.seedsNeeded, "seeds"),
    line("Units needed", result.exactUnits, "units"),
    line("Units to buy", result.units, "units"),
    line("Left over", result.seedsLeftOver, "seeds"),
    line("One unit plants", result.acresPerUnit, "ac"),
  ],
  cites: (result) => published(result.unit),
});

export const seedCost = worksheetFunction({
  name: "SEEDCOST",
  family: "seed",
  summary: "Cost of the seed on an acre, treatment included.",
  args: {
    rate,
    unitPrice: quantity(seedLimits.unitPrice, { says: "price of one unit of seed" }),
    seedsPerUnit,
    treatmentPerUnit: optional(
      quantity(seedLimits.treatmentPerUnit, { says: "seed treatment and inoculant put on one unit" }),
      0,
      "0: none, or already in the unit price",
    ),
  },
  returns: { shape: "one", unit: "$/ac", says: "cost of seed and treatment" },
  sources: ["illinois-seed-cost", "msu-soybean-seed-2010", "trade-seed-units"],
  example: {
    call: [34_000, 240, 80_000],
    gives: 102,
    because: "printed: $240 for 80,000 kernels is $3.00 a thousand; 34,000 kernels cost $102",
  },
  cautions: [treatedSeed],
  compute: (values) =>
    seedCostOf({
      seedsPerAc: values.rate,
      unitPriceUsd: values.unitPrice,
      unitSize: values.seedsPerUnit,
      treatmentUsdPerUnit: values.treatmentPerUnit,
    }),
  value: (result) => result.costUsdPerAc,
  working: (result) => [
    unitLine(result.unit),
    line("Units per acre", result.unitsPerAc, "units/ac"),
    line("Seed", result.seedUsdPerAc, "$/ac"),
    line("Treatment", result.treatmentUsdPerAc, "$/ac"),
    line("A thousand seeds cost", result.usdPerThousandSeeds, "$"),
    line("Seed and treatment", result.costUsdPerAc, "$/ac"),
  ],
  cites: (result) => published(result.unit),
});

export const rowLength = worksheetFunction({
  name: "ROWLENGTH",
  family: "seed",
  summary: "Feet of row that make up a thousandth of an acre, or another fraction.",
  args: {
    rowWidth,
    fractionOfAcre: optional(fractionOfAcre, 0.001, "1/1000"),
  },
  returns: { shape: "one", unit: "ft", says: "length of one row" },
  sources: ["acre-geometry", "ndsu-procrop-row-length"],
  example: {
    call: [30],
    gives: 17.424,
    because: "by hand: 43,560 / 1,000 = 43.56 square feet; / 2.5 ft of row width",
  },
  compute: (values) => rowLengthOf({ rowWidthIn: values.rowWidth, fractionOfAcre: values.fractionOfAcre }),
  value: (result) => result.feet,
  working: (result) => [
    line("Row in an acre", result.rowFeetPerAc, "ft"),
    line("Length to measure", result.feet, "ft"),
    line("On the tape", `${result.wholeFeet} ft ${result.restInches} in`),
  ],
});

export const standCount = worksheetFunction({
  name: "STANDCOUNT",
  family: "seed",
  summary: "Plants per acre from counts along the row.",
  args: {
    counts: list(quantity(seedLimits.plantCount, { says: "plants" }), {
      says: "plants in each place counted, one cell a place",
    }),
    rowWidth,
    feetCounted: optional(
      quantity(seedLimits.feetCounted, { says: "feet of row behind each count, all its rows together" }),
      null,
      "the thousandth of an acre at this row width",
    ),
  },
  returns: { shape: "one", unit: "plants/ac", says: "mean stand over the places counted" },
  sources: ["acre-geometry", "ndsu-procrop-row-length"],
  example: {
    call: [[[28], [31], [30], [26], [29]], 30],
    gives: 28_800,
    because: "by hand: (28 + 31 + 30 + 26 + 29) / 5 = 28.8; each plant stands for 1,000",
  },
  compute: (values) =>
    standCountOf({ counts: values.counts, rowWidthIn: values.rowWidth, feetCounted: values.feetCounted }),
  value: (result) => result.plantsPerAc,
  working: (result) => [
    line("Places counted", result.counts, "places"),
    line("Mean count", result.meanCount, "plants"),
    line("Row behind each count", result.feetCounted, "ft"),
    line("One plant stands for", result.plantsPerAcEach, "plants/ac"),
    line("Thinnest place", result.lowestPerAc, "plants/ac"),
    line("Thickest place", result.highestPerAc, "plants/ac"),
    line("Mean stand", result.plantsPerAc, "plants/ac"),
  ],
});

function unitLine(unit: SeedUnit): WorkingLine {
  const of = unit.published ? `, the trade's unit of ${crops[unit.published.crop].label}` : "";
  return line(`Seeds in one unit${of}`, unit.seedsPerUnit, "seeds");
}

function published(unit: SeedUnit) {
  return unit.published ? [unit.published] : [];
}

export const seedFunctions = [seedRate, seedSpacing, seedUnits, seedCost, rowLength, standCount] as const;
