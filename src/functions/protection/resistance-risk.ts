import { resistanceRisk as resistanceRiskOf, type RiskAnswer } from "../../core/protection/resistance-risk";
import { resistanceChecklist } from "../../reference/protection/resistance-checklist";
import { checkBulletin } from "../../reference/table";
import { choice, line, listWithGaps, optional, worksheetFunction, type CellOut } from "../frame";
import { riskWords } from "./protection-words";
import { labelLaw } from "../cautions";

export const resistanceRisk = worksheetFunction({
  name: "RESISTANCERISK",
  family: "protection",
  summary: "The checklist of management that raises or lowers the risk of resistance, with your answers counted.",
  asks: ["risk of herbicide resistance", "resistance checklist"],
  args: {
    answers: optional(
      listWithGaps(choice(riskWords, { says: "risk" }), {
        says: "low, moderate or high for each of the seven rows, in their order; leave one blank when unsure",
      }),
      [],
      "the checklist alone, to be answered",
    ),
  },
  returns: {
    shape: "table",
    unit: "",
    says: "seven rows with low, moderate and high in words, your answers, the counts",
  },
  sources: ["hrac-guideline"],
  cautions: [
    labelLaw,
    "Counts only: no weights are published, so they are not added up to a score. Check against the current bulletin.",
  ],
  example: {
    call: [[["low"], ["high"], ["moderate"], ["moderate"], ["high"], [null], ["low"]]],
    gives: [
      ["What you do or see", "Low risk", "Moderate risk", "High risk", "Your answer"],
      ...resistanceChecklist.rows.map(({ factor, low, moderate, high }, row) => [
        factor,
        low,
        moderate,
        high,
        ["low", "high", "moderate", "moderate", "high", "", "low"][row] ?? "",
      ]),
      ["Answers counted", 2, 2, 2, "1 open"],
    ],
    because: "by hand: two low, two moderate, two high, one left open",
  },
  compute: ({ answers }) => resistanceRiskOf(answers),
  value: ({ rows, counts, open }) => [
    ["What you do or see", "Low risk", "Moderate risk", "High risk", "Your answer"],
    ...rows.map(({ row, answer }): CellOut[] => [row.factor, row.low, row.moderate, row.high, labelOf(answer)]),
    ["Answers counted", counts.low, counts.moderate, counts.high, open === 0 ? "all answered" : `${open} open`],
  ],
  working: ({ rows, counts, open }) => [
    line("Low risk", counts.low, "answers"),
    line("Moderate risk", counts.moderate, "answers"),
    line("High risk", counts.high, "answers"),
    line("Open", open, "answers"),
    ...rows.flatMap(({ row, answer }) => (answer === "high" ? [line("High", row.factor)] : [])),
    line("Check", checkBulletin),
  ],
  cites: ({ rows }) => rows.map(({ row }) => row),
});

function labelOf(answer: RiskAnswer | null): string {
  return answer === null ? "" : riskWords.words[answer].label;
}
