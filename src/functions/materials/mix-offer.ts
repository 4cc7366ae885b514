import { countInWords } from "../../core/count-in-words";
import { refuseArgument, waitFor } from "../../core/fault";
import type { MixMaterial, MixNutrient, MixRequest } from "../../core/materials/mix-request";
import { nutrients, type NutrientKey } from "../../reference/nutrients";
import type { Cited } from "../../reference/table";
import type { AnalysedMaterial, MixAnalyses } from "./mix-analyses";
import type { MaterialLimit } from "./mix-limits";
import { usualOrder, type MixNeeds } from "./mix-needs";

/** The ranges of one call, as read. */
export interface MixRanges {
  readonly needs: MixNeeds;
  readonly analyses: MixAnalyses;
  readonly pricesUsdPerTon: readonly (number | null)[];
  readonly limits: readonly MaterialLimit[] | null;
  readonly overshootLbPerAc: readonly (number | null)[] | null;
  readonly saltLimitLbPerAc: number | null;
  readonly totalLimitLbPerAc: number | null;
}

/** The ranges fitted together. */
export interface MixOffer {
  readonly request: MixRequest;
  /** Every row of the sheet that holds a material, in its order, with its place in the request. */
  readonly rows: readonly OfferedRow[];
  readonly cited: readonly Cited[];
}

/** A row of the sheet: a material of the request, or one that is left out and why. */
export interface OfferedRow {
  readonly name: string;
  readonly place: number | null;
  readonly leftOut: string | null;
}

/** Fits needs, analyses, prices and limits together; says which of them does not fit. */
export function mixOffer(ranges: MixRanges): MixOffer {
  const { analyses, pricesUsdPerTon, limits } = ranges;
  refuseCount("prices", pricesUsdPerTon.length, analyses.materials.length);
  if (limits) refuseCount("limits", limits.length, analyses.materials.length);
  if (pricesUsdPerTon.every((price) => price === null)) waitFor("prices");
  const wanted = wantedNutrients(ranges);
  const columns = columnsOf(analyses, wanted);
  const materials: MixMaterial[] = [];
  const rows: OfferedRow[] = [];
  const cited: Cited[] = [];
  analyses.materials.forEach((material, index) => {
    const price = pricesUsdPerTon[index] ?? null;
    if (material.isBlank && !material.isNamed && price === null) return;
    const leftOut = reasonToLeaveOut(material, price);
    refuseLimitOnLeftOut(material, leftOut, limits?.[index]);
    rows.push({ name: material.name, place: leftOut === null ? materials.length : null, leftOut });
    if (leftOut !== null || price === null) return;
    materials.push(offered(material, price, columns, limits?.[index]));
    if (material.cited) cited.push(material.cited);
  });
  const { saltLimitLbPerAc, totalLimitLbPerAc } = ranges;
  return { request: { nutrients: wanted, materials, saltLimitLbPerAc, totalLimitLbPerAc }, rows, cited };
}

/** The needs with their names, then the other nutrients that the analyses are headed with. */
function wantedNutrients({ needs, analyses, overshootLbPerAc }: MixRanges): MixNutrient[] {
  const names = needs.names ?? namesFor(needs.needsLbPerAc.length, analyses);
  const count = overshootLbPerAc?.length ?? 1;
  if (count !== 1 && count !== names.length) {
    const because = `it has ${countInWords(count, "value")} for ${countInWords(names.length, "need")}: give one for each need, or one for all.`;
    refuseArgument("overshoot", because);
  }
  const asked = names.map((nutrient, index) => ({
    nutrient,
    needLbPerAc: needs.needsLbPerAc[index] ?? 0,
    overshootLbPerAc: overshootLbPerAc?.[count === 1 ? 0 : index] ?? null,
  }));
  const others = (analyses.headings ?? []).filter((name) => !names.includes(name));
  return [...asked, ...others.map((nutrient) => ({ nutrient, needLbPerAc: 0, overshootLbPerAc: null }))];
}

/** Names for needs that have none: the headings when they are as many, or else the usual order. */
function namesFor(count: number, { headings, materials }: MixAnalyses): readonly NutrientKey[] {
  const isPublished = headings === usualOrder;
  if (headings && !isPublished) {
    if (headings.length !== count) refuseColumns(count, headings.length);
    return headings;
  }
  const columns = materials[0]?.analysisPct.length ?? 0;
  if (!isPublished && columns !== count) refuseColumns(count, columns);
  if (count > usualOrder.length) {
    const because = `there are ${count} without names; at most ${usualOrder.length} nutrients are known.`;
    refuseArgument("needs", because);
  }
  return usualOrder.slice(0, count);
}

/** Which column of the analyses holds each wanted nutrient. */
function columnsOf({ headings, materials }: MixAnalyses, wanted: readonly MixNutrient[]): number[] {
  if (headings === null) {
    const columns = materials[0]?.analysisPct.length ?? 0;
    if (columns !== wanted.length) refuseColumns(wanted.length, columns);
    return wanted.map((_, index) => index);
  }
  return wanted.map(({ nutrient }) => {
    const column = headings.indexOf(nutrient);
    if (column >= 0) return column;
    const because = `no column is headed ${nutrients[nutrient].label}, which needs asks for.`;
    return refuseArgument("analyses", because);
  });
}

function offered(
  { name, analysisPct }: AnalysedMaterial,
  priceUsdPerTon: number,
  columns: readonly number[],
  limit: MaterialLimit | undefined,
): MixMaterial {
  return {
    name,
    priceUsdPerTon,
    analysisPct: columns.map((column) => analysisPct[column] ?? 0),
    leastLbPerAc: limit?.leastLbPerAc ?? 0,
    mostLbPerAc: limit?.mostLbPerAc ?? null,
  };
}

function reasonToLeaveOut({ isBlank }: AnalysedMaterial, price: number | null): string | null {
  if (price === null) return "no price: left out";
  return isBlank ? "no analysis: left out" : null;
}

function refuseLimitOnLeftOut({ name }: AnalysedMaterial, leftOut: string | null, limit: MaterialLimit | undefined) {
  const least = limit?.leastLbPerAc ?? 0;
  if (leftOut === null || least === 0) return;
  const because = `${name} has a least of ${least} lb/ac but ${leftOut.split(":")[0]}.`;
  refuseArgument("limits", because);
}

function refuseCount(argument: string, received: number, materials: number): void {
  if (received === materials) return;
  const because = `it has ${countInWords(received, "row")} for ${countInWords(materials, "material")} in analyses: give one for each, blank where there is none.`;
  refuseArgument(argument, because);
}

function refuseColumns(needs: number, columns: number): never {
  const because = `it has ${countInWords(columns, "nutrient column")} for ${countInWords(needs, "need")}: give a column for each need in the same order, or name both.`;
  return refuseArgument("analyses", because);
}
