import { shrunkBushels, type Shrink, type ShrinkInput } from "../../core/harvest/grain-shrink";
import { harvestLimits } from "../../core/harvest/harvest-limits";
import { marketBushels as marketBushelsOf, marketYield as marketYieldOf } from "../../core/harvest/market-bushels";
import { choice, line, optional, percent, quantity, worksheetFunction, type WorkingLine } from "../frame";
import { checkLines } from "../check-lines";
import { grainWords } from "../words";
import { buyersTerms, treatedSeed } from "../cautions";

const bushels = quantity(harvestLimits.bushels, { says: "bushels weighed in: pounds over the bushel weight" });
const pounds = quantity(harvestLimits.pounds, { says: "pounds weighed" });
const moisture = percent(harvestLimits.moisture, { says: "moisture of the grain as weighed, percent of wet weight" });
const crop = choice(grainWords, { says: "sets the bushel weight and the market moisture" });
const marketMoisture = optional(
  percent(harvestLimits.marketMoisture, { says: "moisture at which the buyer pays a full bushel" }),
  null,
  "the usual one of the crop: corn 15.5, soybean 13, wheat 13.5",
);
const handlingLoss = optional(
  percent(harvestLimits.handlingLoss, { says: "loss in dust and fines, percent of wet weight", smallIsUsual: true }),
  null,
  "0.5",
);
const shrinkPerPoint = optional(
  quantity(harvestLimits.shrinkPerPoint, {
    says: "the buyer's flat shrink for each point, in place of water and handling",
  }),
  null,
  "water and handling as they are",
);

export const grainShrink = worksheetFunction({
  name: "GRAINSHRINK",
  family: "harvest",
  summary: "Bushels left after drying to the market moisture.",
  asks: ["how much does corn shrink", "dry bushels from wet bushels", "moisture shrink", "weight lost to moisture"],
  args: { bushels, moisture, crop, handlingLoss, marketMoisture, shrinkPerPoint },
  returns: { shape: "one", unit: "bu", says: "dry bushels" },
  sources: ["dry-matter-balance", "extension-handling-loss", "sdsu-shrink-2020", "uwex-bushels-test-weight"],
  cautions: [buyersTerms],
  example: {
    call: [1000, 25, "corn"],
    gives: 882.574,
    because: "by hand: water (25 − 15.5) × 100 / 84.5 = 11.2426 %, handling 0.5 %; 1,000 × (1 − 0.117426)",
  },
  compute: (values) => shrunkBushels(values.bushels, inputOf(values)),
  value: (result) => result.paidBu,
  working: (result) => [
    line("Wet bushels", result.wetBu, "bu"),
    ...shrinkLines(result.shrink),
    line("Water", result.waterBu, "bu"),
    line("Handling", result.handlingBu, "bu"),
    line("Dry bushels", result.paidBu, "bu"),
    ...(result.shrink.isOverdry ? [line("Given away by drying past the market", result.givenAwayBu, "bu")] : []),
    ...checkLines(result.shrink.cited),
  ],
  cites: (result) => result.shrink.cited,
});

interface ShrinkValues {
  readonly moisture: number;
  readonly crop: ShrinkInput["grain"];
  readonly handlingLoss: number | null;
  readonly marketMoisture: number | null;
  readonly shrinkPerPoint: number | null;
}

function inputOf(values: ShrinkValues): ShrinkInput {
  return {
    grain: values.crop,
    moisturePct: values.moisture,
    marketMoisturePct: values.marketMoisture,
    handlingLossPct: values.handlingLoss,
    shrinkPerPointPct: values.shrinkPerPoint,
  };
}

function shrinkLines(shrink: Shrink): WorkingLine[] {
  return [
    line("Market moisture", shrink.marketMoisturePct, "%"),
    line("Points to take out", shrink.points, "points"),
    line("Shrink by water", shrink.waterPct, "% of wet weight"),
    line("Shrink by handling", shrink.handlingPct, "% of wet weight"),
    line("Shrink taken", shrink.totalPct, "% of wet weight"),
    ...(shrink.isOverdry ? [line("Drier than the market", "no bushels are paid for water that is not there")] : []),
  ];
}

