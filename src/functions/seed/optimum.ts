import { publishedOptimum, type CurveChoice } from "../../core/seed/published-optimum";
import { seedLimits } from "../../core/seed/seed-limits";
import { seedOptimum as seedOptimumOf, type SeedOptimum } from "../../core/seed/seed-optimum";
import { populationCurves, type PopulationCurveKey } from "../../reference/seed/population-curves";
import { line, optional, percent, quantity, worksheetFunction, type WorkingLine } from "../frame";
import { orWord } from "../number-or-word";
import { checkLines } from "../check-lines";
import { populationCurveWords } from "./seed-words";

const seedPricePerThousand = quantity(seedLimits.seedPricePerThousand, { says: "cost of a thousand seeds" });
const grainPrice = quantity(seedLimits.grainPrice, { says: "price of a bushel, net of harvest, drying and hauling" });
const survival = optional(
  percent(seedLimits.survival, { says: "plants from a hundred seeds" }),
  100,
  "100: every seed a plant",
);
const bounds = {
  fewestPlants: optional(
    quantity(seedLimits.stand, { says: "thinnest stand the curve holds for" }),
    null,
    "the curve's own, where published",
  ),
  mostPlants: optional(
    quantity(seedLimits.stand, { says: "thickest stand the curve holds for" }),
    null,
    "the curve's own, where published",
  ),
};

export const seedOptimum = worksheetFunction({
  name: "SEEDOPTIMUM",
  family: "seed",
  summary: "Most profitable stand on your own yield curve: linear and quadratic terms in thousands of plants.",
  asks: ["best plant population", "most profitable seeding rate", "economic optimum population"],
  args: {
    linear: quantity(seedLimits.linear, { says: "linear term of the curve; RESPONSEFIT gives it" }),
    quadratic: quantity(seedLimits.quadratic, { says: "quadratic term, below 0" }),
    seedPricePerThousand,
    grainPrice,
    survival,
    ...bounds,
  },
  returns: { shape: "one", unit: "plants/ac", says: "stand that earns most over its seed" },
  sources: ["population-optimum"],
  example: {
    call: [8, -0.125, 4, 4, 100],
    gives: 28_000,
    because: "by hand: 1,000 plants must bring 4 / 4 = 1 bu; (1 − 8) / (2 × −0.125) = 28 thousand",
  },
  compute: (values) =>
    seedOptimumOf({
      curve: { form: "quadratic", linear: values.linear, quadratic: values.quadratic },
      seedUsdPerThousand: values.seedPricePerThousand,
      grainPriceUsd: values.grainPrice,
      survivalPct: values.survival,
      fewestPerAc: values.fewestPlants,
      mostPerAc: values.mostPlants,
    }),
  value: (result) => result.plantsPerAc,
  working: optimumLines,
});

export const seedCurveOptimum = worksheetFunction({
  name: "SEEDCURVEOPTIMUM",
  family: "seed",
  summary: "Most profitable stand on a published yield curve, or on your own that levels off.",
  asks: ["best corn population", "how thick to plant soybeans", "cheapest soybean rate that keeps yield"],
  args: {
    curve: orWord<PopulationCurveKey, CurveChoice>(
      quantity(seedLimits.riseRate, {
        says: "a published curve, or the rise of your own: yield = full × (1 - e^(-rise × thousand plants))",
      }),
      populationCurveWords,
      { ofNumber: (rise) => ({ rise }), ofWord: (key) => ({ key }) },
    ),
    fullYield: quantity(seedLimits.fullYield, { says: "yield of a full stand planted in good time" }),
    seedPricePerThousand,
    grainPrice,
    survival,
    ...bounds,
  },
  returns: { shape: "one", unit: "plants/ac", says: "stand that earns most over its seed" },
  sources: ["population-optimum", "nafziger-1994", "isu-ipm0001", "illinois-bulletin-2009"],
  example: {
    call: ["corn Illinois", 200, 3, 4, 95],
    gives: 27_778,
    tolerance: 1,
    because: "by hand: 3 / (0.95 × 4) = 0.78947 bu; (0.78947 − 9.38654) / (2 × −0.1547442) = 27.778 thousand",
  },
  compute: (values) =>
    publishedOptimum({
      choice: values.curve,
      fullYieldBu: values.fullYield,
      seedUsdPerThousand: values.seedPricePerThousand,
      grainPriceUsd: values.grainPrice,
      survivalPct: values.survival,
      fewestPerAc: values.fewestPlants,
      mostPerAc: values.mostPlants,
    }),
  value: (result) => result.plantsPerAc,
  working: (result) => [
    ...optimumLines(result),
    line("Yield at that stand, planted in good time", result.yieldBuPerAc, "bu/ac"),
    line("Left over the seed", result.overSeedUsdPerAc, "$/ac"),
    ...checkLines(result.published ? [result.published] : []),
  ],
  cites: (result) => (result.published ? [result.published] : []),
  everyRow: () => populationCurves.rows,
});

function optimumLines(result: SeedOptimum): WorkingLine[] {
  const { highestYieldPlantsPerAc: highest, heldAt } = result;
  return [
    line("A thousand more plants must bring", result.neededBuPerThousand, "bu/ac"),
    ...(highest === null ? [] : [line("Stand of the highest yield", highest, "plants/ac")]),
    line("Most profitable stand", result.plantsPerAc, "plants/ac"),
    line("Seeds to plant for it", result.seedsPerAc, "seeds/ac"),
    line("Seed", result.seedUsdPerAc, "$/ac"),
    ...(heldAt === null ? [] : [line("Look again", `held at the ${heldAt} plants the curve holds for`)]),
  ];
}
