import { limits } from "../../core/limits";
import { nutrientNeed, type NutrientNeed } from "../../core/soil/need/nutrient-need";
import { approaches, extractants, guides } from "../../reference/guides";
import { removalSets } from "../../reference/nutrients";
import { choice, line, optional, quantity, worksheetFunction, type WorkingLine } from "../frame";
import { approachWords, cropWords, extractantWords, guideWords } from "../words";
import { checkLines } from "./check-lines";

const cropArgument = choice(cropWords, { says: "crop to be grown" });
const yieldGoalArgument = quantity(limits.yieldAny, {
  says: "yield goal: bu, ton, cwt or bale per acre, as the crop is sold",
});
const guideArgument = choice(guideWords, {
  says: "published recommendation system, by the postal codes of its region",
});
const methodArgument = optional(
  choice(extractantWords, { says: "extraction the laboratory used" }),
  null,
  "the guide's own, where it takes only one",
);
const approachArgument = optional(
  choice(approachWords, { says: "build (feed the crop and raise the soil) or sufficiency (leave the build-up out)" }),
  null,
  "the guide's own",
);

const cautions = [
  "A planning figure. Soil tests vary in space and season: trust a trend over several years.",
  "State nutrient rules and phosphorus indexes can allow less than a guide recommends; follow them.",
];

export const phosphateNeed = worksheetFunction({
  name: "PHOSPHATENEED",
  family: "soil",
  summary: "Pounds of P2O5 that a guide recommends for a crop on a tested soil.",
  args: {
    crop: cropArgument,
    yieldGoal: yieldGoalArgument,
    soilTest: quantity(limits.soilTestAny, { says: "soil-test P in the guide's unit (IN-MI-OH: ppm, 0 to 8 in)" }),
    guide: guideArgument,
    method: methodArgument,
    approach: approachArgument,
    rotationCrop: optional(
      choice(cropWords, { says: "crop of the rotation that asks for a higher test, such as wheat or alfalfa" }),
      null,
      "the crop's own critical level",
    ),
  },
  returns: { shape: "one", unit: "lb/ac", says: "pounds of P2O5 per acre a year" },
  sources: ["osu-974-2020", "osu-anr96-2020"],
  cautions,
  example: {
    call: ["corn", 180, 12, "IN-MI-OH"],
    gives: 105,
    because: "by hand: (20 − 12) × 5 + 180 × 0.35 = 40 + 63 = 103, to the nearest 5",
  },
  compute: ({ crop, yieldGoal, soilTest, guide, method, approach, rotationCrop }) =>
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
    }),
  value: (result) => result.rateLbPerAc,
  working: needLines,
  cites: (result) => result.cited,
});

export const potashNeed = worksheetFunction({
  name: "POTASHNEED",
  family: "soil",
  summary: "Pounds of K2O that a guide recommends for a crop on a tested soil.",
  args: {
    crop: cropArgument,
    yieldGoal: yieldGoalArgument,
    soilTest: quantity(limits.soilTestAny, { says: "soil-test K in the guide's unit (IN-MI-OH: ppm, 0 to 8 in)" }),
    guide: guideArgument,
    cec: optional(
      quantity(limits.cec, { says: "cation exchange capacity" }),
      null,
      "waited for where the guide's levels turn on it, as in IN-MI-OH",
    ),
    method: methodArgument,
    approach: approachArgument,
  },
  returns: { shape: "one", unit: "lb/ac", says: "pounds of K2O per acre a year" },
  sources: ["osu-974-2020", "osu-anr96-2020"],
  cautions,
  example: {
    call: ["soybean", 60, 100, "IN-MI-OH", 10],
    gives: 120,
    because: "by hand: (120 − 100) × (1 + 0.05 × 10) + 60 × 1.15 + 20 = 30 + 69 + 20 = 119, to the nearest 5",
  },
  compute: ({ crop, yieldGoal, soilTest, guide, cec, method, approach }) =>
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
    }),
  value: (result) => result.rateLbPerAc,
  working: needLines,
  cites: (result) => result.cited,
});

/** A test this many times above the limit is worth a look at its unit. */
const farAbove = 4;

function needLines(result: NutrientNeed): WorkingLine[] {
  const { guide, testUnit, criticalLevel, maintenanceLimit, soilTest } = result;
  return [
    line("Guide", `${guide.label}, ${guide.title}, ${guide.year}`),
    line("Soil test", `${soilTest} ${testUnit}, ${extractants[result.extractant].label}, ${result.depthIn} in`),
    line("Approach", approaches[result.approach].label),
    ...(criticalLevel === null ? [] : [line("Critical level", criticalLevel, testUnit)]),
    ...(maintenanceLimit === null ? [] : [line("Nothing recommended from", maintenanceLimit, testUnit)]),
    line("Zone", result.zone),
    ...removalLines(result),
    line("Build-up", result.buildupLbPerAc, "lb/ac"),
    line("Maintenance", result.maintenanceLbPerAc, "lb/ac"),
    ...(result.droppedBuildupLbPerAc > 0 ? [line("Build-up left out", result.droppedBuildupLbPerAc, "lb/ac")] : []),
    line(`Rate, to the nearest ${result.roundedTo} lb`, result.rateLbPerAc, "lb/ac"),
    ...(maintenanceLimit !== null && testUnit === "ppm" && soilTest > farAbove * maintenanceLimit
      ? [line("Unit", "a report in lb/ac shows twice the ppm: check which one this is")]
      : []),
    ...checkLines(result.cited),
  ];
}

function removalLines({ removalNumber }: NutrientNeed): WorkingLine[] {
  if (removalNumber === null) return [];
  const { lbPerUnit, unit, row } = removalNumber;
  return [line(`Crop removal, ${removalSets[row.set].label}`, lbPerUnit, `lb/${unit}`)];
}