export const marketBushels = worksheetFunction({
  name: "MARKETBUSHELS",
  family: "harvest",
  summary: "Bushels paid for a weighed load of grain.",
  asks: ["how many bushels in this load", "pounds to bushels with shrink", "paid bushels from the scale ticket"],
  args: { pounds, moisture, crop, handlingLoss, marketMoisture, shrinkPerPoint },
  returns: { shape: "one", unit: "bu", says: "bushels at market moisture, after shrink" },
  sources: ["dry-matter-balance", "extension-handling-loss", "sdsu-shrink-2020", "mn-statutes-239.32"],
  cautions: [buyersTerms, treatedSeed],
  example: {
    call: [56_000, 25, "corn", 0],
    gives: 887.574,
    because: "by hand: 56,000 / 56 × 75 / 84.5 = 1,000 × 0.887574",
  },
  compute: (values) => marketBushelsOf(values.pounds, inputOf(values)),
  value: (result) => result.bushels,
  working: (result) => [
    line("Bushel weight", result.bushelLb, "lb/bu"),
    line("Bushels as weighed", result.weighedBu, "bu"),
    ...shrinkLines(result.shrink),
    line("Bushels paid", result.bushels, "bu"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});

export const marketYield = worksheetFunction({
  name: "MARKETYIELD",
  family: "harvest",
  summary: "Yield at market moisture from a weighed strip or field, wet or overdry.",
  asks: ["yield corrected for moisture", "bushels per acre at 15.5", "strip weight to bushels per acre"],
  args: {
    pounds,
    acres: quantity(harvestLimits.acresHarvested, { says: "acres it came from" }),
    moisture,
    crop,
    marketMoisture,
  },
  returns: { shape: "one", unit: "bu/ac", says: "yield at market moisture, by the dry matter, without handling loss" },
  sources: ["dry-matter-balance", "uwex-bushels-test-weight", "mn-statutes-239.32"],
  example: {
    call: [8450, 1, 20, "corn"],
    gives: 142.857,
    because: "by hand: 8,450 × 80 / 84.5 = 8,000 lb at 15.5 %; / 56",
  },
  compute: (values) =>
    marketYieldOf(values.pounds, values.acres, {
      grain: values.crop,
      moisturePct: values.moisture,
      marketMoisturePct: values.marketMoisture,
    }),
  value: (result) => result.yieldBuPerAc,
  working: (result) => [
    line("As weighed", result.wetLbPerAc, "lb/ac"),
    line("Dry matter", result.dryMatterLbPerAc, "lb/ac"),
    line("Market moisture", result.marketMoisturePct, "%"),
    line("Bushel weight", result.bushelLb, "lb/bu"),
    line("Yield", result.yieldBuPerAc, "bu/ac"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});

export const overdryLoss = worksheetFunction({
  name: "OVERDRYLOSS",
  family: "harvest",
  summary: "Bushels given away by selling grain drier than the market pays for.",
  asks: ["what does overdrying cost", "selling beans too dry", "soybeans at 9 percent moisture"],
  args: { bushels, moisture, crop, marketMoisture },
  returns: {
    shape: "one",
    unit: "bu",
    says: "bushels of dry matter that are not paid; 0 for grain at the market or wetter",
  },
  sources: ["dry-matter-balance", "uwex-bushels-test-weight"],
  example: {
    call: [1000, 9, "soybean"],
    gives: 45.977,
    because: "by hand: 1,000 × 91 / 87 = 1,045.977 bushels of dry matter, 1,000 paid",
  },
  compute: (values) => shrunkBushels(values.bushels, inputOf({ ...values, handlingLoss: 0, shrinkPerPoint: null })),
  value: (result) => result.givenAwayBu,
  working: (result) => [
    line("Market moisture", result.shrink.marketMoisturePct, "%"),
    line("Bushels as weighed", result.wetBu, "bu"),
    line("The same dry matter at market moisture", result.wetBu * result.shrink.equalShare, "bu"),
    line("Given away", result.givenAwayBu, "bu"),
    ...checkLines(result.shrink.cited),
  ],
  cites: (result) => result.shrink.cited,
});
