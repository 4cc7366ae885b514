import type { Interaction } from "../../core/practices/pick-request";
import { practiceLimits } from "../../core/practices/practice-limits";
import { practicePick as practicePickOf } from "../../core/practices/practice-pick";
import { choice, line, listWithGaps, optional, quantity, text, vocabulary, worksheetFunction } from "../frame";
import { pairGrid } from "./pair-grid";
import { pickOffer } from "./pick-offer";
import { pickedNames, pickTable } from "./pick-table";
import { price } from "./practice-arguments";
import { practiceCautions, winnersShrink } from "../cautions";

export const interactionWords = vocabulary<Interaction>("interaction", {
  additive: { label: "additive", also: ["add up", "sum", "added"] },
  multiplicative: { label: "multiplicative", also: ["multiply", "compound"] },
  diminishing: { label: "diminishing", also: ["diminishing returns", "sub-additive"] },
  minimum: { label: "law of the minimum", also: ["minimum", "limiting factor", "limiting"] },
});

const column = (says: string) => listWithGaps(text({ says }), { says });

export const practicePick = worksheetFunction({
  name: "PRACTICEPICK",
  family: "practices",
  summary: "The set of practices that nets most within a budget, proved best.",
  asks: [
    "which practices within my budget",
    "best combination of inputs",
    "where should I spend the next dollars",
    "where does money go first",
  ],
  args: {
    costs: listWithGaps(quantity(practiceLimits.cost, { says: "cost" }), { says: "cost of each practice, one a cell" }),
    gains: listWithGaps(quantity(practiceLimits.gain, { says: "gain" }), {
      says: "gain of each practice alone over doing nothing, in the order of costs",
    }),
    price,
    budget: quantity(practiceLimits.budget, { says: "most to spend on an acre" }),
    excludes: optional(
      column("beside each practice those it does not go with: names or row numbers, commas between"),
      null,
      "any two may stand together",
    ),
    interaction: optional(choice(interactionWords, { says: "how gains come together" }), "additive", "additive"),
    names: optional(column("name of each practice"), null, "Practice 1, Practice 2 …"),
    requires: optional(
      column("beside each practice those it cannot do without: names or row numbers, commas between"),
      null,
      "each stands by itself",
    ),
    mostPractices: optional(
      quantity(practiceLimits.mostPractices, { says: "most practices to take on" }),
      null,
      "as many as pay",
    ),
    currentYield: optional(
      quantity(practiceLimits.yield, { says: "yield today, for multiplicative and diminishing gains" }),
      null,
      "asked for where the interaction needs it",
    ),
    attainableYield: optional(
      quantity(practiceLimits.yield, { says: "yield that no practice passes" }),
      null,
      "asked for by diminishing gains; no ceiling for the law of the minimum",
    ),
    ceilings: optional(
      listWithGaps(quantity(practiceLimits.yield, { says: "yield" }), {
        says: "for the law of the minimum, the yield that what each practice mends allows today",
      }),
      null,
      "asked for by the law of the minimum",
    ),
    factors: optional(
      column("for the law of the minimum, what each practice mends, such as drainage; practices on the same add up"),
      null,
      "each practice mends something of its own",
    ),
    pairGains: optional(pairGrid(), null, "gains of two add up"),
  },
  returns: {
    shape: "table",
    unit: "$/ac",
    says: "a row for each practice with pick, cost, gain, what it adds and why; then the set with its cost, gain and net",
  },
  sources: ["land-doig-1960", "partial-budget"],
  cautions: [
    ...practiceCautions,
    "Gains from separate trials add up only if a trial showed it: pick again under another interaction, and test where the set changes.",
    winnersShrink,
  ],
  example: {
    call: [
      [[14], [24], [18], [9], [12]],
      [[4.2], [7.5], [4.6], [3.6], [1.5]],
      4.5,
      60,
      null,
      null,
      [["stabilizer"], ["fungicide"], ["starter"], ["sulfur"], ["micronutrients"]],
    ],
    gives: [
      ["Practice", "Pick", "Cost, $/ac", "Gain alone, bu/ac", "Adds to the set, $/ac", "Why"],
      ["stabilizer", "yes", 14, 4.2, 4.9, ""],
      ["fungicide", "yes", 24, 7.5, 9.75, ""],
      ["starter", "no", 18, 4.6, 2.7, "budget is $5.00/ac short"],
      ["sulfur", "yes", 9, 3.6, 7.2, ""],
      ["micronutrients", "no", 12, 1.5, -5.25, "brings less than it costs beside the others"],
      ["The set", 3, 47, 15.3, 21.85, "$13.00/ac of the budget left"],
    ],
    because:
      "by hand: nets 4.90, 9.75, 2.70, 7.20 and −5.25; the four that pay cost 65, and leaving out starter loses least",
  },
  compute: (values) => {
    const { request, rows } = pickOffer(values);
    return { pick: practicePickOf(request), rows };
  },
  value: ({ pick, rows }) => pickTable(pick, rows),
  working: ({ pick }) => [
    line("Picked", pickedNames(pick)),
    line("Cost of the set", pick.costUsdPerAc, "$/ac"),
    line("Sum of its gains", pick.plainSumBuPerAc, "bu/ac"),
    line("Gain as they come together", pick.gainBuPerAc, "bu/ac"),
    line("Net", pick.netUsdPerAc, "$/ac"),
    line("Left of the budget", pick.budgetLeftUsdPerAc, "$/ac"),
  ],
});
