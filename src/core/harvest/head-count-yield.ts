import { within } from "../limit";
import { bushelWeight } from "../units/bushel-weight";
import { squareFootPerAcre } from "../units/units";
import { headCounts } from "../../reference/harvest/yield-counts";
import type { Cited } from "../../reference/table";
import { harvestLimits } from "./harvest-limits";
import { printedValue, type CitedValue } from "./printed-value";

export interface HeadYield {
  readonly yieldBuPerAc: number;
  readonly headsPerSqFt: number;
  readonly kernelsPerHead: number;
  readonly factor: number;
  readonly cited: readonly Cited[];
}

export interface RowHeads {
  readonly heads: number;
  readonly rowWidthIn: number;
  readonly spikelets: number;
  /** null: the usual number. */
  readonly kernelsPerSpikelet: number | null;
  readonly feetCounted: number;
}

/**
 * Wheat yield from the heads in a length of row.
 *
 *   heads in 3 ft × spikelets × kernels per spikelet × 0.142 / row width      row width in inches
 *
 * @source ndsu-crop-pest-report-2000
 */
export function headCountYield(count: RowHeads): HeadYield {
  within("heads", count.heads, harvestLimits.heads);
  within("rowWidth", count.rowWidthIn, harvestLimits.rowWidth);
  within("spikelets", count.spikelets, harvestLimits.spikelets);
  within("feetCounted", count.feetCounted, harvestLimits.feetCounted);
  const kernels = countOf("kernelsPerSpikelet", count.kernelsPerSpikelet);
  const factor = printedValue(headCounts, "threeFootFactor");

  const headsInThreeFeet = (count.heads * 3) / count.feetCounted;
  const kernelsPerHead = count.spikelets * kernels.value;
  return {
    yieldBuPerAc: (headsInThreeFeet * kernelsPerHead * factor.value) / count.rowWidthIn,
    headsPerSqFt: (headsInThreeFeet * 4) / count.rowWidthIn, // 3 ft of row at 12 in is 3 sq ft
    kernelsPerHead,
    factor: factor.value,
    cited: [...factor.cited, ...kernels.cited],
  };
}

export interface WeighedHeads {
  readonly headsPerSqFt: number;
  readonly kernelsPerHead: number;
  /** Grams of a thousand kernels. */
  readonly kernelWeightG: number;
}

/**
 * Wheat yield from heads, kernels and kernel weight.
 *
 *   heads per sq ft × kernels per head × grams per thousand kernels × 0.0016
 *
 * @source ontario-wheat-estimate-2017
 */
export function headWeightYield({ headsPerSqFt, kernelsPerHead, kernelWeightG }: WeighedHeads): HeadYield {
  within("headsPerSqFt", headsPerSqFt, harvestLimits.headsPerSqFt);
  within("kernelsPerHead", kernelsPerHead, harvestLimits.kernelsPerHead);
  within("kernelWeight", kernelWeightG, harvestLimits.kernelWeight);
  const factor = printedValue(headCounts, "kernelWeightFactor");

  return {
    yieldBuPerAc: headsPerSqFt * kernelsPerHead * kernelWeightG * factor.value,
    headsPerSqFt,
    kernelsPerHead,
    factor: factor.value,
    cited: factor.cited,
  };
}

export interface AutumnStand {
  readonly plantsPerSqFt: number;
  /** null: the usual numbers. */
  readonly headsPerPlant: number | null;
  readonly kernelsPerHead: number | null;
  readonly kernelsPerLb: number | null;
}

export interface AutumnYield extends HeadYield {
  readonly kernelsPerLb: number;
}

/**
 * What an autumn wheat stand may yield.
 *
 *   plants per sq ft × heads per plant × kernels per head × 43,560 / kernels per pound / 60
 *
 * @source unl-cropwatch-wheat-2012
 */
export function autumnWheatYield(stand: AutumnStand): AutumnYield {
  within("plantsPerSqFt", stand.plantsPerSqFt, harvestLimits.plantsPerSqFt);
  const heads = countOf("headsPerPlant", stand.headsPerPlant);
  const kernels = countOf("kernelsPerHead", stand.kernelsPerHead);
  const perLb = countOf("kernelsPerPound", stand.kernelsPerLb);
  const bushel = bushelWeight("wheat");

  const headsPerSqFt = stand.plantsPerSqFt * heads.value;
  const factor = squareFootPerAcre / perLb.value / bushel.bushelWeightLb;
  return {
    yieldBuPerAc: headsPerSqFt * kernels.value * factor,
    headsPerSqFt,
    kernelsPerHead: kernels.value,
    kernelsPerLb: perLb.value,
    factor,
    cited: [...heads.cited, ...kernels.cited, ...perLb.cited, bushel],
  };
}

const usualFor = {
  kernelsPerSpikelet: { key: "kernelsPerSpikelet", limit: harvestLimits.kernelsPerSpikelet },
  headsPerPlant: { key: "autumnHeads", limit: harvestLimits.headsPerPlant },
  kernelsPerHead: { key: "autumnKernels", limit: harvestLimits.kernelsPerHead },
  kernelsPerPound: { key: "autumnKernelsPerPound", limit: harvestLimits.kernelsPerPoundWheat },
} as const;

function countOf(argument: keyof typeof usualFor, given: number | null): CitedValue {
  if (given === null) return printedValue(headCounts, usualFor[argument].key);
  within(argument, given, usualFor[argument].limit);
  return { value: given, cited: [] };
}
