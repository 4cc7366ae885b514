import { needed, refuse, waitFor } from "../fault";
import { within } from "../limit";
import { crops, type CropKey } from "../../reference/crops";
import type { TextureKey } from "../../reference/nitrogen";
import { sulfurGuides, sulfurRules, type SulfurForm, type SulfurGuideKey, type SulfurRule } from "../../reference/soil";

export interface SulfurNeedInput {
  readonly crop: CropKey;
  /** In the crop's own unit. */
  readonly yieldGoal: number;
  readonly organicMatterPct: number | null;
  readonly guide: SulfurGuideKey;
  /** Sulfate-S: profile lb/ac (KS) or ppm (NE). */
  readonly soilTest: number | null;
  readonly soil: TextureKey | null;
  /** Sulfur from irrigation water and manure, lb/ac. */
  readonly creditsLbPerAc: number;
}

export interface SulfurNeed {
  readonly needLbPerAc: number;
  readonly lowLbPerAc: number;
  readonly highLbPerAc: number;
  readonly unclippedLbPerAc: number;
  readonly rule: SulfurRule;
}

/** Sulfur to apply, lb S/ac, as a region prints it; never below 0. */
export function sulfurNeed(input: SulfurNeedInput): SulfurNeed {
  const { yieldCeiling, yieldUnit } = crops[input.crop];
  within("yieldGoal", input.yieldGoal, { min: 0, max: yieldCeiling, unit: `${yieldUnit}/ac` });
  const rule = ruleFor(input);
  const { lb, low, high } = rateOf(rule.form, input);
  const less = input.creditsLbPerAc;
  return {
    needLbPerAc: Math.max(0, lb - less),
    lowLbPerAc: Math.max(0, low - less),
    highLbPerAc: Math.max(0, high - less),
    unclippedLbPerAc: lb - less,
    rule,
  };
}

function ruleFor({ guide, crop, soil }: SulfurNeedInput): SulfurRule {
  const rules = sulfurRules.filter((rule) => rule.guide === guide && rule.crops.includes(crop));
  if (rules.some(({ on }) => on) && soil === null) waitFor("soil");
  const rule = rules.find(({ on }) => !on || (on === "sand") === (soil === "sandy"));
  if (rule) return rule;
  refuse({
    kind: "notPublished",
    where: sulfurGuides[guide].label,
    what: `sulfur rate for ${crops[crop].label}${rules.length > 0 ? " on this soil" : ""} that is known here`,
  });
}

interface Rate {
  readonly lb: number;
  readonly low: number;
  readonly high: number;
}

const same = (lb: number): Rate => ({ lb, low: lb, high: lb });

function rateOf(form: SulfurForm, input: SulfurNeedInput): Rate {
  switch (form.kind) {
    case "fixed":
      return form;
    case "line":
      return same(form.perYield * input.yieldGoal - form.perPct * organic(input) - test(input));
    case "organic":
      return organic(input) < form.underPct ? form : same(0);
    case "respondsBelow":
      return responds(form, input) ? refuseRate(form.testPpm, input) : same(0);
  }
}

/** Asks only for what still decides: a field that is not sand needs no test. */
function responds(
  { upToPct, testPpm }: Extract<SulfurForm, { kind: "respondsBelow" }>,
  input: SulfurNeedInput,
): boolean {
  const soil = needed("soil", input.soil);
  return soil === "sandy" && organic(input) <= upToPct && test(input) < testPpm;
}

function organic({ organicMatterPct }: SulfurNeedInput): number {
  return needed("organicMatter", organicMatterPct);
}

function test({ soilTest }: SulfurNeedInput): number {
  return needed("soilTest", soilTest);
}

function refuseRate(testPpm: number, { guide, crop }: SulfurNeedInput): never {
  refuse({
    kind: "notPublished",
    where: sulfurGuides[guide].label,
    what: `sulfur rate, though ${crops[crop].label} responds here: sand, little organic matter and sulfate-S below ${testPpm} ppm`,
    instead: "Ask your extension office for the rate.",
  });
}
