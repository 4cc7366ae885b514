import {
  choice,
  list,
  optional,
  percent,
  quantity,
  rate,
  vocabulary,
  worksheetFunction,
} from "../../../src/functions/frame";
import { refuse } from "../../../src/core/fault";

/** Small made-up functions that exercise the runner; their arithmetic is plain to see. */
const fruit = vocabulary("fruit", {
  apple: { label: "apple", also: ["pippin"] },
  pear: { label: "pear", also: [] },
});

export const boxes = worksheetFunction({
  name: "BOXES",
  family: "units",
  summary: "Fruit in so many boxes.",
  args: {
    kind: choice(fruit, { says: "the fruit" }),
    count: quantity({ min: 0, max: 100, unit: "boxes", slip: 10 }, { says: "how many boxes" }),
    spoiled: optional(percent({ min: 0, max: 50, unit: "%" }, { says: "share spoiled" }), 0, "nothing spoiled"),
  },
  returns: { shape: "one", unit: "pieces", says: "pieces left" },
  sources: [],
  example: { call: ["apple", 3], gives: 30, because: "by hand: 3 × 10" },
  compute: ({ kind, count, spoiled }) => ({ pieces: (count * (kind === "apple" ? 10 : 8) * (100 - spoiled)) / 100 }),
  value: ({ pieces }) => pieces,
  working: () => [],
});

export const growth = worksheetFunction({
  name: "GROWTH2",
  family: "money",
  summary: "A sum after a year.",
  args: {
    sum: quantity({ min: 0, max: 1e12, unit: "$" }, { says: "the sum" }),
    interest: rate({ min: 0, max: 1, unit: "" }, { says: "interest a year" }),
  },
  returns: { shape: "one", unit: "$", says: "the sum after a year" },
  sources: [],
  example: { call: [100, 0.08], gives: 108, because: "by hand: 100 × 1.08" },
  compute: ({ sum, interest }) => sum * (1 + interest),
  value: (result) => result,
  working: () => [],
});

export const mean = worksheetFunction({
  name: "MEANOF",
  family: "units",
  summary: "Mean of a list.",
  args: {
    counts: list(quantity({ min: 0, max: 1e9, unit: "plants" }, { says: "a count" }), {
      says: "the counts",
      atLeast: 2,
    }),
  },
  returns: { shape: "one", unit: "plants", says: "the mean" },
  sources: [],
  example: { call: [[[1], [3]]], gives: 2, because: "by hand" },
  compute: ({ counts }) => counts.reduce((sum, count) => sum + count, 0) / counts.length,
  value: (result) => result,
  working: () => [],
});

export const bad = worksheetFunction({
  name: "BADSUM",
  family: "units",
  summary: "Divides by what it is given; refuses 13.",
  args: { by: quantity({ min: 0, max: 100, unit: "" }, { says: "the divisor" }) },
  returns: { shape: "table", unit: "", says: "one over the divisor, twice" },
  sources: [],
  example: { call: [2], gives: [[0.5, 0.5]], because: "by hand" },
  compute: ({ by }) => (by === 13 ? refuse({ kind: "noSolution", because: "13 is refused here." }) : 1 / by),
  value: (result) => [[result, result]],
  working: () => [],
});
