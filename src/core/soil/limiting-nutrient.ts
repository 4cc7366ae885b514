import { crops, type CropKey } from "../../reference/crops";
import {
  guideInWords,
  type ExtractantKey,
  type GroupKey,
  type Guide,
  type NeedNutrient,
  type TestedElementKey,
} from "../../reference/guides";
import { nutrients, type NutrientKey } from "../../reference/nutrients";
import type { Cited } from "../../reference/table";
import { namesClasses } from "./need/names-classes";
import { testRating } from "./need/test-rating";
import { testConvert } from "./test-convert";

export interface NutrientTest {
  readonly nutrient: NutrientKey;
  /** In the guide's unit. */
  readonly soilTest: number;
  /** null: the guide's own, where its numbers do not turn on it. */
  readonly extractant: ExtractantKey | null;
}

export interface LimitingQuestion {
  readonly guide: Guide;
  readonly crop: CropKey;
  readonly tests: readonly NutrientTest[];
  readonly cecMeq: number | null;
  readonly group: GroupKey | null;
}

export interface RankedNutrient {
  readonly nutrient: NutrientKey;
  readonly soilTest: number;
  readonly criticalLevel: number | null;
  /** Test as % of the critical level, or the guide's index; null where the guide publishes neither. */
  readonly measure: number | null;
  /** The guide's word; what is missing where there is no measure. */
  readonly says: string;
  readonly cited: readonly Cited[];
}

export interface LimitingNutrients {
  readonly by: "criticalLevel" | "index";
  /** Scarcest first; those without a measure last. */
  readonly ranked: readonly RankedNutrient[];
}

/** The index elements of the guide that prints one. */
const indexed: Partial<Record<NutrientKey, TestedElementKey>> = { P2O5: "P", K2O: "K", Ca: "Ca", Mg: "Mg" };

/**
 * Nutrients ranked by how far their test falls short, scarcest first: the law of the minimum.
 *
 * No guide we hold publishes a curve of yield by soil test, so tests are set against the guide's critical level, or
 * its fertility index where it prints that. Neither is a share of yield.
 */
export function limitingNutrients(question: LimitingQuestion): LimitingNutrients {
  const { guide, tests } = question;
  const rank = guide.fertilityIndex ? byIndex : byCriticalLevel;
  const ranked = tests.map((test) => rank(question, test));
  ranked.sort((a, b) => (a.measure ?? Infinity) - (b.measure ?? Infinity) || 0);
  return { by: guide.fertilityIndex ? "index" : "criticalLevel", ranked };
}

function byIndex({ guide }: LimitingQuestion, { nutrient, soilTest }: NutrientTest): RankedNutrient {
  const element = indexed[nutrient];
  if (element === undefined) return unranked(guide, nutrient, soilTest, "fertility index");
  const input = { from: "mehlich3", to: "index", element, depthIn: null, formula: null } as const;
  const { value, row } = testConvert({ ...input, value: soilTest });
  // Classes are printed for whole tests; their limits are 25, 50 and 100 of the index.
  const whole = testConvert({ ...input, value: Math.round(soilTest) }).value;
  return { nutrient, soilTest, criticalLevel: null, measure: value, says: indexClass(whole), cited: [row] };
}

function indexClass(index: number): string {
  // 55 / 2.2 is 24.999… in binary: the dust must not move a limit.
  const tidy = Number(index.toPrecision(12));
  return tidy <= 25 ? "low" : tidy <= 50 ? "medium" : tidy <= 100 ? "optimum" : "excessive";
}

function byCriticalLevel(question: LimitingQuestion, test: NutrientTest): RankedNutrient {
  const { guide, crop, cecMeq, group } = question;
  const { nutrient, soilTest, extractant } = test;
  if (nutrient !== "P2O5" && nutrient !== "K2O") return unranked(guide, nutrient, soilTest, "critical level");
  if (!printsClasses(guide, nutrient, crop)) {
    return unranked(guide, nutrient, soilTest, `critical level for ${crops[crop].label}`);
  }
  const rating = testRating({ guide, nutrient, crop, soilTest, extractant, cecMeq, group });
  const { criticalLevel, zone, cited } = rating;
  if (criticalLevel === null || criticalLevel === 0) {
    return { ...unranked(guide, nutrient, soilTest, `critical level; its class is ${zone}`), cited };
  }
  return { nutrient, soilTest, criticalLevel, measure: (100 * soilTest) / criticalLevel, says: zone, cited };
}

function printsClasses(guide: Guide, nutrient: NeedNutrient, crop: CropKey): boolean {
  const { testUnit, rules } = guide[nutrient];
  if (testUnit === "class" || testUnit === "index") return false;
  return rules.some((rule) => namesClasses(rule) && (rule.crops === "all" || rule.crops.includes(crop)));
}

function unranked(guide: Guide, nutrient: NutrientKey, soilTest: number, missing: string): RankedNutrient {
  const says = `${guideInWords(guide)} publishes no ${nutrients[nutrient].label} ${missing}`;
  return { nutrient, soilTest, criticalLevel: null, measure: null, says, cited: [] };
}
