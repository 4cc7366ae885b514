import { rowLength as rowLengthOf } from "../../core/seed/row-length";
import { seedLimits } from "../../core/seed/seed-limits";
import { standCount as standCountOf } from "../../core/seed/stand-count";
import { line, optional, quantity, worksheetFunction } from "../frame";
import { counts, feetCounted, rowWidth } from "./seed-arguments";

const saysFraction = { says: "part of an acre, such as 0.001 or 1/1000" };
/** Reads past 1, so that the formula can ask about 1000 typed for 1/1000. */
const fractionOfAcre = {
  ...quantity(seedLimits.fractionOfAcre, saysFraction),
  read: quantity({ ...seedLimits.fractionOfAcre, max: 1e9 }, saysFraction).read,
};

export const rowLength = worksheetFunction({
  name: "ROWLENGTH",
  family: "seed",
  summary: "Feet of row that make up a thousandth of an acre, or another fraction.",
  asks: ["row length for a thousandth of an acre", "how many feet to count", "feet of row in 1/1000 acre"],
  args: {
    rowWidth,
    fractionOfAcre: optional(fractionOfAcre, 0.001, "1/1000"),
  },
  returns: { shape: "one", unit: "ft", says: "length of one row" },
  sources: ["acre-geometry", "ndsu-procrop-row-length"],
  example: {
    call: [30],
    gives: 17.424,
    because: "by hand: 43,560 / 1,000 = 43.56 square feet; / 2.5 ft of row width",
  },
  compute: (values) => rowLengthOf({ rowWidthIn: values.rowWidth, fractionOfAcre: values.fractionOfAcre }),
  value: (result) => result.feet,
  working: (result) => [
    line("Row in an acre", result.rowFeetPerAc, "ft"),
    line("Length to measure", result.feet, "ft"),
    line("On the tape", `${result.wholeFeet} ft ${result.restInches} in`),
  ],
});

export const standCount = worksheetFunction({
  name: "STANDCOUNT",
  family: "seed",
  summary: "Plants per acre from counts along the row.",
  asks: ["how many plants do I have", "stand count", "plants per acre from a count", "plants in 1/1000 acre"],
  args: {
    counts,
    rowWidth,
    feetCounted,
  },
  returns: { shape: "one", unit: "plants/ac", says: "mean stand over the places counted" },
  sources: ["acre-geometry", "ndsu-procrop-row-length"],
  example: {
    call: [[[28], [31], [30], [26], [29]], 30],
    gives: 28_800,
    because: "by hand: (28 + 31 + 30 + 26 + 29) / 5 = 28.8; each plant stands for 1,000",
  },
  compute: (values) =>
    standCountOf({ counts: values.counts, rowWidthIn: values.rowWidth, feetCounted: values.feetCounted }),
  value: (result) => result.plantsPerAc,
  working: (result) => [
    line("Places counted", result.counts, "places"),
    line("Mean count", result.meanCount, "plants"),
    line("Row behind each count", result.feetCounted, "ft"),
    line("One plant stands for", result.plantsPerAcEach, "plants/ac"),
    line("Thinnest place", result.lowestPerAc, "plants/ac"),
    line("Thickest place", result.highestPerAc, "plants/ac"),
    line("Mean stand", result.plantsPerAc, "plants/ac"),
  ],
});
