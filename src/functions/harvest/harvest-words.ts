import { dryers, fuels, gasRules, type DryerKey, type FuelKey, type GasRuleKey } from "../../reference/harvest/drying";
import { lossCrops, type LossCropKey } from "../../reference/harvest/loss-crops";
import { peakGrains, storageTables, type PeakGrainKey, type StorageTableKey } from "../../reference/harvest/storage";
import {
  kernelFills,
  soybeanSizes,
  type KernelFillKey,
  type SoybeanSizeKey,
} from "../../reference/harvest/yield-counts";
import { vocabulary } from "../frame";

/** The closed word lists of this family. */
export const kernelFillWords = vocabulary<KernelFillKey>("kernel fill", kernelFills);
export const soybeanSizeWords = vocabulary<SoybeanSizeKey>("soybean seed size", soybeanSizes);
export const lossCropWords = vocabulary<LossCropKey>("harvest loss crop", lossCrops);
export const gasRuleWords = vocabulary<GasRuleKey>("drying gas rule", gasRules);
export const dryerWords = vocabulary<DryerKey>("dryer", dryers);
export const fuelWords = vocabulary<FuelKey>("drying fuel", fuels);
export const storageTableWords = vocabulary<StorageTableKey>("storage table", storageTables);
export const peakGrainWords = vocabulary<PeakGrainKey>("peak grain", peakGrains);
