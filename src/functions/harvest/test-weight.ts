import { harvestLimits } from "../../core/harvest/harvest-limits";
import { paidBushels as paidBushelsOf, testWeightDry as testWeightDryOf } from "../../core/harvest/test-weight";
import { choice, line, optional, percent, quantity, worksheetFunction } from "../frame";
import { checkLines } from "../check-lines";
import { grainWords } from "../words";
import { buyersTerms } from "../cautions";

const testWeight = quantity(harvestLimits.testWeight, { says: "pounds in a measured bushel of volume" });

export const testWeightDry = worksheetFunction({
  name: "TESTWEIGHTDRY",
  family: "harvest",
  summary: "Test weight that sound, mature corn comes to when it is dried.",
  asks: ["test weight after drying", "does test weight rise when corn dries", "light corn at harvest"],
  args: {
    testWeight,
    moisture: percent(harvestLimits.testWeightMoisture, { says: "moisture of the wet corn, at most 25" }),
    dryMoisture: optional(percent(harvestLimits.testWeightMoisture, { says: "moisture after drying" }), 15.5, "15.5"),
  },
  returns: { shape: "one", unit: "lb/bu", says: "test weight after drying" },
  sources: ["hellevang-1995", "uwex-bushels-test-weight", "osu-paid-bushels-2014"],
  cautions: [buyersTerms],
  example: { call: [52, 20], gives: 54.925, because: "by hand: 52 × 84.5 / 80" },
  compute: (values) =>
    testWeightDryOf({
      testWeightLbPerBu: values.testWeight,
      moisturePct: values.moisture,
      dryMoisturePct: values.dryMoisture,
    }),
  value: (result) => result.testWeightLbPerBu,
  working: (result) => [
    line("Gained by drying", result.gainLbPerBu, "lb/bu"),
    line("Test weight when dry", result.testWeightLbPerBu, "lb/bu"),
    line("Grade", result.grade),
    line(
      "Mind",
      "immature, frosted or heat-damaged corn gains less; Wisconsin prints a gain of about 2 lb from 20 to 15.5 %, where this method gives about 3",
    ),
  ],
  cites: (result) => result.cited,
});

export const paidBushels = worksheetFunction({
  name: "PAIDBUSHELS",
  family: "harvest",
  summary: "Bushels paid for a volume of grain, by its test weight.",
  asks: ["bushels in the bin by weight", "volume bushels to paid bushels", "what does low test weight cost"],
  args: {
    volumeBushels: quantity(harvestLimits.bushels, { says: "bushels by volume, such as BINVOLUME gives" }),
    testWeight,
    crop: choice(grainWords, { says: "sets the bushel weight" }),
  },
  returns: { shape: "one", unit: "bu", says: "bushels by weight, before moisture shrink and discounts" },
  sources: ["osu-paid-bushels-2014", "mn-statutes-239.32"],
  cautions: [buyersTerms],
  example: { call: [1000, 52, "corn"], gives: 928.571, because: "by hand: 1,000 × 52 / 56; printed 929" },
  compute: ({ volumeBushels, testWeight: testWeightLbPerBu, crop }) =>
    paidBushelsOf(volumeBushels, testWeightLbPerBu, crop),
  value: (result) => result.paidBu,
  working: (result) => [
    line("Weight", result.weightLb, "lb"),
    line("Bushel weight", result.bushelLb, "lb/bu"),
    line("Bushels paid", result.paidBu, "bu"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});
