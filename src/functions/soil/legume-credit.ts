import { nitrogenLimits } from "../../core/nitrogen/nitrogen-limits";
import { legumeCredit as legumeCreditOf } from "../../core/nutrients/legume-credit";
import { creditGuides, previousCrops } from "../../reference/nitrogen";
import { choice, line, optional, quantity, worksheetFunction } from "../frame";
import { creditGuideWords, cropWords } from "../words";
import { checkLines } from "../check-lines";
import { previousCropChoice, standArgument, textureArgument } from "./credit-arguments";
import { printedEnds } from "./printed-ends";

export const legumeCredit = worksheetFunction({
  name: "LEGUMECREDIT",
  family: "soil",
  summary: "Pounds of nitrogen that a previous legume leaves for the next crop, as a region prints it.",
  asks: ["nitrogen credit from alfalfa", "soybean nitrogen credit", "nitrogen after clover"],
  args: {
    previousCrop: previousCropChoice,
    stand: standArgument,
    guide: choice(creditGuideWords, { says: "region whose credits to use, by its postal codes" }),
    nextCrop: optional(
      choice(cropWords, { says: "crop to be grown" }),
      null,
      "waited for where the region prints credits by crop",
    ),
    soil: textureArgument,
    season: optional(quantity(nitrogenLimits.season, { says: "season after the legume: 1 or 2" }), 1, "the first"),
    regrowth: optional(
      quantity(nitrogenLimits.regrowth, { says: "alfalfa regrowth when it was killed, for WI" }),
      null,
      "8 in or more",
    ),
    previousYield: optional(
      quantity(nitrogenLimits.bushels, { says: "yield of the soybean before, for NE and IA" }),
      null,
      "enough for the full credit",
    ),
  },
  returns: { shape: "one", unit: "lb/ac", says: "pounds of nitrogen per acre; the middle of a printed range" },
  sources: [
    "hay-forage-credit",
    "umn-corn",
    "umn-sunflower",
    "sdsu-ec750",
    "ndsu-credit-2023",
    "ndsu-beet-tops-2018",
    "north-platte-credits",
    "unl-ec117",
    "ksu-mf2586",
    "ksu-legume-wheat",
    "isu-pm1688-2013",
    "osu-wheat-nitrogen-2011",
  ],
  cautions: [
    "Take it off once: NITROGENNEED takes it off by itself, and rates printed by rotation (corn after soybean) hold it already.",
    "Kansas, alfalfa before wheat: half of the row-crop credit if it was killed in summer, little or none if killed late in fall.",
  ],
  example: {
    call: ["alfalfa", "good", "WI", "corn", "medium"],
    gives: 190,
    because: "printed: 190 lb on medium soil with 4 plants/sq ft or more",
  },
  compute: ({ previousCrop, stand, guide, nextCrop, soil, season, regrowth, previousYield }) =>
    legumeCreditOf({
      guide,
      previous: previousCrop,
      standPerSqFt: stand,
      nextCrop,
      soil,
      season,
      regrowthIn: regrowth,
      previousYieldBu: previousYield,
    }),
  value: (result) => result.creditLbPerAc,
  working: (result, { previousCrop, guide }) => [
    line("Region", creditGuides[guide].label),
    line("Previous crop", previousCrops[previousCrop].label),
    ...(result.row === null ? [line("Not a legume", "no nitrogen credit")] : []),
    ...printedEnds(result),
    line("Credit", result.creditLbPerAc, "lb/ac"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});
