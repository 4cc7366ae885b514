import { trialLimits } from "../../core/trials/trial-limits";
import { trialTrend as trialTrendOf } from "../../core/trials/trial-trend";
import { line, listWithGaps, optional, percent, quantity, text, worksheetFunction } from "../frame";
import { names, yields } from "./trial-arguments";
import { stripsNotPoints } from "../cautions";

const place = "place of each strip across the field: its number, or feet from the edge";

export const trialTrend = worksheetFunction({
  name: "TRIALTREND",
  family: "trials",
  summary: "Strip yields freed of a trend across the field, by the check strips beside them.",
  asks: ["adjust yields by check strips", "field gets better to one side", "neighbouring checks"],
  args: {
    positions: listWithGaps(quantity(trialLimits.position, { says: place }), { says: place }),
    treatments: names("treatment of each strip, row for row"),
    yields: yields("yield of each strip, row for row; blank where it was lost"),
    check: text({ says: "the treatment that stands in every few strips" }),
    share: optional(
      percent(trialLimits.trendShare, { says: "how much of the trend to take out; less where checks are noisy" }),
      100,
      "100: all of it",
    ),
  },
  returns: {
    shape: "table",
    unit: "bu/ac",
    says: "a row per strip: place, treatment, yield, what the check would have yielded there, adjusted yield",
  },
  sources: ["gomez-gomez-1984"],
  cautions: [
    stripsNotPoints,
    "Checks differ by chance too, and all of that goes into their neighbours; random order in blocks needs no such adjustment.",
  ],
  example: {
    call: [
      [[1], [2], [3], [4], [5]],
      [["check"], ["A"], ["B"], ["C"], ["check"]],
      [[180], [187], [186], [196], [192]],
      "check",
    ],
    gives: [
      ["Place", "Treatment", "Yield, bu/ac", "Check here, bu/ac", "Adjusted, bu/ac"],
      [1, "check", 180, 180, 186],
      [2, "A", 187, 183, 190],
      [3, "B", 186, 186, 186],
      [4, "C", 196, 189, 193],
      [5, "check", 192, 192, 186],
    ],
    because:
      "by hand: the check climbs 3 bu a strip from 180 to 192 about a mean of 186; at strip 2 it stands at 183, so 187 + 3",
  },
  compute: (values) =>
    trialTrendOf({
      positions: values.positions,
      treatments: values.treatments,
      yields: values.yields,
      check: values.check,
      sharePct: values.share,
    }),
  value: (result) => [
    ["Place", "Treatment", "Yield, bu/ac", "Check here, bu/ac", "Adjusted, bu/ac"],
    ...result.strips.map((strip) => [
      strip.position,
      strip.treatment,
      strip.yieldBuPerAc,
      strip.checkHereBuPerAc,
      strip.adjustedBuPerAc,
    ]),
  ],
  working: (result) => [
    line("Check strips", result.checks, "strips"),
    line("Mean of the checks", result.checkMeanBuPerAc, "bu/ac"),
    line("Between checks", "straight from one to the next; level beyond the outermost"),
  ],
});
