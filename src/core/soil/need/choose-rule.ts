import { refuseArgument, waitFor } from "../../fault";
import type { CropKey } from "../../../reference/crops";
import { extractants } from "../../../reference/guides";
import type {
  ApproachKey,
  ExtractantKey,
  GroupKey,
  Guide,
  NeedNutrient,
  NeedRule,
  NeedSystem,
} from "../../../reference/guides";
import { namesClasses } from "./names-classes";
import { groupsOf, inWords, refuseGroup, refuseRule } from "./refuse-rule";

export interface RuleQuestion {
  readonly guide: Guide;
  readonly nutrient: NeedNutrient;
  /** null: not said; refused where the guide's rules differ by crop. */
  readonly crop: CropKey | null;
  readonly cecMeq: number | null;
  /** null: the guide's own, where its numbers do not turn on it. */
  readonly extractant: ExtractantKey | null;
  /** null: the guide's own. */
  readonly approach: ApproachKey | null;
  /** null: not said; waited for where the guide splits its numbers by it. */
  readonly group?: GroupKey | null;
  /** Crop before this one, where the guide's level turns on it; null: none. */
  readonly rotationCrop: CropKey | null;
  /** Look for a rule that names classes, whatever its approach. */
  readonly forRating?: boolean;
}

export interface ChosenRule {
  readonly rule: NeedRule;
  /** The one that was asked for, or all that the rule holds for. */
  readonly extractants: readonly ExtractantKey[];
  readonly approach: ApproachKey;
}

/**
 * The rule of a guide that fits a crop, a laboratory method and a soil.
 *
 * Refuses a method or approach the guide does not define and names those it takes; waits for a crop, CEC, method or
 * group that the guide's rules turn on.
 */
export function chooseRule(question: RuleQuestion): ChosenRule {
  const { guide, nutrient } = question;
  const system = guide[nutrient];
  const approach = question.approach ?? guide.approach;
  const tried = extractantsToTry(guide, system, question.extractant);
  let chosen: NeedRule | undefined;
  for (const extractant of tried) {
    const rule = ruleFor(question, approach, extractant);
    if (rule && chosen && rule !== chosen) {
      waitFor("method", `${guide.label} takes ${methodsOf(system)}`);
    }
    chosen ??= rule;
  }
  const rule = chosen ?? refuseRule(question, approach);
  return { rule, approach, extractants: held(rule, system, question.extractant) };
}

/** One empty place stands for a guide that is read at a class, whatever the extraction. */
function extractantsToTry(
  guide: Guide,
  system: NeedSystem,
  asked: ExtractantKey | null,
): readonly (ExtractantKey | null)[] {
  if (system.extractants.length === 0) return [null];
  if (asked === null) return system.extractants;
  if (system.extractants.includes(asked)) return [asked];
  return refuseArgument(
    "method",
    `${guide.label} is defined for ${methodsOf(system)}; got ${extractants[asked].label}. Convert the test first (TESTCONVERT), or use a guide that takes it.`,
  );
}

function methodsOf(system: NeedSystem): string {
  return inWords(system.extractants.map((key) => extractants[key].label));
}

function held(rule: NeedRule, system: NeedSystem, asked: ExtractantKey | null): readonly ExtractantKey[] {
  if (asked !== null && system.extractants.length > 0) return [asked];
  return rule.extractants ?? system.extractants;
}

function ruleFor(
  question: RuleQuestion,
  approach: ApproachKey,
  extractant: ExtractantKey | null,
): NeedRule | undefined {
  const { guide, nutrient, cecMeq } = question;
  for (const rule of guide[nutrient].rules) {
    if (extractant !== null && rule.extractants && !rule.extractants.includes(extractant)) continue;
    if (question.forRating ? !namesClasses(rule) : !(rule.approaches ?? [guide.approach]).includes(approach)) continue;
    if (!fitsCrop(rule, question) || !fitsGroup(rule, question)) continue;
    const bound = rule.cecUpTo ?? rule.cecBelow;
    if (bound === undefined) return rule;
    if (cecMeq === null) waitFor("cec");
    if (cecMeq < bound || cecMeq === rule.cecUpTo) return rule;
  }
  return undefined;
}

function fitsCrop({ crops, after }: NeedRule, { crop, rotationCrop }: RuleQuestion): boolean {
  if (after !== undefined && rotationCrop !== after) return false;
  if (crops === "all") return true;
  if (crop === null) waitFor("crop");
  return crops.includes(crop);
}

function fitsGroup(rule: NeedRule, question: RuleQuestion): boolean {
  if (rule.group === undefined || rule.group === question.group) return true;
  const known = groupsOf(question);
  if (question.group && known.includes(question.group)) return false;
  return refuseGroup(question, known);
}
