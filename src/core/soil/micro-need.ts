import { needed, refuse, waitFor } from "../fault";
import { crops, type CropKey } from "../../reference/crops";
import {
  markedRates,
  microGuides,
  micronutrients,
  microPlacements,
  microRules,
  type MicroForm,
  type MicroGuideKey,
  type MicronutrientKey,
  type MicroPlacementKey,
  type MicroRule,
} from "../../reference/soil";

export interface MicroNeedInput {
  readonly nutrient: MicronutrientKey;
  readonly crop: CropKey;
  readonly soilTest: number | null;
  readonly ph: number | null;
  readonly guide: MicroGuideKey;
  readonly placement: MicroPlacementKey | null;
  readonly isOrganicSoil: boolean;
  readonly cecMeq: number | null;
}

export interface MicroNeed {
  readonly needLbPerAc: number;
  readonly lowLbPerAc: number;
  readonly highLbPerAc: number;
  /** Availability index, where the guide reckons one. */
  readonly index: number | null;
  readonly rule: MicroRule;
  /** null where the guide prints none. */
  readonly placement: MicroPlacementKey | null;
}

type FormOf<Kind extends MicroForm["kind"]> = Extract<MicroForm, { kind: Kind }>;

/** Micronutrient to apply, lb/ac, as a region prints it. A level without a printed rate is not available below it. */
export function microNeed(input: MicroNeedInput): MicroNeed {
  const rule = ruleFor(input);
  const { form } = rule;
  const placement = placementOf(rule, input.placement);
  const made = (lb: number, index: number | null = null): MicroNeed => ({
    needLbPerAc: lb,
    lowLbPerAc: form.kind === "fixed" ? form.low : lb,
    highLbPerAc: form.kind === "fixed" ? form.high : lb,
    index,
    rule,
    placement,
  });
  switch (form.kind) {
    case "fixed":
      return made(form.lb);
    case "classes":
      return made(classRate(form, input, placement));
    case "line":
      return made(lineRate(form, input));
    case "index":
      return indexRate(form, input, made);
    case "critical":
      return testOf(input) < levelOf(form, input) ? refuseRate(input, form.how) : made(0);
  }
}

function ruleFor({ guide, nutrient, crop, isOrganicSoil }: MicroNeedInput): MicroRule {
  const rules = microRules.filter((rule) => rule.guide === guide && rule.nutrient === nutrient);
  const soil = isOrganicSoil ? "organic" : "mineral";
  const rule = rules.find(({ crops: of, on }) => (of === "all" || of.includes(crop)) && (!on || on === soil));
  if (rule) return rule;
  const isMarked = guide === "ncA" || guide === "ncB";
  refuse({
    kind: "notPublished",
    where: microGuides[guide].label,
    what: `rate of ${micronutrients[nutrient].label} for ${crops[crop].label} that is known here`,
    ...(isMarked && (nutrient === "Zn" || nutrient === "Cu") && { instead: `It prints, ${markedRates[nutrient]}.` }),
  });
}

/** The placement of the rate: printed for one, or asked for where the guide prints two. */
function placementOf(rule: MicroRule, asked: MicroPlacementKey | null): MicroPlacementKey | null {
  const printed = rule.placement ?? null;
  if (printed === null || asked === null || asked === printed) return printed ?? asked;
  refuse({
    kind: "notPublished",
    where: microGuides[rule.guide].label,
    what: `${microPlacements[asked].label} rate of ${micronutrients[rule.nutrient].label}`,
    instead: `Its rate is for ${microPlacements[printed].label}.`,
  });
}

function classRate(form: FormOf<"classes">, input: MicroNeedInput, placement: MicroPlacementKey | null): number {
  const test = Number(testOf(input).toFixed(form.decimals));
  const found = form.classes.find(({ upTo }) => upTo === null || test <= upTo);
  if (!found || (found.broadcast === 0 && !found.band)) return 0;
  if (found.band === undefined) return found.broadcast;
  if (placement === null) waitFor("placement");
  if (placement === "foliar") refuseRate(input, "the guide prints broadcast and band rates");
  return placement === "band" ? found.band : found.broadcast;
}

function lineRate(form: FormOf<"line">, input: MicroNeedInput): number {
  const test = testOf(input);
  if (form.below !== null && test >= form.below) return 0;
  const ph = form.perPh === 0 ? 0 : phOf(input);
  return Math.max(form.least, form.constant + form.perTest * test + form.perPh * ph);
}

function indexRate(
  form: FormOf<"index">,
  input: MicroNeedInput,
  made: (lb: number, index: number) => MicroNeed,
): MicroNeed {
  const index = form.constant + form.perTest * testOf(input) + form.perPh * phOf(input);
  if (index > form.critical) return made(0, index);
  return form.lb === null
    ? refuseRate(input, `the index is ${index.toFixed(1)}, critical ${form.critical}; the page prints no rate`)
    : made(form.lb, index);
}

function levelOf({ level, richCecLevel }: FormOf<"critical">, { cecMeq }: MicroNeedInput): number {
  if (richCecLevel === undefined) return level;
  const cec = needed("cec", cecMeq);
  return cec <= 5 ? level : richCecLevel;
}

function testOf({ soilTest }: MicroNeedInput): number {
  return needed("soilTest", soilTest);
}

function phOf({ ph }: MicroNeedInput): number {
  return needed("pH", ph);
}

function refuseRate({ guide, nutrient }: MicroNeedInput, how: string): never {
  refuse({
    kind: "notPublished",
    where: microGuides[guide].label,
    what: `rate of ${micronutrients[nutrient].label} for this test, which is in the range where it may pay: ${how}`,
    instead: "Ask your extension office for the rate.",
  });
}
