import { refuse } from "../../core/fault";
import { limits } from "../../core/limits";
import { testRating as testRatingOf } from "../../core/soil/need/test-rating";
import { extractants, guides } from "../../reference/guides";
import { nutrients, type NutrientKey } from "../../reference/nutrients";
import { choice, line, optional, quantity, worksheetFunction } from "../frame";
import { cropWords, extractantWords, guideWords, nutrientWords } from "../words";
import { checkLines } from "./check-lines";

export const testRating = worksheetFunction({
  name: "TESTRATING",
  family: "soil",
  summary: "The class a guide puts a soil test in, in words.",
  args: {
    nutrient: choice(nutrientWords, { says: "P2O5 or K2O (P and K are understood)" }),
    soilTest: quantity(limits.soilTestAny, { says: "soil test in the guide's unit (IN-MI-OH: ppm, 0 to 8 in)" }),
    guide: choice(guideWords, { says: "published recommendation system, by the postal codes of its region" }),
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
    method: optional(
      choice(extractantWords, { says: "extraction the laboratory used" }),
      null,
      "the guide's own, where it takes only one",
    ),
  },
  returns: {
    shape: "one",
    unit: "",
    says: "the guide's word for the test: deficient, maintenance or sufficient in IN-MI-OH",
  },
  sources: ["osu-974-2020", "osu-anr96-2020"],
  cautions: ["Soil tests vary in space and season: trust a trend over several years."],
  example: {
    call: ["P", 22, "IN-MI-OH", "corn"],
    gives: "maintenance",
    because: "by hand: 22 ppm lies between the critical level 20 and the limit 40",
  },
  compute: ({ nutrient, soilTest, guide, crop, cec, method }) =>
    testRatingOf({
      guide: guides[guide],
      nutrient: ratedNutrient(nutrient),
      crop,
      soilTest,
      cecMeq: cec,
      extractant: method,
      approach: null,
    }),
  value: (result) => result.zone,
  working: (result, { soilTest }) => [
    line("Soil test", `${soilTest} ${result.testUnit}, ${extractants[result.extractant].label}`),
    ...(result.criticalLevel === null ? [] : [line("Critical level", result.criticalLevel, result.testUnit)]),
    ...(result.maintenanceLimit === null
      ? []
      : [line("Nothing recommended from", result.maintenanceLimit, result.testUnit)]),
    line("Class", result.zone),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});

function ratedNutrient(nutrient: NutrientKey): "P2O5" | "K2O" {
  if (nutrient === "P2O5" || nutrient === "K2O") return nutrient;
  refuse({
    kind: "refused",
    argument: "nutrient",
    because: `guides rate soil-test P and K here; got ${nutrients[nutrient].label}.`,
  });
}
