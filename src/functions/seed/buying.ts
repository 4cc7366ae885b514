import { seedCost as seedCostOf } from "../../core/seed/seed-cost";
import { seedLimits } from "../../core/seed/seed-limits";
import { unitsToBuy } from "../../core/seed/units-to-buy";
import { line, quantity, worksheetFunction } from "../frame";
import { rate, seedsPerUnit, treatedSeed, treatmentPerUnit, unitPrice } from "./seed-arguments";
import { published, unitLine } from "./seed-unit-lines";

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
    unitPrice,
    seedsPerUnit,
    treatmentPerUnit,
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
