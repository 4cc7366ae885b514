import { guideRemoval } from "../../core/soil/need/guide-removal";
import { namesClasses } from "../../core/soil/need/names-classes";
import { crops, type CropKey } from "../../reference/crops";
import { guides, type Guide, type NeedNutrient, type NeedRule, type RateForm } from "../../reference/guides";
import type { SourceKey } from "../../reference/sources";
import type { Cited } from "../../reference/table";
import { guideWords } from "../words";

const allGuides: readonly Guide[] = Object.values(guides);
const cropKeys = Object.keys(crops).flatMap((key) => (isCrop(key) ? [key] : []));

/** Every publication behind a guide, once. */
export const guideSources: readonly SourceKey[] = [...new Set(allGuides.flatMap(({ sources }) => sources))];

/** Rows that rates of a guide rest on; null asks every guide. */
export function needRows(nutrient: NeedNutrient, label: string | null): readonly Cited[] {
  return guidesOf(label).flatMap((guide) =>
    guide[nutrient].rules.filter(hasRate).flatMap((rule) => [rule, ...removalRows(guide, nutrient, rule)]),
  );
}

/** Rows that classes of a guide rest on; null asks every guide. */
export function ratingRows(label: string | null): readonly Cited[] {
  return guidesOf(label).flatMap((guide) =>
    (["P2O5", "K2O"] as const).flatMap((nutrient) =>
      guide[nutrient].testUnit === "class" ? [] : guide[nutrient].rules.filter(namesClasses),
    ),
  );
}

function guidesOf(label: string | null): readonly Guide[] {
  if (label === null) return allGuides;
  const key = guideWords.find(label);
  return key === undefined ? [] : [guides[key]];
}

function hasRate({ form }: NeedRule): boolean {
  if (form.kind === "classes") return form.classes.some(([, , rate]) => rate !== null);
  return form.kind !== "threshold" || form.below !== null || form.above !== null;
}

function removalRows(guide: Guide, nutrient: NeedNutrient, rule: NeedRule): Cited[] {
  if (!usesRemoval(rule.form)) return [];
  const printed = rule.crops === "all" ? cropKeys : rule.crops;
  return printed.flatMap((crop) => guideRemoval(guide, nutrient, crop)?.cited ?? []);
}

function usesRemoval(form: RateForm): boolean {
  if (form.kind === "classes") return form.classes.some(([, , rate]) => typeof rate === "object" && rate !== null);
  return form.kind === "buildMaintain" || form.kind === "points";
}

function isCrop(key: string): key is CropKey {
  return key in crops;
}
