import { limits } from "../../core/limits";
import { nitrogenLimits } from "../../core/nitrogen/nitrogen-limits";
import { nitrogenNeed as nitrogenNeedOf, type NitrogenNeed } from "../../core/nitrogen/nitrogen-need";
import { previousCrops } from "../../reference/nitrogen";
import { choice, line, optional, quantity, worksheetFunction, type WorkingLine } from "../frame";
import { cropWords, nitrogenGuideWords, tillageWords, timingWords } from "../words";
import { checkLines } from "../check-lines";
import { organicMatterArgument, previousCropChoice, standArgument, textureArgument } from "./credit-arguments";
import { ammonia, nutrientRules, seedTouch } from "../cautions";

export const nitrogenNeed = worksheetFunction({
  name: "NITROGENNEED",
  family: "soil",
  summary: "Pounds of nitrogen that a region's method recommends for a crop.",
  asks: ["how much nitrogen", "nitrogen rate for corn", "N rate for wheat", "nitrogen after soybeans"],
  args: {
    crop: choice(cropWords, { says: "crop to be grown" }),
    yieldGoal: quantity(limits.yieldAny, { says: "yield goal in the crop's own unit per acre (sunflower: cwt)" }),
    guide: choice(nitrogenGuideWords, { says: "published method, by the postal codes of its region" }),
    previousCrop: optional(previousCropChoice, null, "no credit for a previous crop is taken off"),
    soilNitrate: optional(
      quantity(nitrogenLimits.nitrate, {
        says: "soil nitrate-N as the method reads it: NE and IA in ppm, others lb/ac in 0 to 24 in",
      }),
      null,
      "the guide's own figure where it prints one (NE, KS corn), or waited for",
    ),
    organicMatter: organicMatterArgument,
    credits: optional(
      quantity(nitrogenLimits.credits, {
        says: "other nitrogen to take off: manure, irrigation water, fall nitrogen; nothing the method holds already",
      }),
      null,
      "none",
    ),
    soil: textureArgument,
    stand: standArgument,
    timing: optional(choice(timingWords, { says: "when it is applied, for NE" }), null, "preplant"),
    priceN: optional(
      quantity(nitrogenLimits.priceN, { says: "price of nitrogen, for NE" }),
      null,
      "no price adjustment",
    ),
    priceGrain: optional(
      quantity(nitrogenLimits.priceGrain, { says: "price of corn, for NE" }),
      null,
      "no price adjustment",
    ),
    guidelineRate: optional(
      quantity(nitrogenLimits.nitrogenRate, {
        says: "the region's own current table rate, for methods that start from one (MN economic, ND spring wheat)",
      }),
      null,
      "waited for there",
    ),
    tillage: optional(choice(tillageWords, { says: "tillage, for ND spring wheat" }), null, "waited for there"),
    criticalNitrate: optional(
      quantity(nitrogenLimits.critical, {
        says: "critical late-spring nitrate, for IA: 20 to 22 after a wet spring, about 15 where manured too",
      }),
      null,
      "25",
    ),
  },
  returns: { shape: "one", unit: "lb/ac", says: "pounds of nitrogen per acre, not rounded" },
  sources: [
    "unl-nitrogen-2021",
    "unl-ec117",
    "ksu-mf2586",
    "sdsu-corn-nitrogen-2023",
    "sdsu-ec750",
    "ndsu-barley-2022",
    "ndsu-costs-2022",
    "ndsu-spring-wheat-2009",
    "umn-wheat",
    "umn-oat",
    "umn-sunflower",
    "umn-canola",
    "umn-sugarbeet-2011",
    "umn-corn-2006",
    "umn-corn-nitrate-2002",
    "umn-small-grains-guide",
    "mu-recommendations-2006",
    "osu-corn-newsletter-2023",
    "osu-wheat-nitrogen-2011",
    "isu-late-spring-2004",
    "yield-based-nitrogen",
  ],
  cautions: [
    "Count each credit once: the working says which ones a method holds already.",
    nutrientRules,
    ammonia,
    "Nitrogen placed with the seed: stay under SALTLIMIT.",
    seedTouch,
  ],
  example: {
    call: ["corn", 200, "NE", "soybean", 3, 2.5, null, "medium", "good"],
    gives: 136,
    because: "by hand: 35 + 1.2 × 200 − 8 × 3 − 0.14 × 200 × 2.5 − 45 = 35 + 240 − 24 − 70 − 45",
  },
  compute: (values) =>
    nitrogenNeedOf({
      crop: values.crop,
      yieldGoal: values.yieldGoal,
      guide: values.guide,
      previous: values.previousCrop,
      soilNitrate: values.soilNitrate,
      organicMatterPct: values.organicMatter,
      creditsLbPerAc: values.credits,
      soil: values.soil,
      standPerSqFt: values.stand,
      timing: values.timing,
      priceNUsdPerLb: values.priceN,
      priceGrainUsdPerBu: values.priceGrain,
      guidelineLbPerAc: values.guidelineRate,
      tillage: values.tillage,
      criticalPpm: values.criticalNitrate,
    }),
  value: (result) => result.needLbPerAc,
  working: (result, { previousCrop, credits }) => [
    line("Method", `${result.guide.label}, ${result.guide.title}`),
    line("Already inside the method", result.inside),
    ...wantedLines(result),
    ...takenOffLines(result),
    ...(result.legume
      ? [
          line(
            `Credit for ${previousCrop === null ? "" : previousCrops[previousCrop].label}`,
            -result.legume.creditLbPerAc,
            "lb/ac",
          ),
        ]
      : [line("Previous crop", previousCrop === null ? "not given: no credit taken off" : "no credit taken off")]),
    ...(result.otherLbPerAc > 0 ? [line("Other credits", -result.otherLbPerAc, "lb/ac")] : []),
    ...(credits !== null && credits > result.otherLbPerAc
      ? [line("Other credits not counted by this method", credits - result.otherLbPerAc, "lb/ac")]
      : []),
    ...factorLines(result),
    ...(result.unclippedLbPerAc < 0 ? [line("Below zero, so none", result.unclippedLbPerAc, "lb/ac")] : []),
    line("Nitrogen, not rounded", result.needLbPerAc, "lb/ac"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});

function wantedLines(result: NitrogenNeed): WorkingLine[] {
  const { startLbPerAc, yieldLbPerAc, tillageLbPerAc, rule } = result;
  const start =
    rule === null ? "Rate in the table" : rule.startsFrom ? `From ${rule.startsFrom}` : "Constant of the method";
  return [
    ...(startLbPerAc === 0 ? [] : [line(start, startLbPerAc, "lb/ac")]),
    ...(yieldLbPerAc === 0 ? [] : [line("For the yield goal", yieldLbPerAc, "lb/ac")]),
    ...(tillageLbPerAc === 0 ? [] : [line("For tillage", tillageLbPerAc, "lb/ac")]),
  ];
}

function takenOffLines(result: NitrogenNeed): WorkingLine[] {
  const { nitrateRead, isUsualNitrate, nitrateLbPerAc, organicLbPerAc, richOrganicLbPerAc, rule } = result;
  const nitrate = rule?.nitrate;
  return [
    ...(nitrate && nitrateRead !== null
      ? [
          line(
            `${isUsualNitrate ? "The guide's usual" : "Soil"} ${nitrate.sample}: ${nitrateRead} ${nitrate.unit}`,
            -nitrateLbPerAc,
            "lb/ac",
          ),
        ]
      : []),
    ...(organicLbPerAc + richOrganicLbPerAc > 0
      ? [line("Organic matter", -(organicLbPerAc + richOrganicLbPerAc), "lb/ac")]
      : []),
  ];
}

function factorLines({ factors: { price, timing, priceRatio } }: NitrogenNeed): WorkingLine[] {
  return [
    ...(priceRatio === null ? [] : [line(`Price ratio ${Number(priceRatio.toFixed(2))} to 1`, price, "times")]),
    ...(timing === 1 ? [] : [line("Timing", timing, "times")]),
  ];
}
