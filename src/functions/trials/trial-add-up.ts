import { tenth } from "../../core/trials/gain-in-words";
import { trialAddUp as trialAddUpOf, type AddUp, type Contrast } from "../../core/trials/trial-add-up";
import { line, worksheetFunction } from "../frame";
import { missingInWords } from "./missing-strips";
import { yields } from "./trial-arguments";
import { oneSeason, stripsNotPoints } from "../cautions";
import { confidence } from "../chance";

type Row = readonly [string, string | number, string | number, string | number, string | number];

export const trialAddUp = worksheetFunction({
  name: "TRIALADDUP",
  family: "trials",
  summary: "Whether the gains of two practices add up when both are done.",
  asks: ["do the gains add up", "both practices together", "is there an interaction"],
  args: {
    check: yields("yields of the strips with neither practice, a cell per block; blank where a strip was lost"),
    a: yields("yields with the first practice alone, in the same order of blocks"),
    b: yields("yields with the second practice alone, in the same order of blocks"),
    both: yields("yields with both, in the same order of blocks"),
    confidence: confidence(90),
  },
  returns: { shape: "table", unit: "bu/ac", says: "a row per gain with its range and chance, then a sentence" },
  sources: ["gomez-gomez-1984", "venables-ripley-2002"],
  cautions: [
    stripsNotPoints,
    oneSeason,
    "Whether gains add up is known half as well as the gains themselves: as sure an answer takes four times the blocks.",
  ],
  example: {
    call: [[[50], [54]], [[56], [58]], [[53], [59]], [[62], [64]], 90],
    gives: [
      ["What", "Gain, bu/ac", "Likely from, bu/ac", "Likely to, bu/ac", "By luck, chance (0 to 1)"],
      ["a alone", 5, 1.8135, 8.1865, 0.0345],
      ["b alone", 4, 0.8135, 7.1865, 0.0598],
      ["both together", 11, 7.8135, 14.1865, 0.0039],
      ["beyond a + b", 2, -2.5063, 6.5063, 0.373],
      [
        "In words",
        "Both together gain 11.0 bu/ac against 9.0 for the two added; the difference of 2.0 may be nothing, so the gains may as well add up.",
        "",
        "",
        "",
      ],
    ],
    because:
      "by hand: means 52, 57, 56, 63 over two blocks; error squares 5.5 with 3 df, so a gain has SE √1.833 = 1.354 and what is beyond a + b √3.667 = 1.915; t 2.3534; chances from another program (SciPy)",
  },
  compute: (values) =>
    trialAddUpOf({
      check: values.check,
      a: values.a,
      b: values.b,
      both: values.both,
      confidencePct: values.confidence,
    }),
  value: (result) => [
    ["What", "Gain, bu/ac", "Likely from, bu/ac", "Likely to, bu/ac", "By luck, chance (0 to 1)"],
    ...gainRows(result),
    ...missingOf(result).map((words): Row => ["Without a yield", words, "", "", ""]),
    ["In words", inWords(result), "", "", ""],
  ],
  working: (result) => [
    line("Blocks", result.blocks, "blocks"),
    line("Strip-to-strip SD", Math.sqrt(result.fit.errorMeanSquare), "bu/ac"),
    line("Degrees of freedom", result.fit.errorDf),
    line("a alone", result.aAlone.gain, "bu/ac"),
    line("b alone", result.bAlone.gain, "bu/ac"),
    line("Both together", result.together.gain, "bu/ac"),
    line("Both, less a and b added", result.interaction.gain, "bu/ac"),
    line("Its standard error", result.interaction.standardError, "bu/ac"),
    ...missingOf(result).map((words) => line("Without a yield", words)),
  ],
});

/** A sentence, or none where every strip has its yield. */
function missingOf({ missing }: AddUp): string[] {
  return missing.length === 0
    ? []
    : [missingInWords(missing.map(({ treatment, block }) => `${treatment} in ${block}`))];
}

function gainRows({ aAlone, bAlone, together, interaction }: AddUp): Row[] {
  const row = (label: string, { gain, low, high, chance }: Contrast): Row => [label, gain, low, high, chance];
  return [
    row("a alone", aAlone),
    row("b alone", bAlone),
    row("both together", together),
    row("beyond a + b", interaction),
  ];
}

function inWords({ together, interaction, separateSum }: AddUp): string {
  const start = `Both together gain ${tenth(together.gain)} bu/ac against ${tenth(separateSum)} for the two added`;
  if (interaction.low > 0) return `${start}: the two help each other.`;
  if (interaction.high < 0) return `${start}: they share part of their gain, so do not count both in full.`;
  return `${start}; the difference of ${tenth(interaction.gain)} may be nothing, so the gains may as well add up.`;
}
