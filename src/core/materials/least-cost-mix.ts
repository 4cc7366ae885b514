import type { NutrientKey } from "../../reference/nutrients";
import { dot, sum } from "../statistics/sums";
import { checkMix } from "./check-mix";
import { solveLinearProgram } from "./linear-program";
import { refuseMix } from "./mix-conflict";
import { MixHolds, type Hold, type NextPound } from "./mix-holds";
import { mixProgram, saltShares, supplyOf, type MixNutrient, type MixRequest } from "./mix-request";

/** One material of the mix. */
export interface MixMaterialLine {
  readonly name: string;
  readonly rateLbPerAc: number;
  readonly costUsdPerAc: number;
  readonly atLeast: Hold | null;
  readonly atMost: Hold | null;
}

/** What the mix does for one nutrient. */
export interface MixNutrientLine {
  readonly nutrient: NutrientKey;
  readonly needLbPerAc: number;
  readonly suppliedLbPerAc: number;
  readonly overLbPerAc: number;
  readonly nextPoundUsd: NextPound;
  readonly atCap: Hold | null;
}

export interface LeastCostMix {
  readonly materials: readonly MixMaterialLine[];
  readonly nutrients: readonly MixNutrientLine[];
  readonly totalLbPerAc: number;
  readonly costUsdPerAc: number;
  readonly atTotalLimit: Hold | null;
  /** N + K2O in the mix and the limit on it; null when no limit was set. */
  readonly salt: { readonly saltLbPerAc: number; readonly limitLbPerAc: number; readonly atLimit: Hold | null } | null;
}

/**
 * The cheapest mix of materials that meets every need, as a linear program.
 *
 *   least  Σ price × rate
 *   with   need ≤ Σ analysis × rate ≤ need + overshoot      for each nutrient
 *          least ≤ rate ≤ most                              for each material
 *          Σ (N + K2O) × rate ≤ salt limit,  Σ rate ≤ total limit
 *
 * Where no mix does that, it says which nutrient, or which nutrients together, stand in the way.
 */
export function leastCostMix(request: MixRequest): LeastCostMix {
  checkMix(request);
  const program = mixProgram(request);
  const answer = solveLinearProgram(program);
  if (answer.kind !== "optimal") return refuseMix(request);
  const rates = answer.amounts;
  const costUsdPerAc = dot(program.costs, rates);
  const totalLbPerAc = sum(rates);
  const holds = new MixHolds(request, costUsdPerAc);
  return {
    materials: request.materials.map(({ name }, index) => materialLine(name, index, rates, program.costs, holds)),
    nutrients: request.nutrients.map((nutrient, index) =>
      nutrientLine(nutrient, index, dot(supplyOf(request.materials, index), rates), holds),
    ),
    totalLbPerAc,
    costUsdPerAc,
    atTotalLimit: holds.total(totalLbPerAc),
    salt: saltLine(request, rates, holds),
  };
}

function materialLine(
  name: string,
  index: number,
  rates: readonly number[],
  costs: readonly number[],
  holds: MixHolds,
): MixMaterialLine {
  const rateLbPerAc = rates[index] ?? 0;
  return {
    name,
    rateLbPerAc,
    costUsdPerAc: rateLbPerAc * (costs[index] ?? 0),
    atLeast: holds.least(index, rateLbPerAc),
    atMost: holds.most(index, rateLbPerAc),
  };
}

function nutrientLine(
  { nutrient, needLbPerAc }: MixNutrient,
  index: number,
  suppliedLbPerAc: number,
  holds: MixHolds,
): MixNutrientLine {
  return {
    nutrient,
    needLbPerAc,
    suppliedLbPerAc,
    overLbPerAc: Math.max(0, suppliedLbPerAc - needLbPerAc),
    nextPoundUsd: holds.nextPound(index),
    atCap: holds.overshoot(index, suppliedLbPerAc),
  };
}

function saltLine(
  { nutrients, materials, saltLimitLbPerAc }: MixRequest,
  rates: readonly number[],
  holds: MixHolds,
): LeastCostMix["salt"] {
  if (saltLimitLbPerAc === null) return null;
  const saltLbPerAc = dot(saltShares(nutrients, materials), rates);
  return { saltLbPerAc, limitLbPerAc: saltLimitLbPerAc, atLimit: holds.salt(saltLbPerAc) };
}
