import { limits } from "../../core/limits";
import { rotationBalance as rotationBalanceOf } from "../../core/nutrients/rotation-balance";
import { crops } from "../../reference/crops";
import { choice, line, list, listWithGaps, optional, quantity, worksheetFunction } from "../frame";
import { cropWords, nutrientWords, partWords } from "../words";
import { planning, removalSet, removalSources } from "./removal-arguments";

export const rotationBalance = worksheetFunction({
  name: "ROTATIONBALANCE",
  family: "nutrients",
  summary: "Pounds of a nutrient applied less removed over the years of a rotation.",
  asks: [
    "am I feeding the rotation enough or mining the ground",
    "applied less removed",
    "is potash running down",
    "nutrient balance over years",
  ],
  args: {
    crops: listWithGaps(choice(cropWords, { says: "crop" }), { says: "crop of each year" }),
    yields: listWithGaps(quantity(limits.yieldAny, { says: "yield" }), {
      says: "yield of each year, in the same order as the crops",
    }),
    nutrient: choice(nutrientWords, { says: "nutrient; phosphorus and potassium are counted as P2O5 and K2O" }),
    applied: list(quantity(limits.ratePounds, { says: "pounds applied" }), {
      says: "pounds per acre of the nutrient put on over the rotation, fertilizer and manure",
    }),
    parts: optional(
      listWithGaps(choice(partWords, { says: "part" }), { says: "part taken off each year" }),
      null,
      "the part each crop is grown for",
    ),
    set: removalSet,
  },
  returns: { shape: "one", unit: "lb/ac", says: "pounds applied less removed over the rotation" },
  sources: removalSources,
  cautions: [
    planning,
    "Phosphate and potash left over stay in the soil; nitrogen and sulfur do not, so read their balance as applied less removed and no more.",
  ],
  example: {
    call: [[["corn"], ["soybean"]], [[180], [60]], "K2O", 60],
    gives: -45,
    because: "by hand: 60 − (180 × 0.20 + 60 × 1.15) = 60 − 105",
  },
  compute: ({ crops: cropList, yields, nutrient, applied, parts: partList, set }) =>
    rotationBalanceOf({ crops: cropList, yields, parts: partList, nutrient, appliedLbPerAc: applied, set }),
  value: (result) => result.balanceLbPerAc,
  working: (result) => [
    line("Applied", result.appliedLbPerAc, "lb/ac"),
    ...result.harvests.map(({ crop, removal: { removedLbPerAc } }, year) =>
      line(`Removed in year ${year + 1} by ${crops[crop].label}`, removedLbPerAc, "lb/ac"),
    ),
    line("Removed over the rotation", result.removedLbPerAc, "lb/ac"),
    line("Balance a year", result.balanceLbPerAcYear, "lb/ac"),
  ],
  cites: (result) => result.harvests.flatMap(({ removal: { pieces } }) => pieces.map(({ number }) => number.cited)),
});
