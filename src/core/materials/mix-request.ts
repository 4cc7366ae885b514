import type { NutrientKey } from "../../reference/nutrients";
import { poundPerTon, pctToFraction } from "../units/units";
import { dot, sum } from "../statistics/sums";
import { solveLinearProgram, type LinearProgram, type LinearRow } from "./linear-program";

/** A nutrient the mix is counted in. */
export interface MixNutrient {
  readonly nutrient: NutrientKey;
  readonly needLbPerAc: number;
  /** Most that may be put on beyond the need; null: any amount. */
  readonly overshootLbPerAc: number | null;
}

/** A material on offer. */
export interface MixMaterial {
  readonly name: string;
  readonly priceUsdPerTon: number;
  /** In the order of the request's nutrients. */
  readonly analysisPct: readonly number[];
  readonly leastLbPerAc: number;
  /** null: any amount. */
  readonly mostLbPerAc: number | null;
}

/** What a mix has to do, and out of what. */
export interface MixRequest {
  readonly nutrients: readonly MixNutrient[];
  readonly materials: readonly MixMaterial[];
  /** Most N + K2O with or near the seed; null: not placed there. */
  readonly saltLimitLbPerAc: number | null;
  /** Most pounds of all materials together; null: any amount. */
  readonly totalLimitLbPerAc: number | null;
}

/** The request as a linear program in pounds of material per acre. */
export function mixProgram({ nutrients, materials, saltLimitLbPerAc, totalLimitLbPerAc }: MixRequest): LinearProgram {
  return {
    costs: materials.map(({ priceUsdPerTon }) => priceUsdPerTon / poundPerTon),
    rows: [
      ...nutrients.map((nutrient, index) => nutrientRow(nutrient, supplyOf(materials, index))),
      ...materials.flatMap((material, index) => materialRow(material, materials.length, index)),
      ...atMost(saltShares(nutrients, materials), saltLimitLbPerAc),
      ...atMost(
        materials.map(() => 1),
        totalLimitLbPerAc,
      ),
    ],
  };
}

/** Pounds of one nutrient in a pound of each material. */
export function supplyOf(materials: readonly MixMaterial[], nutrient: number): number[] {
  return materials.map(({ analysisPct }) => pctToFraction(analysisPct[nutrient] ?? 0));
}

/** Pounds of N + K2O in a pound of each material. */
export function saltShares(nutrients: readonly MixNutrient[], materials: readonly MixMaterial[]): number[] {
  const salts = nutrients.flatMap(({ nutrient }, index) => (nutrient === "N" || nutrient === "K2O" ? [index] : []));
  return materials.map(({ analysisPct }) => sum(salts.map((index) => pctToFraction(analysisPct[index] ?? 0))));
}

/** Cost of the cheapest mix, $/ac; null when there is none. */
export function leastCost(request: MixRequest): number | null {
  const program = mixProgram(request);
  const answer = solveLinearProgram(program);
  return answer.kind === "optimal" ? dot(program.costs, answer.amounts) : null;
}

function nutrientRow({ needLbPerAc, overshootLbPerAc }: MixNutrient, coefficients: readonly number[]): LinearRow {
  const max = overshootLbPerAc === null ? Infinity : needLbPerAc + overshootLbPerAc;
  return { coefficients, min: needLbPerAc, max };
}

function materialRow({ leastLbPerAc, mostLbPerAc }: MixMaterial, count: number, index: number): LinearRow[] {
  if (leastLbPerAc === 0 && mostLbPerAc === null) return [];
  const coefficients = Array.from({ length: count }, (_, column) => (column === index ? 1 : 0));
  return [{ coefficients, min: leastLbPerAc, max: mostLbPerAc ?? Infinity }];
}

function atMost(coefficients: readonly number[], limit: number | null): LinearRow[] {
  return limit === null ? [] : [{ coefficients, min: 0, max: limit }];
}
