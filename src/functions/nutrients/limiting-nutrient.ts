import { limits } from "../../core/limits";
import { limitingNutrients, type NutrientTest } from "../../core/soil/limiting-nutrient";
import { guides } from "../../reference/guides";
import { nutrients } from "../../reference/nutrients";
import { choice, line, optional, quantity, readOrNull, worksheetFunction, type ManyArgument } from "../frame";
import { waitFor } from "../../core/fault";
import { cropWords, extractantWords, nutrientWords } from "../words";
import { checkLines } from "../check-lines";
import { anyTest, groupArgument, guideArgument, ownUnit } from "../soil/guide-arguments";
import { guideSources, ratingRows } from "../soil/guide-rows";
import { testsVary } from "../cautions";

const says = `two columns, nutrient and soil test ${ownUnit}; a third may name the extraction`;
const nutrientCell = choice(nutrientWords, { says: "nutrient" });
const testCell = quantity(anyTest, { says: "soil test" });
const methodCell = choice(extractantWords, { says: "extraction" });

const heads = {
  criticalLevel: "Test as % of critical level (not of yield)",
  index: "Fertility index, 100 tops the optimum (not % of yield)",
} as const;

/** Rows without a test are passed over, so that a half-filled list stays calm. */
const testsArgument: ManyArgument<readonly NutrientTest[]> = {
  shape: "many",
  says,
  unit: "",
  readMany(cells, argument) {
    const tests = cells.flatMap(([nutrient = null, soilTest = null, method = null]) => {
      const test = readOrNull(testCell, soilTest, argument);
      const name = readOrNull(nutrientCell, nutrient, argument);
      const extractant = readOrNull(methodCell, method, argument);
      return test === null || name === null ? [] : [{ nutrient: name, soilTest: test, extractant }];
    });
    return tests.length > 0 ? tests : waitFor(argument);
  },
};

export const limitingNutrient = worksheetFunction({
  name: "LIMITINGNUTRIENT",
  family: "nutrients",
  summary: "Tested nutrients ranked by how far they fall short of a guide's level, scarcest first.",
  asks: ["which nutrient is scarcest", "what is holding the crop back", "rank my soil tests"],
  args: {
    crop: choice(cropWords, { says: "crop to be grown" }),
    tests: testsArgument,
    guide: guideArgument,
    cec: optional(
      quantity(limits.cec, { says: "cation exchange capacity" }),
      null,
      "waited for where the guide's levels turn on it",
    ),
    group: groupArgument,
  },
  returns: {
    shape: "table",
    unit: "%",
    says: "a row per nutrient: test, critical level, test as % of it (or the guide's index), class; the scarcest sets the yield",
  },
  sources: guideSources,
  cautions: [
    "The scarcest nutrient holds the yield back, whatever the others are. No guide held here publishes yield by soil test, so this is a ranking and no share of full yield.",
    testsVary,
  ],
  example: {
    call: [
      "corn",
      [
        ["K", 108],
        ["P", 15],
      ],
      "IN-MI-OH",
      10,
    ],
    gives: [
      ["Nutrient", "Soil test", "Critical level", heads.criticalLevel, "Class"],
      ["P2O5", 15, 20, 75, "deficient"],
      ["K2O", 108, 120, 90, "deficient"],
    ],
    because: "by hand: 15 / 20 = 75 % and 108 / 120 = 90 %; levels of the 2020 guide",
  },
  compute: ({ guide, cec, ...given }) => limitingNutrients({ ...given, guide: guides[guide], cecMeq: cec }),
  value: ({ by, ranked }) => [
    ["Nutrient", "Soil test", "Critical level", heads[by], "Class"],
    ...ranked.map(({ nutrient, soilTest, criticalLevel, measure, says: word }) => [
      nutrients[nutrient].label,
      soilTest,
      criticalLevel ?? "",
      measure ?? "not published",
      word,
    ]),
  ],
  working: ({ by, ranked }) => [
    line("Ranked by", heads[by]),
    line("Law of the minimum", "the scarcest nutrient sets the yield; more of the others does not make up for it"),
    line("Share of full yield", "not given: no guide held here publishes yield by soil test"),
    ...ranked.map(({ nutrient, measure, says: word }) =>
      measure === null
        ? line(nutrients[nutrient].label, word)
        : line(`${nutrients[nutrient].label}, ${word}`, measure, by === "index" ? "" : "%"),
    ),
    ...checkLines(ranked.flatMap(({ cited }) => cited)),
  ],
  cites: ({ ranked }) => ranked.flatMap(({ cited }) => cited),
  everyRow: ratingRows,
});
