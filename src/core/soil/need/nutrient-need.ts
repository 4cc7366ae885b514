import { refuse, refuseArgument, waitFor } from "../../fault";
import { within } from "../../limit";
import { crops, type CropKey } from "../../../reference/crops";
import { guideInWords } from "../../../reference/guides";
import type { ApproachKey, ExtractantKey, Guide, NeedSystem, RateForm, TestUnitKey } from "../../../reference/guides";
import type { Cited } from "../../../reference/table";
import { chooseRule, type ChosenRule, type RuleQuestion } from "./choose-rule";
import { guideRemoval, type RemovalNumber } from "./guide-removal";
import type { RateParts } from "./rate-parts";
import { eitherOf } from "./refuse-rule";
import { rateParts } from "./read-rule";
import { readTest, type GuideTest, type SoilTest } from "./read-test";

export interface NutrientNeedInput extends Omit<RuleQuestion, "forRating"> {
  readonly crop: CropKey;
  /** bu, ton, cwt or bale per acre. */
  readonly yieldGoalPerAc: number;
  readonly soilTest: SoilTest;
  /** Unit of the test; null: the guide's own. */
  readonly testUnit?: TestUnitKey | null;
  /** Years to raise the test over, where the guide leaves the choice; null: not said. */
  readonly years?: number | null;
}

export interface NutrientNeed {
  /** As the guide rounds it. */
  readonly rateLbPerAc: number;
  readonly unroundedLbPerAc: number;
  /** "" where the guide names no class. */
  readonly zone: string;
  readonly criticalLevel: number | null;
  readonly maintenanceLimit: number | null;
  readonly buildupLbPerAc: number;
  readonly maintenanceLbPerAc: number;
  readonly droppedBuildupLbPerAc: number;
  /** lb per unit of yield that maintenance rests on; null where the rule does not use removal. */
  readonly removalNumber: RemovalNumber | null;
  /** In the guide's unit, or the class it was read at. */
  readonly soilTest: SoilTest;
  readonly testUnit: NeedSystem["testUnit"];
  readonly depthIn: number | null;
  readonly roundedTo: number;
  readonly extractants: readonly ExtractantKey[];
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
  const { guide, nutrient, crop, yieldGoalPerAc } = input;
  const read = readTest(guide, nutrient, input.soilTest, input.testUnit ?? null);
  within("yieldGoal", yieldGoalPerAc, yieldLimitOf(crop));
  const chosen = governingRule(input);
  const { form, yieldUnitsPer } = chosen.rule;
  const removalNumber = guideRemoval(guide, nutrient, crop);
  const parts = rateParts(chosen.rule, {
    test: read.test,
    reportClass: read.reportClass,
    yieldPerAc: yieldGoalPerAc * (yieldUnitsPer ?? 1),
    crop,
    removalLbPerAc: removalNumber === null ? null : yieldGoalPerAc * removalNumber.lbPerUnit,
    cecMeq: input.cecMeq,
    withBuildup: chosen.approach === "build",
    years: offeredYears(guide, form, input.years ?? null),
  });
  if (parts.missing) refuseMissing(input, form, parts);
  return needFrom(input, read, chosen, parts, parts.restsOnRemoval ? removalNumber : null);
}

function needFrom(
  { guide, nutrient }: NutrientNeedInput,
  { test, reportClass }: GuideTest,
  { rule, extractants, approach }: ChosenRule,
  parts: RateParts,
  removalNumber: RemovalNumber | null,
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
    soilTest: reportClass ?? test,
    testUnit: system.testUnit,
    depthIn: system.depthIn,
    roundedTo: system.roundTo,
    extractants,
    approach,
    guide,
    cited: removalNumber === null ? [rule] : [rule, removalNumber.cited],
  };
}

/** The rule of the crop, or of a rotation partner that asks for a higher test. */
function governingRule(input: NutrientNeedInput): ChosenRule {
  const own = chooseRule(input);
  const { partnerGoverns, rules } = input.guide[input.nutrient];
  const partner = input.rotationCrop;
  if (!partnerGoverns || partner === null || partner === input.crop) return own;
  if (!rules.some(({ crops: printed }) => printed !== "all" && printed.includes(partner))) return own;
  const other = chooseRule({ ...input, crop: partner });
  return criticalBase(other) > criticalBase(own) ? other : own;
}

function criticalBase({ rule }: ChosenRule): number {
  return rule.form.kind === "buildMaintain" ? rule.form.critical.base : 0;
}

/** The years asked for, when they are among those the guide prints. */
function offeredYears(guide: Guide, form: RateForm, asked: number | null): number | null {
  if (form.kind !== "buildMaintain" || asked === null) return null;
  const offered = [form.build.years].flat();
  if (offered.includes(asked)) return asked;
  const because = `${guide.label} spreads build-up over ${eitherOf(offered)} years; got ${asked}.`;
  return refuseArgument("years", because);
}

function refuseMissing({ guide, nutrient, crop }: NutrientNeedInput, form: RateForm, parts: RateParts): never {
  if (parts.missing === "years" && form.kind === "buildMaintain") {
    const accepted = `${guide.label} spreads build-up over ${eitherOf([form.build.years].flat())} years`;
    waitFor("years", accepted);
  }
  refuse({
    kind: "notPublished",
    where: guideInWords(guide),
    what: `${nutrient} rate for ${crops[crop].label}${parts.zone === "" ? " at this test" : ` in class "${parts.zone}"`}`,
    instead: "Take it from the current bulletin.",
  });
}

function yieldLimitOf(crop: CropKey): { min: number; max: number; unit: string } {
  const { yieldCeiling, yieldUnit } = crops[crop];
  return { min: 0, max: yieldCeiling, unit: `${yieldUnit}/ac` };
}

/** To the nearest step, halves up; the small term undoes binary dust such as 72.49999999. */
function roundTo(value: number, step: number): number {
  return Math.floor(value / step + 0.5 + 1e-9) * step;
}
