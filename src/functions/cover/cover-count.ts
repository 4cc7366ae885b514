import { coverCount as coverCountOf } from "../../core/cover/cover-count";
import { coverLimits } from "../../core/cover/cover-limits";
import { line, list, quantity, worksheetFunction } from "../frame";
import { confidence } from "../chance";

export const coverCount = worksheetFunction({
  name: "COVERCOUNT",
  family: "cover",
  summary: "Residue cover from marks hit along a line, with its range.",
  asks: ["how do I measure residue cover", "percent cover from a tape", "line transect residue count"],
  args: {
    hits: list(quantity(coverLimits.hits, { says: "marks over residue" }), {
      says: "marks with residue under them, one cell a line",
    }),
    points: list(quantity(coverLimits.points, { says: "marks" }), {
      says: "marks looked at on each line; one cell stands for every line",
    }),
    confidence: confidence(95),
  },
  returns: { shape: "table", unit: "%", says: "cover with the low and high end of its range" },
  sources: ["line-transect"],
  example: {
    call: [[[45]], [[100]]],
    gives: [
      ["Low, %", "Cover, %", "High, %"],
      [35.249, 45, 54.751],
    ],
    because: "by hand: 45 / 100; 1.96 × √(0.45 × 0.55 / 100) = 0.0975",
  },
  compute: (values) => coverCountOf({ hits: values.hits, points: values.points, confidencePct: values.confidence }),
  value: (result) => [
    ["Low, %", "Cover, %", "High, %"],
    [result.lowPct, result.coverPct, result.highPct],
  ],
  working: (result) => [
    line("Marks hit", `${result.hits} of ${result.marks}`),
    line("Cover", result.coverPct, "%"),
    line("Low", result.lowPct, "%"),
    line("High", result.highPct, "%"),
    line("Lines", result.lines),
    ...(result.lines > 1 ? [line("Barest line", result.lowestLinePct, "%")] : []),
    ...(result.lines > 1 ? [line("Best covered line", result.highestLinePct, "%")] : []),
    ...(result.lines < 3 ? [line("Mind", "three to five lines make a fair count of a field")] : []),
    ...(result.isAtEnd ? [line("Range", "exact binomial, since all marks or none were hit")] : []),
    line(
      "How to look",
      "straight down on one edge of each mark, line at 45° to the rows, residue at least 3/32 in wide",
    ),
  ],
});
