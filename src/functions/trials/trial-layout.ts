import { waitFor } from "../../core/fault";
import { trialLayout as trialLayoutOf } from "../../core/trials/trial-layout";
import { trialLimits } from "../../core/trials/trial-limits";
import { choice, line, optional, quantity, worksheetFunction } from "../frame";
import { designWords } from "./design-words";
import { names } from "./trial-arguments";

export const trialLayout = worksheetFunction({
  name: "TRIALLAYOUT",
  family: "trials",
  summary: "A fair order of strips for a trial, block by block.",
  asks: ["how do I lay out a strip trial", "randomize my strips", "which side gets the treatment"],
  args: {
    treatments: names("names of the treatments, the untreated check among them"),
    blocks: quantity(trialLimits.layoutBlocks, { says: "blocks, pairs or passes; four to six are usual" }),
    seed: quantity(trialLimits.seed, { says: "any whole number; the same one gives the same layout again" }),
    design: optional(choice(designWords, { says: "blocks, pairs or split planter" }), "blocks", "blocks"),
  },
  returns: {
    shape: "table",
    unit: "",
    says: "a row per strip from one side of the field to the other: strip, block, treatment",
  },
  sources: ["gomez-gomez-1984", "msu-p3930", "wsu-on-farm-testing"],
  cautions: [
    "Plant the layout as drawn; drawing again until it looks right brings the bias back.",
    "Strips at least one header wide and 300 ft long, 750 or more is better; off the headlands; slopes and soil lines crossing every strip of a block alike.",
  ],
  example: {
    call: [[["check"], ["fungicide"]], 3, 9, "split planter"],
    gives: [
      ["Strip", "Pass", "Treatment"],
      [1, 1, "check"],
      [2, 1, "fungicide"],
      [3, 2, "fungicide"],
      [4, 2, "check"],
      [5, 3, "check"],
      [6, 3, "fungicide"],
    ],
    because: "by hand: one toss for the side, then the planter turns at each end, so the halves lie A B, B A, A B",
  },
  compute: ({ treatments, blocks, seed, design }) => {
    const named = treatments.flatMap((name) => (name === null ? [] : [name]));
    if (named.length === 0) waitFor("treatments");
    return trialLayoutOf({ treatments: named, blocks, seed, design });
  },
  value: (strips, { design }) => [
    ["Strip", design === "splitPlanter" ? "Pass" : design === "pairs" ? "Pair" : "Block", "Treatment"],
    ...strips.map(({ strip, block, treatment }) => [strip, block, treatment]),
  ],
  working: (strips, { seed, design }) => [
    line("Strips", strips.length),
    line(
      "Order",
      design === "splitPlanter"
        ? "one draw for the side; turning at the ends does the rest"
        : "drawn anew in every block; drawn again while all blocks came out alike",
    ),
    line("Seed", seed),
  ],
});
