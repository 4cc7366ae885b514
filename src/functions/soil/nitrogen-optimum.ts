import { nitrogenLimits } from "../../core/nitrogen/nitrogen-limits";
import { nitrogenOptimum as nitrogenOptimumOf } from "../../core/nitrogen/nitrogen-optimum";
import { line, optional, quantity, worksheetFunction } from "../frame";
import { nutrientRules } from "../cautions";

export const nitrogenOptimum = worksheetFunction({
  name: "NITROGENOPTIMUM",
  family: "soil",
  summary: "Nitrogen rate that returns the most dollars on a yield response curve.",
  asks: ["most profitable nitrogen rate", "nitrogen rate at today's price", "best N rate on my response curve"],
  args: {
    linear: quantity(nitrogenLimits.linear, { says: "linear coefficient of the curve: bushels for the first pound" }),
    quadratic: quantity(nitrogenLimits.quadratic, { says: "quadratic coefficient of the curve, below 0" }),
    priceN: quantity(nitrogenLimits.priceN, { says: "price of a pound of nitrogen" }),
    priceGrain: quantity(nitrogenLimits.priceGrain, { says: "price of a bushel" }),
    plateauAt: optional(
      quantity(nitrogenLimits.nitrogenRate, { says: "rate where a quadratic-plateau curve turns flat" }),
      null,
      "a plain quadratic",
    ),
    highestRate: optional(
      quantity(nitrogenLimits.nitrogenRate, { says: "highest rate of the trial; the answer does not go beyond it" }),
      null,
      "no bound",
    ),
  },
  returns: { shape: "one", unit: "lb/ac", says: "economically best pounds of nitrogen per acre" },
  sources: ["fausti-2017", "cerrato-blackmer-1990", "umn-corn-2011"],
  cautions: [
    "One field in one year says little about the next: the best rate of a single site moves by tens of pounds.",
    "A rate for corn after soybean holds the soybean's nitrogen already: take no credit off.",
    nutrientRules,
  ],
  example: {
    call: [0.9, -0.0025, 0.5, 5],
    gives: 160,
    because: "by hand: price ratio 0.50 / 5 = 0.10; (0.10 − 0.90) / (2 × −0.0025)",
  },
  compute: ({ linear, quadratic, priceN, priceGrain, plateauAt, highestRate }) =>
    nitrogenOptimumOf({
      linear,
      quadratic,
      priceNUsdPerLb: priceN,
      priceGrainUsdPerBu: priceGrain,
      plateauLbPerAc: plateauAt,
      highestLbPerAc: highestRate,
    }),
  value: (result) => result.optimumLbPerAc,
  working: (result) => [
    line("Price of a pound of nitrogen in bushels", result.priceRatio, "bu/lb"),
    line("Rate of the highest yield", result.mostYieldLbPerAc, "lb/ac"),
    ...(result.heldAt === "nothing" ? [] : [line("Held at", result.heldAt)]),
    line("Best rate", result.optimumLbPerAc, "lb/ac"),
    line("Gain over no nitrogen", result.gainBuPerAc, "bu/ac"),
    line("Return over its cost", result.returnUsdPerAc, "$/ac"),
    line("Within $1/ac of that from", result.lowLbPerAc, "lb/ac"),
    line("to", result.highLbPerAc, "lb/ac"),
  ],
});
