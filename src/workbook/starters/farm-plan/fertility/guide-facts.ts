import { guides, extractants, type Guide, type NeedNutrient, type NeedRule } from "../../../../reference/guides";
import { nitrogenGuides, type NitrogenGuide } from "../../../../reference/nitrogen";
import { microGuides, microRules, sulfurGuides, sulfurRules } from "../../../../reference/soil";
import { formula, joined, type Expression, type Term } from "../../../formula/expression";

/**
 * What the sheets have to know about guides before asking them: which tests they read, and what they wait for.
 * Drawn from the published tables, so that a rule added there is known here.
 */
export const allGuides: readonly Guide[] = Object.values(guides);

/** "Mehlich-3; Mehlich-3 ICP": the extractions a guide takes, apart by semicolons for a search. */
export function extractionsOf(guide: Guide, nutrient: NeedNutrient): string {
  return guide[nutrient].extractants.map((key) => extractants[key].label).join("; ");
}

/** Whether a guide reads a number in ppm or lb/ac, which ppm can be turned into. */
export function readsPpm(guide: Guide, nutrient: NeedNutrient): boolean {
  const { testUnit } = guide[nutrient];
  return testUnit === "ppm" || testUnit === "lb/ac";
}

export const splitsByGroup = (guide: Guide, nutrient: NeedNutrient) =>
  rulesOf(guide, nutrient).some(({ group }) => group !== undefined);

export const turnsOnCec = (guide: Guide, nutrient: NeedNutrient) =>
  rulesOf(guide, nutrient).some(({ cecUpTo, cecBelow }) => cecUpTo !== undefined || cecBelow !== undefined);

/** The guide's own reckoning spreads a build-up over years that the grower chooses. */
export const asksForYears = (guide: Guide, nutrient: NeedNutrient) => rulesOf(guide, nutrient).some(hasYears);

/** Some reckoning of the guide does. */
export const leavesYears = (guide: Guide, nutrient: NeedNutrient) => guide[nutrient].rules.some(hasYears);

function hasYears({ form }: NeedRule): boolean {
  return form.kind === "buildMaintain" && typeof form.build.years !== "number";
}

/** Rules of the guide's own way of reckoning. */
function rulesOf(guide: Guide, nutrient: NeedNutrient): readonly NeedRule[] {
  return guide[nutrient].rules.filter(({ approaches }) => (approaches ?? [guide.approach]).includes(guide.approach));
}

/** Labels of guides for which something holds of phosphate or potash. */
export function guidesWhere(holds: (guide: Guide, nutrient: NeedNutrient) => boolean): string[] {
  return allGuides.filter((guide) => holds(guide, "P2O5") || holds(guide, "K2O")).map(({ label }) => label);
}

const nitrogenMethods: readonly NitrogenGuide[] = Object.values(nitrogenGuides);
const nitrogenNamed = (holds: (guide: NitrogenGuide) => boolean) =>
  allGuides
    .map(({ label }) => label)
    .filter((label) =>
      nitrogenMethods.some((method) => [method.label, ...method.also].includes(label) && holds(method)),
    );

/** Guides whose nitrogen rules read a sample of 0 to 24 in, in lb/ac. */
export const nitrateGuides = nitrogenNamed(({ rules }) =>
  rules.some(({ nitrate }) => nitrate?.sample.includes("0 to 24 in")),
);

/** Guides that set corn nitrogen by a test taken in the growing crop: nothing to plan by in winter. */
export const lateTestGuides = nitrogenNamed(({ rules }) =>
  rules.some(({ usualCritical }) => usualCritical !== undefined),
);

/** Guides whose sulfur rules read a sample of 0 to 24 in, in lb/ac. */
export const sulfateGuides = [
  ...new Set(sulfurRules.filter(({ form }) => form.kind === "line").map(({ guide }) => sulfurGuides[guide].label)),
];

/** Regions with any sulfur rule. */
export const sulfurLabels: readonly string[] = Object.values(sulfurGuides).map(({ label }) => label);

/** The zinc test a guide reads, by the guide's label. */
export const zincTests: readonly (readonly [guide: string, test: string])[] = microRules
  .filter(({ nutrient }) => nutrient === "Zn")
  .map(({ guide, test }) => [microGuides[guide].label, test] as const)
  .filter(([label]) => allGuides.some((guide) => guide.label === label));

/** Extractions a laboratory may have used for zinc. */
export const zincExtractions: readonly string[] = [
  ...new Set([...zincTests.map(([, test]) => test), "Mehlich-3", "0.1 N hydrochloric acid"]),
];

/** True where the guide is one of these. */
export function isOneOf(guide: Term, labels: readonly string[]): Expression {
  if (labels.length === 0) return formula`FALSE`;
  return formula`OR(${joined(
    labels.map((label) => formula`${guide}=${label}`),
    ",",
  )})`;
}
