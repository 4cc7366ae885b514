import { blockTrial, type BlockTrial } from "../../core/trials/block-trial";
import { trialLimits } from "../../core/trials/trial-limits";
import { line, listWithGaps, optional, quantity, text, worksheetFunction } from "../frame";
import { blocksRows, blocksWorking, type BlocksResult } from "./blocks-table";
import { treatmentCosts } from "./treatment-costs";
import { names, price, yields } from "./trial-arguments";
import { oneSeason, stripsNotPoints, winnersShrink } from "../cautions";
import { confidence } from "../chance";

export const trialBlocks = worksheetFunction({
  name: "TRIALBLOCKS",
  family: "trials",
  summary: "Treatments in blocks: means, gains over the check, what is clearly apart and what pays.",
  asks: [
    "compare several treatments",
    "which treatment is best",
    "least significant difference",
    "analyse a replicated trial",
  ],
  args: {
    treatments: names("treatment of each strip"),
    blocks: names("block of each strip, row for row"),
    yields: yields("yield of each strip, row for row; blank where it was lost"),
    confidence: confidence(90),
    check: optional(text({ says: "the treatment the others are held against" }), null, "the first one listed"),
    price,
    costs: optional(
      listWithGaps(quantity(trialLimits.cost, { says: "cost" }), {
        says: "cost of each treatment in the order first listed, or one cost for all but the check",
      }),
      null,
      "no money",
    ),
  },
  returns: {
    shape: "table",
    unit: "bu/ac",
    says: "a row per treatment, best first, then the spread of the trial and a sentence; ranges are each treatment against the check, luck is adjusted for their number (Holm), letters are Tukey's",
  },
  sources: ["gomez-gomez-1984", "holm-1979", "copenhaver-holland-1988", "piepho-2004"],
  cautions: [stripsNotPoints, oneSeason, winnersShrink],
  example: {
    call: [
      [["none"], ["early"], ["late"], ["none"], ["early"], ["late"], ["none"], ["early"], ["late"]],
      [[1], [1], [1], [2], [2], [2], [3], [3], [3]],
      [[30], [35], [43], [26], [27], [35], [32], [33], [45]],
      95,
    ],
    gives: [
      [
        "Treatment",
        "Strips",
        "Mean, bu/ac",
        "Letters",
        "Gain, bu/ac",
        "Likely from, bu/ac",
        "Likely to, bu/ac",
        "By luck (Holm), chance (0 to 1)",
      ],
      ["late", 3, 41, "a", 11.6667, 7.9647, 15.3686, 0.00188],
      ["early", 3, 31.6667, "b", 2.3333, -1.3686, 6.0353, 0.15502],
      ["none", 3, 29.3333, "b", "check", "", "", ""],
      ["Strip-to-strip SD", 1.633, "bu/ac", "", "", "", "", ""],
      ["CV", 4.8028, "%", "", "", "", "", ""],
      ["Degrees of freedom", 4, "", "", "", "", "", ""],
      ["F of treatments", 42.875, "", "", "", "", "", ""],
      ["All alike, by luck (p)", 0.001986, "chance (0 to 1)", "", "", "", "", ""],
      ["LSD, for planned differences", 3.7019, "bu/ac", "", "", "", "", ""],
      ["Tukey's difference", 4.752, "bu/ac", "", "", "", "", ""],
      ["One strip in blocks equals strips without", 5.375, "strips", "", "", "", "", ""],
      ["In words", "The gain of late over none is 11.7 bu/ac, likely between 8.0 and 15.4.", "", "", "", "", "", ""],
    ],
    tolerance: 0.0005,
    because:
      "by hand: means 29.333, 31.667, 41; treatment squares 3 × (4.667² + 2.333² + 7²) = 228.667, error squares 10.667 with 4 df, so F = 114.333 / 2.667; LSD 2.7764 × 1.3333; Tukey 5.0402 × 0.9428; chances from another program (SciPy)",
  },
  compute: (values): BlocksResult => {
    const trial: BlockTrial = blockTrial({
      treatments: values.treatments,
      blocks: values.blocks,
      yields: values.yields,
      confidencePct: values.confidence,
      check: values.check,
    });
    return { trial, money: treatmentCosts(trial, values) };
  },
  value: blocksRows,
  working: (result) => blocksWorking(result).map(([label, value, unit]) => line(label, value, unit)),
});
