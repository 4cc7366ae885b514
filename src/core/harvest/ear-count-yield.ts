import { within } from "../limit";
import { kernelsPerBushel, type KernelFillKey } from "../../reference/harvest/yield-counts";
import type { Cited } from "../../reference/table";
import { harvestLimits } from "./harvest-limits";
import { printedValue, type CitedValue } from "./printed-value";

/** Kernels that make a bushel: counted by the person, or a word for the fill. */
export type KernelSize = { readonly kernelsPerBu: number } | { readonly fill: KernelFillKey };

export interface EarCount {
  readonly ears: number;
  readonly kernelRows: number;
  readonly kernelsPerRow: number;
  readonly kernelSize: KernelSize;
  readonly fractionOfAcre: number;
}

export interface EarCountYield {
  readonly yieldBuPerAc: number;
  readonly earsPerAc: number;
  readonly kernelsPerEar: number;
  readonly kernelsPerBu: number;
  readonly cited: readonly Cited[];
}

/**
 * Corn yield from ears and kernels counted from the milk stage (R3) on.
 *
 *   ears per acre × kernel rows × kernels per row / kernels per bushel
 *
 * @source illinois-corn-components
 */
export function earCountYield(count: EarCount): EarCountYield {
  within("ears", count.ears, harvestLimits.ears);
  within("kernelRows", count.kernelRows, harvestLimits.kernelRows);
  within("kernelsPerRow", count.kernelsPerRow, harvestLimits.kernelsPerRow);
  within("fractionOfAcre", count.fractionOfAcre, harvestLimits.fractionOfAcre);
  const { value: kernelsPerBu, cited } = kernelsIn(count.kernelSize);

  const earsPerAc = count.ears / count.fractionOfAcre;
  const kernelsPerEar = count.kernelRows * count.kernelsPerRow;
  return {
    yieldBuPerAc: (earsPerAc * kernelsPerEar) / kernelsPerBu,
    earsPerAc,
    kernelsPerEar,
    kernelsPerBu,
    cited,
  };
}

function kernelsIn(size: KernelSize): CitedValue {
  if ("fill" in size) return printedValue(kernelsPerBushel, size.fill);
  within("kernelsPerBushel", size.kernelsPerBu, harvestLimits.kernelsPerBushel);
  return { value: size.kernelsPerBu, cited: [] };
}
