import { limits } from "../../core/limits";
import { nutrientNeed, type NutrientNeed } from "../../core/soil/need/nutrient-need";
import type { SoilTest } from "../../core/soil/need/read-test";
import { approaches, guides, type NeedNutrient, type TestUnitKey } from "../../reference/guides";
import { choice, line, optional, quantity, worksheetFunction, type WorkingLine } from "../frame";
import { orWord } from "../number-or-word";
import { approachWords, cropWords } from "../words";
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
  yearsArgument,
} from "./guide-arguments";
import { guideSources, needRows } from "./guide-rows";
import { reportClassWords } from "./guide-words";
import { nutrientRules, testsVary } from "../cautions";

const cropArgument = choice(cropWords, { says: "crop to be grown" });
const yieldGoalArgument = quantity(limits.yieldAny, {
  says: "yield goal: bu, ton, cwt or bale per acre, as the crop is sold",
});
const approachArgument = optional(
  choice(approachWords, {
    says: "build (feed the crop and raise the soil), sufficiency (leave the build-up out) or removal (put back what the crop takes)",
  }),
  null,
  "the guide's own",
);

const soilTestOf = (nutrient: "P" | "K") =>
  orWord<string, SoilTest>(
    quantity(anyTest, { says: `soil-test ${nutrient} ${ownUnit}; for SC the class on the report` }),
    reportClassWords,
    { ofNumber: (value) => value, ofWord: (word) => reportClassWords.find(word) ?? Number.NaN },
  );

const cautions = [testsVary, nutrientRules];

export const phosphateNeed = worksheetFunction({
  name: "PHOSPHATENEED",
  family: "soil",
  summary: "Pounds of P2O5 that a guide recommends for a crop on a tested soil.",
  asks: ["how much phosphate", "how much phosphorus does corn need", "P rate from a soil test", "DAP or MAP need"],
  args: {
    crop: cropArgument,
    yieldGoal: yieldGoalArgument,
    soilTest: soilTestOf("P"),
    guide: guideArgument,
    method: methodArgument,
    approach: approachArgument,
    rotationCrop: optional(
      choice(cropWords, {
        says: "crop of the rotation that asks for a higher test: wheat or alfalfa in IN-MI-OH, corn before corn in NE",
      }),
      null,
      "the crop's own critical level",
    ),
    group: groupArgument,
    years: yearsArgument,
    testUnit: testUnitArgument,
  },
  returns: { shape: "one", unit: "lb/ac", says: "pounds of P2O5 per acre a year" },
  sources: guideSources,
  cautions,
  example: {
    call: ["corn", 180, 12, "IN-MI-OH"],
    gives: 105,
    because: "by hand: (20 − 12) × 5 + 180 × 0.35 = 40 + 63 = 103, to the nearest 5",
  },
  // Fields one by one, here and below: collecting the rest of them is ten times slower over a long column.
  compute: ({ crop, yieldGoal, soilTest, guide, method, approach, rotationCrop, group, years, testUnit }) =>
    nutrientNeed({
      guide: guides[guide],
      nutrient: "P2O5",
      crop,
      yieldGoalPerAc: yieldGoal,
      soilTest,
      cecMeq: null,
      extractant: method,
      approach,
      rotationCrop,
      group,
      years,
      testUnit,
    }),
  value: (result) => result.rateLbPerAc,
  working: needLines,
  cites: (result) => result.cited,
  everyRow: rowsOf("P2O5"),
});

export const potashNeed = worksheetFunction({
  name: "POTASHNEED",
  family: "soil",
  summary: "Pounds of K2O that a guide recommends for a crop on a tested soil.",
  asks: ["how much potash", "how much potassium do beans need", "K rate from a soil test"],
  args: {
    crop: cropArgument,
    yieldGoal: yieldGoalArgument,
    soilTest: soilTestOf("K"),
    guide: guideArgument,
    cec: optional(
      quantity(limits.cec, { says: "cation exchange capacity" }),
      null,
      "waited for where the guide's levels turn on it, as in IN-MI-OH",
    ),
    method: methodArgument,
    approach: approachArgument,
    group: groupArgument,
    years: yearsArgument,
    testUnit: testUnitArgument,
  },
  returns: { shape: "one", unit: "lb/ac", says: "pounds of K2O per acre a year" },
  sources: guideSources,
  cautions,
  example: {
    call: ["soybean", 60, 100, "IN-MI-OH", 10],
    gives: 120,
    because: "by hand: (120 − 100) × (1 + 0.05 × 10) + 60 × 1.15 + 20 = 30 + 69 + 20 = 119, to the nearest 5",
  },
  compute: ({ crop, yieldGoal, soilTest, guide, cec, method, approach, group, years, testUnit }) =>
    nutrientNeed({
      guide: guides[guide],
      nutrient: "K2O",
      crop,
      yieldGoalPerAc: yieldGoal,
      soilTest,
      cecMeq: cec,
      extractant: method,
      approach,
      rotationCrop: null,
      group,
      years,
      testUnit,
    }),
  value: (result) => result.rateLbPerAc,
  working: needLines,
  cites: (result) => result.cited,
  everyRow: rowsOf("K2O"),
});

function rowsOf(nutrient: NeedNutrient) {
  return (guide: string | null) => needRows(nutrient, guide);
}

/** A test this many times above the limit is worth a look at its unit. */
const farAbove = 4;

interface TypedTest {
  readonly soilTest: SoilTest;
  readonly testUnit: TestUnitKey | null;
}

function needLines(result: NutrientNeed, typed: TypedTest): WorkingLine[] {
  const { guide, testUnit, criticalLevel, maintenanceLimit, soilTest } = result;
  return [
    line("Guide", `${guide.label}, ${guide.title}, ${guide.year}`),
    ...unitLines(typed.soilTest, typed.testUnit, testUnit),
    testLine(soilTest, testUnit, result.extractants, result.depthIn),
    line("Approach", approaches[result.approach].label),
    ...(criticalLevel === null ? [] : [line("Critical level", criticalLevel, testUnit)]),
    ...(maintenanceLimit === null ? [] : [line("Nothing recommended from", maintenanceLimit, testUnit)]),
    ...(result.zone === "" ? [] : [line("Zone", result.zone)]),
    ...removalLines(result),
    line("Build-up", result.buildupLbPerAc, "lb/ac"),
    line("Maintenance", result.maintenanceLbPerAc, "lb/ac"),
    ...(result.droppedBuildupLbPerAc > 0 ? [line("Build-up left out", result.droppedBuildupLbPerAc, "lb/ac")] : []),
    line(`Rate, to the nearest ${result.roundedTo} lb`, result.rateLbPerAc, "lb/ac"),
    ...(maintenanceLimit !== null &&
    testUnit === "ppm" &&
    typeof soilTest === "number" &&
    soilTest > farAbove * maintenanceLimit
      ? [line("Unit", "a report in lb/ac shows twice the ppm: check which one this is")]
      : []),
    ...checkLines(result.cited),
  ];
}

function removalLines({ removalNumber }: NutrientNeed): WorkingLine[] {
  if (removalNumber === null) return [];
  const { lbPerUnit, unit, set } = removalNumber;
  return [line(`Crop removal, ${set}`, lbPerUnit, `lb/${unit}`)];
}
