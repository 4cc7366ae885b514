import { testConvert as testConvertOf } from "../../core/soil/test-convert";
import { conversionFormulas, testBases, testConversions, testedElements } from "../../reference/guides";
import { choice, line, optional, quantity, vocabulary, worksheetFunction } from "../frame";
import { checkLines } from "../check-lines";

const basisWords = vocabulary("test basis", testBases);
const elementWords = vocabulary("tested nutrient", testedElements);
const formulaWords = vocabulary("conversion formula", conversionFormulas);

export const testConvert = worksheetFunction({
  name: "TESTCONVERT",
  family: "soil",
  summary: "A soil test on another extraction or basis, by a published equation.",
  asks: ["Bray to Mehlich", "convert Olsen to Mehlich 3", "soil test from pounds to ppm", "compare two labs"],
  args: {
    value: quantity({ min: 0, max: 100_000, unit: "" }, { says: "the number on the report" }),
    from: choice(basisWords, { says: "what it stands for, such as Mehlich-3 or ppm" }),
    to: choice(basisWords, { says: "what is wanted, such as Bray P1 or lb/ac" }),
    nutrient: optional(
      choice(elementWords, { says: "P, K, Ca, Mg or Na" }),
      null,
      "waited for where the pair differs by nutrient",
    ),
    depth: optional(
      quantity({ min: 1, max: 60, unit: "in" }, { says: "depth of the sample, for ppm and lb/ac" }),
      null,
      "a slice of 6 to 7 in; waited for with nitrate",
    ),
    formula: optional(
      choice(formulaWords, { says: "which published formula, where a pair has several" }),
      null,
      "the Tri-State ratio; waited for from Mehlich-3 to Bray P1 at 20 ppm or less",
    ),
  },
  returns: { shape: "one", unit: "the basis asked for", says: "the value there" },
  sources: [...new Set(testConversions.rows.map(({ source }) => source))],
  cautions: [
    "Numbers of different extractions are not the same numbers. A converted test is an estimate: have the laboratory run the guide's own method where a decision hangs on it.",
    "On calcareous soil (pH 7.4 or more) Bray P1 is unreliable: use Olsen or Mehlich-3.",
  ],
  example: {
    call: [40, "Mehlich-3", "Bray P1"],
    gives: 29.63,
    because: "by hand: 40 / 1.35, Tri-State ratio",
  },
  compute: ({ value, from, to, nutrient, depth, formula }) =>
    testConvertOf({ value, from, to, element: nutrient, depthIn: depth, formula }),
  value: (result) => result.value,
  working: ({ row, value, isOutside, others }, given) => [
    line(`Given, ${testBases[given.from].label}`, given.value, testBases[given.from].unit),
    line("Equation", row.equation),
    line("Holds for", row.range),
    ...(isOutside ? [line("Outside", "the value lies outside that range: take it with care")] : []),
    line(`Converted, ${testBases[given.to].label}`, value, testBases[given.to].unit),
    ...others.map((other) =>
      line(`By ${other.row.equation} instead, ${other.row.range}`, other.value, testBases[given.to].unit),
    ),
    ...checkLines([row]),
  ],
  cites: ({ row }) => [row],
  everyRow: () => testConversions.rows,
});
