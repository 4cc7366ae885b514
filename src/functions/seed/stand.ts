import { seedLimits } from "../../core/seed/seed-limits";
import { standEvenness as standEvennessOf, type LossPerInch } from "../../core/seed/stand-evenness";
import { standHoop as standHoopOf } from "../../core/seed/stand-hoop";
import { standRange as standRangeOf } from "../../core/seed/stand-range";
import { spacingClasses, spacingLosses, toleratedSpread, type SpacingLossKey } from "../../reference/seed/spacing-loss";
import { line, list, optional, percent, quantity, worksheetFunction } from "../frame";
import { orWord } from "../number-or-word";
import { checkLines } from "../check-lines";
import { counts, feetCounted, rowWidth } from "./seed-arguments";
import { spacingLossWords } from "./seed-words";
import { confidence } from "../chance";

const rangeHeader = [
  "Low plants/ac",
  "Mean plants/ac",
  "High plants/ac",
  "Counts",
  "Variation %",
  "More counts to come near enough",
] as const;

export const standRange = worksheetFunction({
  name: "STANDRANGE",
  family: "seed",
  summary: "Range the true stand lies in, and how many more counts would narrow it.",
  asks: ["how sure is my stand count", "how many stand counts do I need", "stand count confidence"],
  args: {
    counts,
    rowWidth,
    feetCounted,
    confidence: confidence(95),
    within: optional(
      percent(seedLimits.countsWithin, { says: "how near to the true stand the mean shall come" }),
      5,
      "5: within 5 % of the stand",
    ),
  },
  returns: { shape: "table", unit: "", says: "one row with header: low, mean, high, counts, variation, more counts" },
  sources: ["student-t-interval", "acre-geometry", "unl-stand-counts-2016"],
  example: {
    call: [[[28], [31], [30], [26], [29]], 30],
    gives: [[...rangeHeader], [26_411.5, 28_800, 31_188.5, 5, 6.679, 5]],
    tolerance: 1,
    because:
      "by hand: SD √(14.8/4) = 1.9235; 2.776 × 1.9235 / √5 = 2.388; at CV 6.68, 10 counts give 2.262 × 6.68 / √10 = 4.8 %, 9 give 5.1 %",
  },
  compute: (values) =>
    standRangeOf({
      counts: values.counts,
      rowWidthIn: values.rowWidth,
      feetCounted: values.feetCounted,
      confidencePct: values.confidence,
      withinPct: values.within,
    }),
  value: (result) => [
    [...rangeHeader],
    [
      result.lowPerAc,
      result.meanPerAc,
      result.highPerAc,
      result.counts,
      result.variationPct ?? "",
      result.moreCounts ?? "",
    ],
  ],
  working: (result, { confidence, within }) => [
    line("Mean stand", result.meanPerAc, "plants/ac"),
    line("Sample deviation", result.sdPerAc, "plants/ac"),
    line(`t for ${confidence} % and ${result.counts - 1} degrees of freedom`, result.tValue),
    line("Give or take", result.halfWidthPerAc, "plants/ac"),
    line(`Counts that come within ${within} %`, result.countsNeeded ?? "none: no plants were counted", "counts"),
    line("Usual practice", "ten random places, two neighbouring rows each, gap sizes noted"),
  ],
});

