import { refuseArgument } from "../../core/fault";
import { limits } from "../../core/limits";
import { testRating as testRatingOf } from "../../core/soil/need/test-rating";
import { guides, type NeedNutrient } from "../../reference/guides";
import { nutrients, type NutrientKey } from "../../reference/nutrients";
import { choice, line, optional, quantity, worksheetFunction } from "../frame";
import { cropWords, nutrientWords } from "../words";
import { checkLines } from "../check-lines";
import {
  anyTest,
  groupArgument,
  guideArgument,
  methodArgument,
  ownUnit,
  testLine,
  testUnitArgument,
  unitLines,
} from "./guide-arguments";
import { guideSources, ratingRows } from "./guide-rows";
import { testsVary } from "../cautions";

export const testRating = worksheetFunction({
  name: "TESTRATING",
  family: "soil",
  summary: "The class a guide puts a soil test in, in words.",
  asks: ["is my soil test high or low", "what class is this soil test", "soil test rating"],
  args: {
    nutrient: choice(nutrientWords, { says: "P2O5 or K2O (P and K are understood)" }),
    soilTest: quantity(anyTest, { says: `soil test ${ownUnit}` }),
    guide: guideArgument,
    crop: optional(
      choice(cropWords, { says: "crop, or the one of the rotation that asks for the higher test" }),
      null,
      "waited for where the guide's classes differ by crop",
    ),
    cec: optional(
      quantity(limits.cec, { says: "cation exchange capacity" }),
      null,
      "waited for where the guide's classes turn on it",
    ),
    method: methodArgument,
    group: groupArgument,
    testUnit: testUnitArgument,
  },
  returns: {
    shape: "one",
    unit: "",
    says: "the guide's word for the test: deficient, maintenance or sufficient in IN-MI-OH",
  },
  sources: guideSources,
  cautions: [testsVary],
  example: {
    call: ["P", 22, "IN-MI-OH", "corn"],
    gives: "maintenance",
    because: "by hand: 22 ppm lies between the critical level 20 and the limit 40",
  },
  compute: ({ nutrient, soilTest, guide, crop, cec, method, group, testUnit }) =>
    testRatingOf({
      guide: guides[guide],
      nutrient: ratedNutrient(nutrient),
      crop,
      soilTest,
      cecMeq: cec,
      extractant: method,
      group,
      testUnit,
    }),
  value: (result) => result.zone,
  working: (result, given) => [
    ...unitLines(given.soilTest, given.testUnit, result.testUnit),
    testLine(result.soilTest, result.testUnit, result.extractants, null),
    ...(result.criticalLevel === null ? [] : [line("Critical level", result.criticalLevel, result.testUnit)]),
    ...(result.maintenanceLimit === null
      ? []
      : [line("Nothing recommended from", result.maintenanceLimit, result.testUnit)]),
    line("Class", result.zone),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
  everyRow: ratingRows,
});

function ratedNutrient(nutrient: NutrientKey): NeedNutrient {
  if (nutrient === "P2O5" || nutrient === "K2O") return nutrient;
  refuseArgument("nutrient", `guides rate soil-test P and K here; got ${nutrients[nutrient].label}.`);
}
