import { within } from "../../limit";
import { removalIndex, type Coefficient } from "../../nutrients/removal-index";
import { crops, type CropKey } from "../../../reference/crops";
import type { ApproachKey, ExtractantKey, Guide, NeedRule, NeedSystem, RateForm } from "../../../reference/guides";
import type { Cited } from "../../../reference/table";
import { buildMaintain } from "./build-maintain";
import { chooseRule, type ChosenRule, type NeedNutrient } from "./choose-rule";
import { classTable } from "./class-table";
import { indexCurveRate, planeRate, pointsRate } from "./equation-rates";
import type { RateParts, RateReadings } from "./rate-parts";

export interface NutrientNeedInput {
  readonly guide: Guide;
  readonly nutrient: NeedNutrient;
  readonly crop: CropKey;
  /** bu, ton, cwt or bale per acre. */
  readonly yieldGoalPerAc: number;
  /** In the guide's own unit. */
  readonly soilTest: number;
  readonly cecMeq: number | null;
  readonly extractant: ExtractantKey | null;
  readonly approach: ApproachKey | null;
  /** Another crop of the rotation whose higher critical level governs; null: none. */
  readonly rotationCrop: CropKey | null;
}

export interface NutrientNeed {
  /** As the guide rounds it. */
  readonly rateLbPerAc: number;
  readonly unroundedLbPerAc: number;
  readonly zone: string;
  readonly criticalLevel: number | null;
  readonly maintenanceLimit: number | null;
  readonly buildupLbPerAc: number;
  readonly maintenanceLbPerAc: number;
  readonly droppedBuildupLbPerAc: number;
  /** lb per unit of yield that maintenance rests on; null where the rule does not use removal. */
  readonly removalNumber: Coefficient | null;
  readonly soilTest: number;
  readonly testUnit: NeedSystem["testUnit"];
  readonly depthIn: number;
  readonly roundedTo: number;
  readonly extractant: ExtractantKey;
  readonly approach: ApproachKey;
  readonly guide: Guide;
  readonly cited: readonly Cited[];
}

/**
 * Phosphate or potash that a guide recommends, lb/ac of P2O5 or K2O.
 *
 * One evaluator for every guide: the rule that fits crop, laboratory method and soil is read at the test and the
 * yield goal, then rounded once as the guide prints its rates. Never below 0.
 */
export function nutrientNeed(input: NutrientNeedInput): NutrientNeed {
  const { guide, nutrient, crop, yieldGoalPerAc, soilTest } = input;
  const system = guide[nutrient];
  within("soilTest", soilTest, { min: 0, max: system.highestTest, unit: system.testUnit, slip: 2 });
  within("yieldGoal", yieldGoalPerAc, yieldLimitOf(crop));
  const chosen = governingRule(input);
  const { rule } = chosen;

  const removalNumber = removalNumberOf(guide, nutrient, crop);
  const parts = rateParts(rule, {
    test: soilTest,
    yieldPerAc: yieldGoalPerAc * (rule.yieldUnitsPer ?? 1),
    crop,
    removalLbPerAc: removalNumber === null ? null : yieldGoalPerAc * removalNumber.lbPerUnit,
    removalTimes: removalTimes(rule.form, crop),
    cecMeq: input.cecMeq,
    withBuildup: chosen.approach === "build",
  });
  return needFrom(input, chosen, parts, usesRemoval(rule.form) && parts.maintenance > 0 ? removalNumber : null);
}

/** Reads a rule; a class that the guide names apart from its rates takes the place of the form's own zone. */
export function rateParts({ form, classes }: NeedRule, readings: RateReadings): RateParts {
  const parts = formParts(form, readings);
  if (!classes) return parts;
  const whole = Math.round(readings.test);
  return { ...parts, zone: classes.find(({ upTo }) => upTo === null || whole <= upTo)?.zone ?? parts.zone };
}

function formParts(form: RateForm, readings: RateReadings): RateParts {
  switch (form.kind) {
    case "buildMaintain":
      return buildMaintain(form, readings);
    case "classes":
      return classTable(form, readings);
    case "plane":
      return planeRate(form, readings);
    case "indexCurve":
      return indexCurveRate(form, readings);
    case "points":
      return pointsRate(form, readings);
  }
}

function needFrom(
  { guide, nutrient, soilTest }: NutrientNeedInput,
  { rule, extractant, approach }: ChosenRule,
  parts: RateParts,
  removalNumber: Coefficient | null,
): NutrientNeed {
  const system = guide[nutrient];
  const toPounds = rule.lbPerRateUnit ?? 1;
  const unroundedLbPerAc = Math.max(0, (parts.buildup + parts.maintenance) * toPounds);
  return {
    rateLbPerAc: roundTo(unroundedLbPerAc, system.roundTo),
    unroundedLbPerAc,
    zone: parts.zone,
    criticalLevel: parts.criticalLevel,
    maintenanceLimit: parts.maintenanceLimit,
    buildupLbPerAc: parts.buildup * toPounds,
    maintenanceLbPerAc: parts.maintenance * toPounds,
    droppedBuildupLbPerAc: parts.droppedBuildup * toPounds,
    removalNumber,
    soilTest,
    testUnit: system.testUnit,
    depthIn: system.depthIn,
    roundedTo: system.roundTo,
    extractant,
    approach,
    guide,
    cited: removalNumber === null ? [rule] : [rule, removalNumber.cited],
  };
}

/** The rule of the crop, or of a rotation partner that asks for a higher test. */
function governingRule(input: NutrientNeedInput): ChosenRule {
  const own = chooseRule(input);
  if (input.rotationCrop === null || input.rotationCrop === input.crop) return own;
  const partner = chooseRule({ ...input, crop: input.rotationCrop });
  return criticalBase(partner) > criticalBase(own) ? partner : own;
}

function criticalBase({ rule }: ChosenRule): number {
  return rule.form.kind === "buildMaintain" ? rule.form.critical.base : 0;
}

function removalNumberOf(guide: Guide, nutrient: NeedNutrient, crop: CropKey): Coefficient | null {
  const record = removalIndex[crop];
  return record?.parts[record.mainPart]?.sets[guide[nutrient].removalSet]?.[nutrient] ?? null;
}

function usesRemoval(form: RateForm): boolean {
  return form.kind !== "plane" && form.kind !== "indexCurve";
}

function removalTimes(form: RateForm, crop: CropKey): number | undefined {
  return form.kind === "buildMaintain" ? form.maintenance.timesFor?.[crop] : undefined;
}

function yieldLimitOf(crop: CropKey): { min: number; max: number; unit: string } {
  const { yieldCeiling, yieldUnit } = crops[crop];
  return { min: 0, max: yieldCeiling, unit: `${yieldUnit}/ac` };
}

/** To the nearest step, halves up; the small term undoes binary dust such as 72.49999999. */
function roundTo(value: number, step: number): number {
  return Math.floor(value / step + 0.5 + 1e-9) * step;
}
