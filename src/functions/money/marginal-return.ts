import { marginalReturn as marginalReturnOf, type Option } from "../../core/money/marginal-return";
import { moneyLimits } from "../../core/money/money-limits";
import { line, listWithGaps, optional, quantity, rate as rateOf, text, worksheetFunction } from "../frame";

export const marginalReturn = worksheetFunction({
  name: "MARGINALRETURN",
  family: "money",
  summary: "What each further dollar brings from the cheapest option to the dearest, poor options marked.",
  asks: ["which treatment pays best", "marginal rate of return", "is the next step up worth it"],
  args: {
    costs: listWithGaps(quantity(moneyLimits.costPerAc, { says: "costs" }), {
      says: "costs that vary between the options, all for the same acre and season",
    }),
    benefits: listWithGaps(quantity(moneyLimits.margin, { says: "net benefits" }), {
      says: "net benefit of each option: its returns less those costs, in the same order",
    }),
    leastReturn: optional(
      rateOf(moneyLimits.leastReturn, { says: "least that added money must return a season, 60% or 0.6" }),
      null,
      "no option is chosen",
    ),
    names: optional(
      listWithGaps(text({ says: "names" }), { says: "names of the options, in the same order" }),
      [],
      "option 1, option 2, and so on",
    ),
  },
  returns: { shape: "table", unit: "", says: "options from cheapest to dearest, with header" },
  sources: ["cimmyt-1976"],
  example: {
    call: [[[0], [15], [22], [40]], [[420], [452], [449], [470]], 1],
    gives: [
      ["Option", "Cost $/ac", "Net benefit $/ac", "Brings $ per $ added", "Verdict"],
      ["option 1", 0, 420, "", ""],
      ["option 2", 15, 452, 2.1333, "choose"],
      ["option 3", 22, 449, "", "dominated"],
      ["option 4", 40, 470, 0.72, ""],
    ],
    tolerance: 0.0001,
    because: "by hand: (452 − 420) / 15; 449 is less than 452 at 15; (470 − 452) / (40 − 15) is below 1",
  },
  compute: ({ costs: costsUsdPerAc, benefits, leastReturn }) =>
    marginalReturnOf({ costsUsdPerAc, benefitsUsdPerAc: benefits, leastReturn }),
  value: ({ options }, { names }) => [
    ["Option", "Cost $/ac", "Net benefit $/ac", "Brings $ per $ added", "Verdict"],
    ...options.map((option) => [
      nameOf(option, names),
      option.costUsdPerAc,
      option.benefitUsdPerAc,
      option.marginalReturn ?? "",
      verdictOf(option),
    ]),
  ],
  working: ({ options, chosen }, { names }) => [
    line("Options", options.length, ""),
    line("Dominated: one no dearer brings at least as much", options.filter((option) => option.isDominated).length),
    line("Choice", chosen === null ? "give leastReturn, such as 60 %, to have one" : nameOf(chosen, names)),
    line("Mind", "plot yields run above field yields: take your usual part off before working out the benefit"),
  ],
});

function nameOf({ place }: Option, names: readonly (string | null)[]): string {
  return names[place] ?? `option ${place + 1}`;
}

function verdictOf({ isDominated, isChosen }: Option): string {
  if (isDominated) return "dominated";
  return isChosen ? "choose" : "";
}
