import { seedCost as seedCostOf } from "../../core/seed/seed-cost";
import { seedLimits } from "../../core/seed/seed-limits";
import { seedReturn as seedReturnOf } from "../../core/seed/seed-return";
import { unitsToBuy } from "../../core/seed/units-to-buy";
import { line, quantity, worksheetFunction } from "../frame";
import { rate, seedsPerUnit, treatmentPerUnit, unitPrice } from "./seed-arguments";
import { published, unitLine } from "./seed-unit-lines";
import { treatedSeed } from "../cautions";

export const seedUnits = worksheetFunction({
  name: "SEEDUNITS",
  family: "seed",
  summary: "Whole units of seed to buy for a field.",
  asks: ["how many bags of seed do I buy", "units of soybean seed for a field", "how much seed to order"],
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
  asks: ["what does seed cost per acre", "seed cost from a bag price", "price of a bag to dollars per acre"],
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

export const seedReturn = worksheetFunction({
  name: "SEEDRETURN",
  family: "seed",
  summary: "What an acre brings over the cost of its seed.",
  asks: ["return to seed", "does a higher seeding rate pay", "how many seeds does a bushel buy"],
  args: {
    rate,
    yield: quantity(seedLimits.yield, { says: "bushels per acre at that rate" }),
    grainPrice: quantity(seedLimits.grainPrice, { says: "price of a bushel" }),
    unitPrice,
    seedsPerUnit,
    treatmentPerUnit,
  },
  returns: { shape: "one", unit: "$/ac", says: "gross less seed and treatment" },
  sources: ["msu-soybean-seed-2010", "illinois-seed-cost", "trade-seed-units"],
  example: {
    call: [120_000, 43.86, 12.9, 45, "soybean"],
    gives: 527.22,
    because: "printed: $527.22; by hand 43.86 × 12.90 − 120,000 / 140,000 × 45 = 565.794 − 38.571",
  },
  compute: (values) =>
    seedReturnOf({
      seedsPerAc: values.rate,
      yieldBuPerAc: values.yield,
      grainPriceUsd: values.grainPrice,
      unitPriceUsd: values.unitPrice,
      unitSize: values.seedsPerUnit,
      treatmentUsdPerUnit: values.treatmentPerUnit,
    }),
  value: (result) => result.returnUsdPerAc,
  working: (result) => [
    unitLine(result.cost.unit),
    line("Gross", result.grossUsdPerAc, "$/ac"),
    line("Seed and treatment", result.cost.costUsdPerAc, "$/ac"),
    line("Seeds that one bushel buys", result.seedsPerBushel ?? "the seed costs nothing", "seeds"),
    line("Left over the seed", result.returnUsdPerAc, "$/ac"),
  ],
  cites: (result) => published(result.cost.unit),
});
