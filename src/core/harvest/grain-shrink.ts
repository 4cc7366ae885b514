import { refuseArgument } from "../fault";
import { within } from "../limit";
import type { GrainKey } from "../../reference/grain";
import { handlingLoss as handlingLossTable } from "../../reference/harvest/drying";
import type { Cited } from "../../reference/table";
import { harvestLimits } from "./harvest-limits";
import { marketMoisture } from "./market-moisture";

export interface ShrinkInput {
  readonly grain: GrainKey;
  readonly moisturePct: number;
  /** null: the usual market moisture of the grain. */
  readonly marketMoisturePct: number | null;
  /** null: the usual loss. */
  readonly handlingLossPct: number | null;
  /** The buyer's flat shrink for each point; null: water and handling as they are. */
  readonly shrinkPerPointPct: number | null;
}

/** Shrink in percent of the wet weight. */
export interface Shrink {
  readonly points: number;
  readonly marketMoisturePct: number;
  readonly waterPct: number;
  readonly handlingPct: number;
  readonly totalPct: number;
  /** Share of the wet weight that is paid. */
  readonly paidShare: number;
  /** Weight at market moisture of the same dry matter, over the weight as it is: above 1 where grain is overdry. */
  readonly equalShare: number;
  readonly isOverdry: boolean;
  readonly cited: readonly Cited[];
}

/**
 * What a weight of grain shrinks to at market moisture.
 *
 *   water % = (moisture - market) × 100 / (100 - market)      total = water + handling
 *
 * Grain drier than the market shrinks by handling alone: buyers pay for no water that is not there. A buyer's flat
 * shrink replaces both parts: points × shrink per point.
 *
 * @source dry-matter-balance, extension-handling-loss
 */
export function grainShrink(input: ShrinkInput): Shrink {
  within("moisture", input.moisturePct, harvestLimits.moisture);
  const market = marketMoisture(input.grain, input.marketMoisturePct);
  const handling = handlingOf(input.handlingLossPct);

  const points = Math.max(0, input.moisturePct - market.moisturePct);
  const waterPct = (points * 100) / (100 - market.moisturePct);
  const totalPct = totalOf(input, points, waterPct + handling.pct);
  return {
    points,
    marketMoisturePct: market.moisturePct,
    waterPct,
    handlingPct: handling.pct,
    totalPct,
    paidShare: 1 - totalPct / 100,
    equalShare: (100 - input.moisturePct) / (100 - market.moisturePct),
    isOverdry: input.moisturePct < market.moisturePct,
    cited: input.shrinkPerPointPct === null ? [...market.cited, ...handling.cited] : market.cited,
  };
}

function totalOf({ shrinkPerPointPct }: ShrinkInput, points: number, ownPct: number): number {
  if (shrinkPerPointPct !== null) within("shrinkPerPoint", shrinkPerPointPct, harvestLimits.shrinkPerPoint);
  const totalPct = shrinkPerPointPct === null ? ownPct : points * shrinkPerPointPct;
  if (totalPct < 100) return totalPct;
  refuseArgument("shrinkPerPoint", "this shrink would take the whole load.");
}

function handlingOf(givenPct: number | null): { pct: number; cited: readonly Cited[] } {
  if (givenPct === null) return { pct: handlingLossTable.rows[0].value, cited: handlingLossTable.rows };
  within("handlingLoss", givenPct, harvestLimits.handlingLoss);
  return { pct: givenPct, cited: [] };
}

export interface ShrunkBushels {
  readonly wetBu: number;
  readonly paidBu: number;
  readonly waterBu: number;
  readonly handlingBu: number;
  /** Bushels of dry matter that an overdry load brings unpaid. */
  readonly givenAwayBu: number;
  readonly shrink: Shrink;
}

/** Bushels, as weighed over the bushel weight, after shrink. */
export function shrunkBushels(wetBu: number, input: ShrinkInput): ShrunkBushels {
  within("bushels", wetBu, harvestLimits.bushels);
  const shrink = grainShrink(input);
  return {
    wetBu,
    paidBu: wetBu * shrink.paidShare,
    waterBu: (wetBu * shrink.waterPct) / 100,
    handlingBu: (wetBu * shrink.handlingPct) / 100,
    givenAwayBu: shrink.isOverdry ? wetBu * (shrink.equalShare - 1) : 0,
    shrink,
  };
}
