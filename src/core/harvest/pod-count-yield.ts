import { within } from "../limit";
import { bushelWeight } from "../units/bushel-weight";
import { soybeanSeedsPerPound, type SoybeanSizeKey } from "../../reference/harvest/yield-counts";
import type { Cited } from "../../reference/table";
import { harvestLimits } from "./harvest-limits";
import { printedValue, type CitedValue } from "./printed-value";

/** Soybean seeds in a pound: counted by the person, or a word for the size. */
export type SeedSize = { readonly seedsPerLb: number } | { readonly size: SoybeanSizeKey };

export interface PodCount {
  readonly podsPerAc: number;
  readonly seedsPerPod: number;
  readonly seedSize: SeedSize;
}

export interface PodCountYield {
  readonly yieldBuPerAc: number;
  readonly podsPerAc: number;
  readonly seedsPerAc: number;
  readonly seedsPerLb: number;
  readonly bushelLb: number;
  readonly cited: readonly Cited[];
}

/**
 * Soybean yield from pods counted at R5 to R6.
 *
 *   pods per acre × seeds per pod / seeds per pound / 60
 *
 * @source ndsu-procrop-soybean, purdue-soybean-estimate
 */
export function podCountYield({ podsPerAc, seedsPerPod, seedSize }: PodCount): PodCountYield {
  within("seedsPerPod", seedsPerPod, harvestLimits.seedsPerPod);
  const { value: seedsPerLb, cited } = seedsIn(seedSize);
  const bushel = bushelWeight("soybean");

  const seedsPerAc = podsPerAc * seedsPerPod;
  return {
    yieldBuPerAc: seedsPerAc / seedsPerLb / bushel.bushelWeightLb,
    podsPerAc,
    seedsPerAc,
    seedsPerLb,
    bushelLb: bushel.bushelWeightLb,
    cited: [...cited, bushel],
  };
}

function seedsIn(size: SeedSize): CitedValue {
  if ("size" in size) return printedValue(soybeanSeedsPerPound, size.size);
  within("seedsPerPound", size.seedsPerLb, harvestLimits.seedsPerPoundSoybean);
  return { value: size.seedsPerLb, cited: [] };
}

/** Pods per acre from a stand and the pods on a plant. */
export function podsFromStand(plantsPerAc: number, podsPerPlant: number): number {
  within("plants", plantsPerAc, harvestLimits.plants);
  within("podsPerPlant", podsPerPlant, harvestLimits.podsPerPlant);
  return plantsPerAc * podsPerPlant;
}

/** Pods per acre from the pods on a measured part of an acre. */
export function podsFromSample(pods: number, fractionOfAcre: number): number {
  within("pods", pods, harvestLimits.pods);
  within("fractionOfAcre", fractionOfAcre, harvestLimits.fractionOfAcre);
  return pods / fractionOfAcre;
}
