import { needed, refuse, refuseArgument } from "../fault";
import { within } from "../limit";
import { crops, type CropKey } from "../../reference/crops";
import {
  nitrogenGuides,
  type NitrogenGuide,
  type NitrogenGuideKey,
  type NitrogenRule,
  type PreviousKey,
  type TextureKey,
  type TillageKey,
  type TimingKey,
} from "../../reference/nitrogen";
import type { Cited } from "../../reference/table";
import { legumeCredit, type LegumeCredit } from "../nutrients/legume-credit";
import { oatTableRate } from "./oat-table-rate";
import { priceAndTiming, type Factors } from "./price-and-timing";
import { nitrateTerm, organicTerm, otherCredits, richOrganicLb, yieldUnits } from "./rule-terms";

export interface NitrogenNeedInput {
  readonly crop: CropKey;
  /** In the crop's own unit per acre. */
  readonly yieldGoal: number;
  readonly guide: NitrogenGuideKey;
  readonly previous: PreviousKey | null;
  /** In the guide's unit: ppm or lb/ac. */
  readonly soilNitrate: number | null;
  readonly organicMatterPct: number | null;
  /** Other nitrogen to count, lb/ac: manure, irrigation water, fall nitrogen. */
  readonly creditsLbPerAc: number | null;
  readonly soil: TextureKey | null;
  readonly standPerSqFt: number | null;
  readonly timing: TimingKey | null;
  readonly priceNUsdPerLb: number | null;
  readonly priceGrainUsdPerBu: number | null;
  /** The region's own current rate, lb N/ac, where the rule starts from it. */
  readonly guidelineLbPerAc: number | null;
  readonly tillage: TillageKey | null;
  /** Critical level of a late-spring test, ppm. */
  readonly criticalPpm: number | null;
}

/** A rate taken apart: (start + yield − nitrate − organic − legume − other + tillage − rich organic) × factors. */
export interface NitrogenNeed {
  /** lb N/ac, never below 0. */
  readonly needLbPerAc: number;
  /** Before it is held at 0. */
  readonly unclippedLbPerAc: number;
  readonly startLbPerAc: number;
  readonly yieldLbPerAc: number;
  readonly nitrateLbPerAc: number;
  /** The nitrate that was read, typed or the guide's own. */
  readonly nitrateRead: number | null;
  readonly isUsualNitrate: boolean;
  readonly organicLbPerAc: number;
  readonly legume: LegumeCredit | null;
  readonly otherLbPerAc: number;
  readonly tillageLbPerAc: number;
  readonly richOrganicLbPerAc: number;
  readonly factors: Factors;
  readonly guide: NitrogenGuide;
  /** null where the guide prints a table. */
  readonly rule: NitrogenRule | null;
  readonly inside: string;
  readonly cited: readonly Cited[];
}

/**
 * Nitrogen to apply, lb/ac, by one region's published method.
 *
 * Each method says which credits it holds already; those are not taken off a second time. Rates below zero are 0.
 * A crop the method does not print is not available.
 */
export function nitrogenNeed(input: NitrogenNeedInput): NitrogenNeed {
  const guide: NitrogenGuide = nitrogenGuides[input.guide];
  const { yieldCeiling, yieldUnit } = crops[input.crop];
  within("yieldGoal", input.yieldGoal, { min: 0, max: yieldCeiling, unit: `${yieldUnit}/ac` });
  if (guide.table && input.crop === "oat") return needByTable(guide, input);
  const rule = guide.rules.find((candidate) => candidate.crops.includes(input.crop));
  return rule ? needByRule(guide, rule, input) : refuseCrop(guide, input.crop);
}

function needByRule(guide: NitrogenGuide, rule: NitrogenRule, input: NitrogenNeedInput): NitrogenNeed {
  checkRange(guide, rule, input);
  const yields = yieldUnits(rule, input.yieldGoal);
  const nitrate = nitrateTerm(rule, input);
  const parts = {
    startLbPerAc: startLb(rule, input),
    yieldLbPerAc: rule.perYield * yields,
    nitrateLbPerAc: nitrate.lbPerAc,
    organicLbPerAc: organicTerm(rule, yields, input.organicMatterPct),
    legume: creditOf(rule, input),
    otherLbPerAc: otherCredits(rule, input.creditsLbPerAc),
    tillageLbPerAc: rule.tillage ? tillageLb(rule.tillage.lb, input.tillage) : 0,
    richOrganicLbPerAc: richOrganicLb(rule, input.organicMatterPct),
  };
  const factors = priceAndTiming(rule, input);
  const unclippedLbPerAc = sumOf(parts) * factors.price * factors.timing;
  const tillageCited = rule.tillage ? [rule.tillage] : [];
  return {
    ...parts,
    needLbPerAc: Math.max(0, unclippedLbPerAc),
    unclippedLbPerAc,
    nitrateRead: nitrate.read,
    isUsualNitrate: nitrate.isUsual,
    factors,
    guide,
    rule,
    inside: rule.inside,
    cited: [rule, ...tillageCited, ...factors.cited, ...(parts.legume?.cited ?? [])],
  };
}

