import { optional, quantity, worksheetFunction, line } from "../../../src/functions/frame";

/** Pounds in a wagon: yield times a weight a bushel, 56 lb when left out. */
export const poundsFunction = worksheetFunction({
  name: "TRIALPOUNDS",
  family: "units",
  summary: "Pounds of grain.",
  args: {
    yield: quantity({ min: 0, max: 1000, unit: "bu/ac" }, { says: "bushels" }),
    testWeight: optional(quantity({ min: 30, max: 70, unit: "lb/bu" }, { says: "weight of a bushel" }), 56, "56 lb/bu"),
  },
  returns: { shape: "one", unit: "lb", says: "pounds of grain" },
  sources: [],
  example: { call: [100, 60], gives: 6000, because: "by hand: 100 × 60" },
  compute: ({ yield: bushels, testWeight }) => ({ pounds: bushels * testWeight }),
  value: ({ pounds }) => pounds,
  working: ({ pounds }) => [line("Pounds", pounds, "lb")],
});

/** A table of two rows and two columns from one call. */
export const pairFunction = worksheetFunction({
  name: "TRIALPAIR",
  family: "units",
  summary: "Half and double.",
  args: { amount: quantity({ min: 0, max: 1000, unit: "lb" }, { says: "an amount" }) },
  returns: { shape: "table", unit: "lb", says: "half and double, with their words" },
  sources: [],
  example: {
    call: [10],
    gives: [
      ["half", 5],
      ["double", 20],
    ],
    because: "by hand",
  },
  compute: ({ amount }) => amount,
  value: (amount) => [
    ["half", amount / 2],
    ["double", amount * 2],
  ],
  working: () => [],
});
