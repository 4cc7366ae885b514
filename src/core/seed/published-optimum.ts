import { within } from "../limit";
import type { PopulationCurve, PopulationCurveKey } from "../../reference/seed/population-curves";
import { curveYieldPct, populationCurve } from "./population-curve";
import { seedLimits } from "./seed-limits";
import { seedOptimum, type SeedOptimum, type SeedOptimumInput } from "./seed-optimum";

/** A published curve, or the rise of the person's own exponential one, per thousand plants. */
export type CurveChoice = { readonly key: PopulationCurveKey } | { readonly rise: number };

export interface PublishedOptimumInput extends Omit<SeedOptimumInput, "curve"> {
  readonly choice: CurveChoice;
  readonly fullYieldBu: number;
}

export interface PublishedOptimum extends SeedOptimum {
  readonly yieldBuPerAc: number;
  readonly overSeedUsdPerAc: number;
  readonly published: PopulationCurve | null;
}

/**
 * The most profitable stand on a curve in shares of the full yield. A published curve is kept to the stands it was
 * drawn over, and to narrower ones when asked.
 */
export function publishedOptimum({ choice, fullYieldBu, ...rest }: PublishedOptimumInput): PublishedOptimum {
  within("fullYield", fullYieldBu, seedLimits.fullYield);
  const published = "key" in choice ? populationCurve(choice.key) : null;
  const optimum = seedOptimum({ ...rest, ...boundsOf(published, rest), curve: scaled(choice, published, fullYieldBu) });
  const yieldBuPerAc = (fullYieldBu * sharePct(choice, published, optimum.plantsPerAc / 1000)) / 100;
  return {
    ...optimum,
    yieldBuPerAc,
    overSeedUsdPerAc: yieldBuPerAc * rest.grainPriceUsd - optimum.seedUsdPerAc,
    published,
  };
}

function scaled(
  choice: CurveChoice,
  published: PopulationCurve | null,
  fullYieldBu: number,
): SeedOptimumInput["curve"] {
  if (published?.form === "quadratic") {
    const share = fullYieldBu / 100;
    return { form: "quadratic", linear: published.linear * share, quadratic: published.quadratic * share };
  }
  return { form: "exponential", fullYieldBu, rise: riseOf(choice, published) };
}

function riseOf(choice: CurveChoice, published: PopulationCurve | null): number {
  if ("rise" in choice) return choice.rise;
  return published?.form === "exponential" ? published.rise : Number.NaN;
}

function sharePct(choice: CurveChoice, published: PopulationCurve | null, thousandPlants: number): number {
  if (published) return curveYieldPct(published, thousandPlants);
  return 100 * (1 - Math.exp(-riseOf(choice, published) * thousandPlants));
}

function boundsOf(published: PopulationCurve | null, { fewestPerAc, mostPerAc }: Omit<SeedOptimumInput, "curve">) {
  if (published === null) return { fewestPerAc, mostPerAc };
  return {
    fewestPerAc: Math.max(published.fewest * 1000, fewestPerAc ?? 0),
    mostPerAc: Math.min(published.most * 1000, mostPerAc ?? Infinity),
  };
}
