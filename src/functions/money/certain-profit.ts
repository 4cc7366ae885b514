import { certaintyEquivalent, coinFlipPremium } from "../../core/risk/certainty-equivalent";
import { riskLimits } from "../../core/risk/risk-limits";
import { line, listWithGaps, optional, quantity, worksheetFunction } from "../frame";

export const certainProfit = worksheetFunction({
  name: "CERTAINPROFIT",
  family: "money",
  summary: "Certain amount worth as much as uncertain outcomes to a person who dislikes risk.",
  asks: ["what is a sure thing worth", "certainty equivalent", "price of risk"],
  args: {
    outcomes: listWithGaps(quantity(riskLimits.outcome, { says: "outcomes" }), {
      says: "what may come, one cell each",
    }),
    riskAversion: quantity(riskLimits.riskAversion, {
      says: "absolute risk aversion, for the dollars of the outcomes: an acre and a farm need other ones",
    }),
    chances: optional(
      listWithGaps(quantity(riskLimits.chance, { says: "chances" }), { says: "how likely each is, in any unit" }),
      null,
      "all alike",
    ),
  },
  returns: { shape: "one", unit: "$", says: "in the dollars of the outcomes" },
  sources: ["risk-measures", "babcock-1993"],
  example: {
    call: [[[-80], [60], [210]], 0.005, [[0.3], [0.5], [0.2]]],
    gives: 23.7693,
    tolerance: 0.0001,
    because:
      "by hand: 0.3 e^0.4 + 0.5 e^−0.3 + 0.2 e^−1.05 = 0.447547 + 0.370409 + 0.069988 = 0.887944; -ln of it / 0.005",
  },
  compute: (values) =>
    certaintyEquivalent({ outcomesUsd: values.outcomes, chances: values.chances, riskAversion: values.riskAversion }),
  value: (result) => result.certainUsd,
  working: (result, values) => [
    line("Mean", result.meanUsd, "$"),
    line("Given up to be rid of the risk", result.premiumUsd, "$"),
    line("Certain amount worth as much", result.certainUsd, "$"),
    line("To be rid of a coin flip for 100 more or less you give up", coinFlipPremium(values.riskAversion, 100), "$"),
  ],
});
