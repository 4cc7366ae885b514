import { nutrients } from "../../reference/nutrients";
import { refuseArgument, waitFor } from "../fault";
import { within } from "../limit";
import { limits } from "../limits";
import { sum } from "../statistics/sums";
import { materialLimits } from "./material-limits";
import type { MixMaterial, MixNutrient, MixRequest } from "./mix-request";

/** Refuses a request that is out of range or does not hang together, before it is solved. */
export function checkMix({ nutrients: wanted, materials, saltLimitLbPerAc, totalLimitLbPerAc }: MixRequest): void {
  if (materials.length === 0) waitFor("analyses");
  wanted.forEach((nutrient, index) => checkNutrient(nutrient, wanted.slice(0, index)));
  for (const material of materials) checkMaterial(material, wanted.length);
  if (totalLimitLbPerAc !== null) within("totalLimit", totalLimitLbPerAc, limits.ratePounds);
  if (saltLimitLbPerAc === null) return;
  within("saltLimit", saltLimitLbPerAc, materialLimits.saltWithSeed);
  const known = new Set(wanted.map(({ nutrient }) => nutrient));
  if (known.has("N") && known.has("K2O")) return;
  refuseArgument("saltLimit", "it counts N + K2O, so analyses needs a column for each of the two.");
}

function checkNutrient({ nutrient, needLbPerAc, overshootLbPerAc }: MixNutrient, before: readonly MixNutrient[]): void {
  within("needs", needLbPerAc, limits.ratePounds);
  if (overshootLbPerAc !== null) within("overshoot", overshootLbPerAc, limits.ratePounds);
  if (before.some((other) => other.nutrient === nutrient)) {
    refuseArgument("needs", `${nutrients[nutrient].label} stands there twice.`);
  }
}

function checkMaterial({ name, priceUsdPerTon, analysisPct, leastLbPerAc, mostLbPerAc }: MixMaterial, count: number) {
  within("prices", priceUsdPerTon, materialLimits.pricePerTon);
  if (analysisPct.length !== count) {
    const because = `${name} has ${analysisPct.length} numbers for ${count} nutrients.`;
    refuseArgument("analyses", because);
  }
  for (const pct of analysisPct) within("analyses", pct, materialLimits.analysisInTable);
  const sumPct = sum(analysisPct);
  if (sumPct > 100) {
    const because = `${name} adds up to ${Number(sumPct.toFixed(2))} %; a material cannot hold more than 100 %.`;
    refuseArgument("analyses", because);
  }
  within("limits", leastLbPerAc, limits.ratePounds);
  if (mostLbPerAc === null) return;
  within("limits", mostLbPerAc, limits.ratePounds);
  if (leastLbPerAc > mostLbPerAc) {
    const because = `${name} has a least of ${leastLbPerAc} lb/ac above its most of ${mostLbPerAc} lb/ac.`;
    refuseArgument("limits", because);
  }
}