type Parts = Pick<
  NitrogenNeed,
  | "startLbPerAc"
  | "yieldLbPerAc"
  | "nitrateLbPerAc"
  | "organicLbPerAc"
  | "legume"
  | "otherLbPerAc"
  | "tillageLbPerAc"
  | "richOrganicLbPerAc"
>;

function sumOf(parts: Parts): number {
  const wanted = parts.startLbPerAc + parts.yieldLbPerAc + parts.tillageLbPerAc;
  const soil = parts.nitrateLbPerAc + parts.organicLbPerAc + parts.richOrganicLbPerAc;
  return wanted - soil - (parts.legume?.creditLbPerAc ?? 0) - parts.otherLbPerAc;
}

function needByTable(guide: NitrogenGuide, input: NitrogenNeedInput): NitrogenNeed {
  if (input.creditsLbPerAc !== null && input.creditsLbPerAc > 0) refuseTableCredits();
  const { lbPerAc, cited } = oatTableRate(input);
  return {
    needLbPerAc: lbPerAc,
    unclippedLbPerAc: lbPerAc,
    startLbPerAc: lbPerAc,
    yieldLbPerAc: 0,
    nitrateLbPerAc: 0,
    nitrateRead: null,
    isUsualNitrate: false,
    organicLbPerAc: 0,
    legume: null,
    otherLbPerAc: 0,
    tillageLbPerAc: 0,
    richOrganicLbPerAc: 0,
    factors: { price: 1, timing: 1, priceRatio: null, cited: [] },
    guide,
    rule: null,
    inside: "the previous crop and organic matter: do not credit them again",
    cited,
  };
}

/** A credit for the previous crop, where the rule takes one off. Blank means none is taken off. */
function creditOf(rule: NitrogenRule, input: NitrogenNeedInput): LegumeCredit | null {
  if (!rule.credits || input.previous === null) return null;
  return legumeCredit({
    guide: rule.credits,
    previous: input.previous,
    standPerSqFt: input.standPerSqFt,
    nextCrop: input.crop,
    soil: input.soil,
    season: 1,
    regrowthIn: null,
    previousYieldBu: null,
  });
}

function startLb(rule: NitrogenRule, { guidelineLbPerAc, criticalPpm }: NitrogenNeedInput): number {
  if (rule.startsFrom) return needed("guidelineRate", guidelineLbPerAc);
  if (rule.usualCritical !== undefined) return (criticalPpm ?? rule.usualCritical) * (rule.nitrate?.lbPerUnit ?? 0);
  return rule.constant;
}

function tillageLb(lb: Readonly<Record<TillageKey, number>>, tillage: TillageKey | null): number {
  return lb[needed("tillage", tillage)];
}

function checkRange(
  guide: NitrogenGuide,
  rule: NitrogenRule,
  { crop, yieldGoal, organicMatterPct }: NitrogenNeedInput,
) {
  const { yields, organicRange } = rule;
  if (yields && !(yieldGoal >= yields.min && yieldGoal <= yields.max)) {
    refuse({
      kind: "notPublished",
      where: guide.label,
      what: `rate for ${yieldGoal} ${crops[crop].yieldUnit}/ac of ${crops[crop].label}`,
      instead: `It is printed for ${yields.min} to ${yields.max}.`,
    });
  }
  if (organicRange && organicMatterPct !== null) {
    within("organicMatter", organicMatterPct, { ...organicRange, unit: "% in this guide" });
  }
}

function refuseCrop(guide: NitrogenGuide, crop: CropKey): never {
  const printed = guide.table
    ? ["oat"]
    : [...new Set(guide.rules.flatMap((rule) => rule.crops))].map((key) => crops[key].label);
  refuse({
    kind: "notPublished",
    where: guide.label,
    what: `nitrogen formula for ${crops[crop].label} that is known here`,
    instead: `It has one for ${printed.join(", ")}.${crop === "corn" ? " Regions that rate corn by economic return: see NITROGENOPTIMUM." : ""}`,
  });
}

function refuseTableCredits(): never {
  refuseArgument(
    "credits",
    "this table is printed by previous crop and organic matter and takes no other credits; leave it blank.",
  );
}
