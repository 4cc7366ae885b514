import { within } from "../limit";
import { bushelWeight } from "../units/bushel-weight";
import type { Cited } from "../../reference/table";
import { grainShrink, type Shrink, type ShrinkInput } from "./grain-shrink";
import { harvestLimits } from "./harvest-limits";

export interface MarketBushels {
  readonly bushels: number;
  readonly weighedBu: number;
  readonly bushelLb: number;
  readonly shrink: Shrink;
  readonly cited: readonly Cited[];
}

/**
 * Bushels paid for a weighed load.
 *
 *   pounds × (1 - total shrink) / bushel weight
 *
 * @source dry-matter-balance
 */
export function marketBushels(wetLb: number, input: ShrinkInput): MarketBushels {
  within("pounds", wetLb, harvestLimits.pounds);
  const shrink = grainShrink(input);
  const bushel = bushelWeight(input.grain);
  const weighedBu = wetLb / bushel.bushelWeightLb;
  return {
    bushels: weighedBu * shrink.paidShare,
    weighedBu,
    bushelLb: bushel.bushelWeightLb,
    shrink,
    cited: [bushel, ...shrink.cited],
  };
}

export interface MarketYield {
  readonly yieldBuPerAc: number;
  readonly wetLbPerAc: number;
  readonly dryMatterLbPerAc: number;
  readonly bushelLb: number;
  readonly marketMoisturePct: number;
  readonly cited: readonly Cited[];
}

export type MarketYieldInput = Pick<ShrinkInput, "grain" | "moisturePct" | "marketMoisturePct">;

/**
 * Yield at market moisture, drier grain brought up to it and wetter grain down, so that strips compare.
 *
 *   pounds / acres × (100 - moisture) / (100 - market) / bushel weight
 *
 * @source dry-matter-balance
 */
export function marketYield(wetLb: number, acres: number, input: MarketYieldInput): MarketYield {
  within("pounds", wetLb, harvestLimits.pounds);
  within("acres", acres, harvestLimits.acresHarvested);
  const shrink = grainShrink({ ...input, handlingLossPct: 0, shrinkPerPointPct: null });
  const bushel = bushelWeight(input.grain);
  const wetLbPerAc = wetLb / acres;
  return {
    yieldBuPerAc: (wetLbPerAc * shrink.equalShare) / bushel.bushelWeightLb,
    wetLbPerAc,
    dryMatterLbPerAc: wetLbPerAc * (1 - input.moisturePct / 100),
    bushelLb: bushel.bushelWeightLb,
    marketMoisturePct: shrink.marketMoisturePct,
    cited: [bushel, ...shrink.cited],
  };
}
