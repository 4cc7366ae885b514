import { refuse, refuseArgument } from "../fault";
import { within } from "../limit";
import { pctToFraction } from "../units/units";
import { seedLimits } from "./seed-limits";

/** Yield in bu/ac by thousands of established plants. */
export type StandCurve =
  | { readonly form: "quadratic"; readonly linear: number; readonly quadratic: number }
  | { readonly form: "exponential"; readonly fullYieldBu: number; readonly rise: number };

export interface SeedOptimumInput {
  readonly curve: StandCurve;
  readonly seedUsdPerThousand: number;
  readonly grainPriceUsd: number;
  /** Plants from a hundred seeds. */
  readonly survivalPct: number;
  /** Stands the curve holds for; null: not bounded on that side. */
  readonly fewestPerAc: number | null;
  readonly mostPerAc: number | null;
}

export interface SeedOptimum {
  readonly plantsPerAc: number;
  readonly seedsPerAc: number;
  readonly seedUsdPerAc: number;
  /** Bushels that a thousand more plants must bring to pay for their seed. */
  readonly neededBuPerThousand: number;
  /** Stand of the highest yield; null: the curve keeps rising. */
  readonly highestYieldPlantsPerAc: number | null;
  /** The best stand lies beyond what the curve holds for. */
  readonly heldAt: "fewest" | "most" | null;
}

/**
 * The stand that earns most over the cost of its seed: where a thousand more plants bring what their seed costs.
 *
 *   r = seed price / (survival × grain price)      bushels that a thousand plants must bring
 *   quadratic:     P = (r − linear) / (2 × quadratic)
 *   exponential:   P = ln(full yield × rise / r) / rise
 *
 * Kept within the stands the curve was drawn over.
 */
export function seedOptimum(input: SeedOptimumInput): SeedOptimum {
  check(input);
  const { curve, seedUsdPerThousand, grainPriceUsd, survivalPct } = input;
  const survival = pctToFraction(survivalPct);
  const needed = seedUsdPerThousand / (survival * grainPriceUsd);

  const { plantsPerAc, heldAt } = held(bestThousand(curve, needed) * 1000, input);
  const seedsPerAc = plantsPerAc / survival;
  return {
    plantsPerAc,
    seedsPerAc,
    seedUsdPerAc: (seedsPerAc / 1000) * seedUsdPerThousand,
    neededBuPerThousand: needed,
    highestYieldPlantsPerAc: curve.form === "quadratic" ? bestThousand(curve, 0) * 1000 : null,
    heldAt,
  };
}

function bestThousand(curve: StandCurve, needed: number): number {
  if (curve.form === "quadratic") return (needed - curve.linear) / (2 * curve.quadratic);
  return Math.log((curve.fullYieldBu * curve.rise) / needed) / curve.rise;
}

function held(
  bestPerAc: number,
  { fewestPerAc, mostPerAc }: SeedOptimumInput,
): Pick<SeedOptimum, "plantsPerAc" | "heldAt"> {
  if (mostPerAc !== null && bestPerAc > mostPerAc) return { plantsPerAc: mostPerAc, heldAt: "most" };
  if (fewestPerAc !== null && bestPerAc < fewestPerAc) return { plantsPerAc: fewestPerAc, heldAt: "fewest" };
  if (!(bestPerAc > 0 && bestPerAc < Infinity)) {
    refuse({ kind: "noSolution", because: "On this curve no stand pays best: set fewestPlants and mostPlants." });
  }
  return { plantsPerAc: bestPerAc, heldAt: null };
}

function check({ curve, seedUsdPerThousand, grainPriceUsd, survivalPct, fewestPerAc, mostPerAc }: SeedOptimumInput) {
  if (curve.form === "quadratic") {
    within("linear", curve.linear, seedLimits.linear);
    within("quadratic", curve.quadratic, seedLimits.quadratic);
  } else {
    within("fullYield", curve.fullYieldBu, seedLimits.fullYield);
    within("curve", curve.rise, seedLimits.riseRate);
  }
  within("seedPricePerThousand", seedUsdPerThousand, seedLimits.seedPricePerThousand);
  within("grainPrice", grainPriceUsd, seedLimits.grainPrice);
  within("survival", survivalPct, seedLimits.survival);
  if (fewestPerAc !== null) within("fewestPlants", fewestPerAc, seedLimits.stand);
  if (mostPerAc !== null) within("mostPlants", mostPerAc, seedLimits.stand);
  if (fewestPerAc !== null && mostPerAc !== null && fewestPerAc > mostPerAc) {
    refuseArgument("mostPlants", "must not be below fewestPlants.");
  }
}
