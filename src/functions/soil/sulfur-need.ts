import { limits } from "../../core/limits";
import { nitrogenLimits } from "../../core/nitrogen/nitrogen-limits";
import { soilLimits } from "../../core/soil/soil-limits";
import { sulfurNeed as sulfurNeedOf } from "../../core/soil/sulfur-need";
import { sulfurGuides } from "../../reference/soil";
import { choice, line, optional, quantity, worksheetFunction } from "../frame";
import { cropWords, sulfurGuideWords } from "../words";
import { checkLines } from "../check-lines";
import { organicMatterArgument, textureArgument } from "./credit-arguments";
import { seedTouch } from "../cautions";
import { printedEnds } from "./printed-ends";

export const sulfurNeed = worksheetFunction({
  name: "SULFURNEED",
  family: "soil",
  summary: "Pounds of sulfur that a region recommends for a crop.",
  asks: ["how much sulfur", "does my corn need sulfur", "sulfur on sandy ground"],
  args: {
    crop: choice(cropWords, { says: "crop to be grown" }),
    yieldGoal: quantity(limits.yieldAny, { says: "yield goal in the crop's own unit per acre" }),
    organicMatter: organicMatterArgument,
    guide: choice(sulfurGuideWords, { says: "region, by its postal code" }),
    soilTest: optional(
      quantity(soilLimits.sulfateTest, { says: "sulfate-S: profile lb/ac for KS, ppm for NE" }),
      null,
      "waited for where the guide reads it",
    ),
    soil: textureArgument,
    credits: optional(quantity(nitrogenLimits.credits, { says: "sulfur from manure and irrigation water" }), 0, "none"),
  },
  returns: { shape: "one", unit: "lb/ac", says: "pounds of sulfur per acre; the middle of a printed range" },
  sources: [
    "ksu-wheat-sulfur",
    "ksu-mf2586",
    "umn-sulfur",
    "unl-postpone-2016",
    "ndsu-costs-2022",
    "isu-alfalfa-sulfur",
  ],
  cautions: [
    "Kansas counts sulfur from organic matter already: do not credit it again.",
    "Elemental sulfur has to turn to sulfate before a crop can use it: not this season's cure.",
    seedTouch,
  ],
  example: {
    call: ["wheat", 60, 2, "KS", 10],
    gives: 21,
    because: "by hand: 0.6 × 60 − 2.5 × 2 − 10 = 36 − 5 − 10",
  },
  compute: ({ crop, yieldGoal, organicMatter, guide, soilTest, soil, credits }) =>
    sulfurNeedOf({ crop, yieldGoal, organicMatterPct: organicMatter, guide, soilTest, soil, creditsLbPerAc: credits }),
  value: (result) => result.needLbPerAc,
  working: (result, { guide, credits }) => [
    line("Region", sulfurGuides[guide].label),
    ...(credits > 0 ? [line("Credits taken off", -credits, "lb/ac")] : []),
    ...printedEnds(result),
    ...(result.unclippedLbPerAc < 0 ? [line("Below zero, so none", result.unclippedLbPerAc, "lb/ac")] : []),
    line("Sulfur", result.needLbPerAc, "lb/ac"),
    ...checkLines([result.rule]),
  ],
  cites: (result) => [result.rule],
});
