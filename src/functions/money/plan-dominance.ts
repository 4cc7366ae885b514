import { planDominance as planDominanceOf, type Preference } from "../../core/risk/plan-dominance";
import { riskLimits } from "../../core/risk/risk-limits";
import { line, list, quantity, worksheetFunction } from "../frame";

const planOutcomes = (which: string) =>
  list(quantity(riskLimits.outcome, { says: "outcomes" }), {
    says: `what ${which} may bring, as likely one as the other: years, or fields`,
    atLeast: 2,
  });
const planNames: Readonly<Record<Preference, string>> = {
  first: "plan a",
  second: "plan b",
  neither: "neither",
  alike: "no difference",
};

export const planDominance = worksheetFunction({
  name: "PLANDOMINANCE",
  family: "money",
  summary: "Which of two plans everyone would prefer, and which every cautious person would.",
  asks: ["which plan is safer", "compare two plans by risk", "stochastic dominance"],
  args: { a: planOutcomes("the first plan"), b: planOutcomes("the second plan") },
  returns: { shape: "table", unit: "", says: "answers in words: plan a, plan b, neither, no difference" },
  sources: ["stochastic-dominance"],
  example: {
    call: [
      [[40], [60]],
      [[20], [80]],
    ],
    gives: [
      ["Question", "Answer"],
      ["Everyone prefers", "neither"],
      ["Every cautious person prefers", "plan a"],
      ["Mean of plan a", 50],
      ["Mean of plan b", 50],
      ["Worst of plan a", 40],
      ["Worst of plan b", 20],
    ],
    because: "by hand: b is worse at 20 and better at 80; the means are alike and b's outcomes lie farther apart",
  },
  compute: ({ a, b }) => planDominanceOf({ first: a, second: b }),
  value: (result) => [
    ["Question", "Answer"],
    ["Everyone prefers", planNames[result.everyone]],
    ["Every cautious person prefers", planNames[result.cautious]],
    ["Mean of plan a", result.firstMean],
    ["Mean of plan b", result.secondMean],
    ["Worst of plan a", result.firstLowest],
    ["Worst of plan b", result.secondLowest],
  ],
  working: (_result, { a, b }) => [
    line("Outcomes of plan a", a.length),
    line("Outcomes of plan b", b.length),
    line("Everyone", "at every amount, no more outcomes of the plan preferred lie below it (first degree)"),
    line("Every cautious person", "the same, added up from the worst outcome on (second degree)"),
  ],
});
