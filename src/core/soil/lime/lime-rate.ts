import { limeSplit } from "../../../reference/soil";

export interface LimeRateInput {
  /** Fully effective lime, ton/ac. */
  readonly needTonPerAc: number;
  /** Effective share of the lime at hand, %. */
  readonly qualityPct: number;
  /** Water that the quality figure does not count yet, %. */
  readonly moisturePct: number;
}

export interface LimeRate {
  readonly productTonPerAc: number;
  readonly dryTonPerAc: number;
  readonly isAboveSurfaceCap: boolean;
  readonly isAboveTilledCap: boolean;
}

/**
 * Tons of the lime at hand, as delivered, that carry a need of fully effective lime.
 *
 *   need / (quality / 100) / (1 − moisture / 100)
 */
export function limeRate({ needTonPerAc, qualityPct, moisturePct }: LimeRateInput): LimeRate {
  const dryTonPerAc = (needTonPerAc * 100) / qualityPct;
  const productTonPerAc = (dryTonPerAc * 100) / (100 - moisturePct);
  return {
    productTonPerAc,
    dryTonPerAc,
    isAboveSurfaceCap: productTonPerAc > limeSplit.surfaceTon,
    isAboveTilledCap: productTonPerAc > limeSplit.tilledTon,
  };
}
