import { seedLimits } from "../../core/seed/seed-limits";
import { liquidTreatment, packageTreatmentUsdPerAc } from "../../core/seed/treatment-cost";
import { line, optional, quantity, worksheetFunction } from "../frame";
import { labelLaw, treatedSeed } from "../cautions";

const grainPrice = optional(
  quantity(seedLimits.grainPrice, { says: "price of a bushel, net of what it costs to handle" }),
  null,
  "no break-even gain is shown",
);

function breakEvenLines(costUsdPerAc: number, priceUsd: number | null) {
  return priceUsd === null ? [] : [line("Gain that pays for it", costUsdPerAc / priceUsd, "bu/ac")];
}

export const treatmentCost = worksheetFunction({
  name: "TREATMENTCOST",
  family: "seed",
  summary: "Cost per acre of a seed treatment or inoculant sold by the package.",
  asks: ["what does inoculant cost an acre", "seed treatment cost per acre", "does seed treatment pay"],
  args: {
    packagePrice: quantity(seedLimits.packagePrice, { says: "price of one package" }),
    seedTreated: quantity(seedLimits.seedTreated, { says: "seed that one package treats" }),
    seedPerAcre: quantity(seedLimits.seedPerAc, { says: "seed that goes on an acre" }),
    grainPrice,
  },
  returns: { shape: "one", unit: "$/ac", says: "cost on an acre" },
  sources: ["treatment-arithmetic"],
  example: {
    call: [150, 50, 1, 10],
    gives: 3,
    because: "by hand: $150 treats 50 units, $3 a unit; one unit goes on an acre; 3 / 10 = 0.3 bu pays for it",
  },
  cautions: [treatedSeed, labelLaw],
  compute: ({ packagePrice, seedTreated, seedPerAcre }) =>
    packageTreatmentUsdPerAc({ packagePriceUsd: packagePrice, seedTreated, seedPerAc: seedPerAcre }),
  value: (costUsdPerAc) => costUsdPerAc,
  working: (costUsdPerAc, { seedTreated, seedPerAcre, grainPrice: price }) => [
    line("One package plants", seedTreated / seedPerAcre, "ac"),
    line("Cost", costUsdPerAc, "$/ac"),
    ...breakEvenLines(costUsdPerAc, price),
  ],
});

export const treatmentLiquid = worksheetFunction({
  name: "TREATMENTLIQUID",
  family: "seed",
  summary: "Cost per acre of a liquid seed treatment given in fluid ounces per 100 pounds of seed.",
  asks: ["liquid seed treatment cost", "ounces per hundredweight to dollars an acre"],
  args: {
    rate: quantity(seedLimits.fluidOunceRate, { says: "label rate for 100 pounds of seed" }),
    pricePerGallon: quantity(seedLimits.pricePerGallon, { says: "price of the treatment" }),
    poundsPerAcre: quantity(seedLimits.seedPounds, { says: "seed that goes on an acre; SEEDPOUNDS gives it" }),
    grainPrice,
  },
  returns: { shape: "one", unit: "$/ac", says: "cost on an acre" },
  sources: ["treatment-arithmetic"],
  example: {
    call: [5, 256, 90],
    gives: 9,
    because: "by hand: 5 × 90 / 100 = 4.5 fl oz an acre; $256 / 128 = $2 a fluid ounce",
  },
  cautions: [treatedSeed, labelLaw],
  compute: ({ rate, pricePerGallon, poundsPerAcre }) =>
    liquidTreatment({ fluidOuncePerCwt: rate, priceUsdPerGal: pricePerGallon, seedLbPerAc: poundsPerAcre }),
  value: (result) => result.costUsdPerAc,
  working: (result, { grainPrice: price }) => [
    line("Treatment on an acre", result.fluidOuncePerAc, "fl oz"),
    line("Cost", result.costUsdPerAc, "$/ac"),
    ...breakEvenLines(result.costUsdPerAc, price),
  ],
});