export const standHoop = worksheetFunction({
  name: "STANDHOOP",
  family: "seed",
  summary: "Plants per acre from counts inside a hoop thrown at random.",
  asks: ["hoop stand count", "drilled soybean stand", "hula hoop plants per acre"],
  args: {
    counts,
    hoopDiameter: quantity(seedLimits.hoopDiameter, { says: "inside diameter of the hoop" }),
  },
  returns: { shape: "one", unit: "plants/ac", says: "mean stand over the throws" },
  sources: ["purdue-field-guide-2010"],
  example: {
    call: [[[13]], 24],
    gives: 180_253,
    tolerance: 1,
    because: "by hand: 13 × 43,560 / (3.14159 × 1 ft²); printed as 180,336 with 3.14",
  },
  compute: (values) => standHoopOf({ counts: values.counts, hoopDiameterIn: values.hoopDiameter }),
  value: (result) => result.plantsPerAc,
  working: (result) => [
    line("Throws", result.counts, "throws"),
    line("Mean count", result.meanCount, "plants"),
    line("Ground inside the hoop", result.hoopSqFt, "sq ft"),
    line("One plant stands for", result.plantsPerAcEach, "plants/ac"),
    line("Mean stand", result.plantsPerAc, "plants/ac"),
    ...(result.counts < 5 ? [line("Look again", "throw it in at least five places, better ten")] : []),
  ],
});

const evennessHeader = ["Gaps", "Mean spacing in", "SD in", "Lost bu/ac", "Singles %", "Doubles %", "Skips %"] as const;

export const standEvenness = worksheetFunction({
  name: "STANDEVENNESS",
  family: "seed",
  summary: "Spread of corn plant spacing in the row and the bushels it costs.",
  asks: ["how even is my corn stand", "yield lost to uneven spacing", "doubles and skips", "singulation"],
  args: {
    gaps: list(quantity(seedLimits.gap, { says: "distances" }), {
      says: "distances from plant to plant, 20 to 50 in a row",
    }),
    lossPerInch: optional(
      orWord<SpacingLossKey, LossPerInch>(
        quantity(seedLimits.lossPerInch, {
          says: "bushels lost for each inch of SD above what is tolerated, or a published figure",
        }),
        spacingLossWords,
        { ofNumber: (buPerAcPerIn) => ({ buPerAcPerIn }), ofWord: (key) => ({ key }) },
      ),
      { key: "purdue" },
      "Purdue: 2.5",
    ),
    tolerated: optional(quantity(seedLimits.toleratedSpread, { says: "SD that costs nothing" }), null, "2"),
    nominal: optional(
      quantity(seedLimits.nominalSpacing, { says: "spacing the planter was set to; SEEDSPACING gives it" }),
      null,
      "doubles and skips are left blank",
    ),
  },
  returns: { shape: "table", unit: "", says: "one row with header: gaps, spacing, SD, loss, singles, doubles, skips" },
  sources: ["ssmg-37", "purdue-spacing", "purdue-spacing-2004", "spacing-study-2001"],
  example: {
    call: [[[2], [6], [6], [10]], 4, 2, 6],
    gives: [[...evennessHeader], [4, 6, 3.266, 5.064, 50, 25, 25]],
    tolerance: 0.001,
    because: "by hand: SD √((16 + 16) / 3) = 3.266; (3.266 − 2) × 4; 2 is at most 3 in, 10 is above 9 in",
  },
  compute: (values) =>
    standEvennessOf({
      gapsIn: values.gaps,
      lossPerInch: values.lossPerInch,
      toleratedIn: values.tolerated,
      nominalIn: values.nominal,
    }),
  value: ({ gaps, meanIn, sdIn, lossBuPerAc, shares }) => [
    [...evennessHeader],
    [
      gaps,
      meanIn,
      sdIn,
      lossBuPerAc,
      ...(shares ? [shares.singlesPct, shares.doublesPct, shares.skipsPct] : ["", "", ""]),
    ],
  ],
  working: (result) => [
    line("Mean spacing", result.meanIn, "in"),
    line("Standard deviation", result.sdIn, "in"),
    line("Costs nothing up to", result.toleratedIn, "in"),
    line("Each inch above costs", result.lossPerInch, "bu/ac"),
    line("Lost", result.lossBuPerAc, "bu/ac"),
    ...(result.gaps < 20 ? [line("Look again", "measure 20 to 50 plants in a row; few gaps say little")] : []),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
  everyRow: () => [...spacingLosses.rows, toleratedSpread, spacingClasses],
});
