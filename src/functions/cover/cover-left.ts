import { coverLeft as coverLeftOf, residueKindLabel, type CoverRange } from "../../core/cover/cover-left";
import { choice, line, list, optional, worksheetFunction } from "../frame";
import { checkLines } from "../check-lines";
import { coverPass, residueKind, startCover } from "./cover-arguments";
import { endWords } from "./cover-words";

export const coverLeft = worksheetFunction({
  name: "COVERLEFT",
  family: "cover",
  summary: "Residue cover left on the ground after tillage passes and winter.",
  asks: [
    "how much residue is left after tillage",
    "does my tillage leave 30 % cover",
    "what does a disk pass do to cover",
  ],
  args: {
    startCover,
    passes: list(coverPass, {
      says: "passes and winters in order, each by name or as the percent of cover it keeps",
    }),
    residueKind,
    end: optional(
      choice(endWords, { says: "low, middle or high share of every pass's published range" }),
      "middle",
      "middle",
    ),
  },
  returns: { shape: "one", unit: "%", says: "ground still covered" },
  sources: ["scs-residue-1992"],
  example: {
    call: [
      "corn",
      [
        ["winter after fall harvest"],
        ["chisel plow, straight points"],
        ["field cultivator after tillage, sweeps 12-20 in"],
        ["planter, double disk openers"],
      ],
    ],
    gives: 44.5134,
    because: "by hand: 95 × 0.875 × 0.70 × 0.85 × 0.90",
  },
  compute: (values) => coverLeftOf({ start: values.startCover, passes: values.passes, kind: values.residueKind }),
  value: (result, { end }) => result.coverPct[end],
  working: (result) => [
    line("Cover at the start", result.startPct, "%"),
    line("Residue", residueKindLabel(result.kind)),
    ...result.steps.map((step) =>
      line(`After ${step.name}, which keeps ${rangeOf(step.keptPct)} %`, step.coverPct.middle, "%"),
    ),
    line("Low, if every pass buries the most", result.coverPct.low, "%"),
    line("Cover left, middle", result.coverPct.middle, "%"),
    line("High, if every pass buries the least", result.coverPct.high, "%"),
    line("Conservation tillage, 30 % or more after planting", result.isConservation ? "yes" : "no"),
    line("Mind", "after a stalk chopper or a knife applicator less was found in the field than this product says"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});

function rangeOf({ low, high }: CoverRange): string {
  return low === high ? String(low) : `${low} to ${high}`;
}
