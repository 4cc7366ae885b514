import { refuse } from "../fault";
import { within } from "../limit";
import { pctToFraction } from "../units/units";
import { pestGrowth, type GrowthRow } from "../../reference/protection/pest-thresholds";
import type { PestKey } from "../../reference/protection/pests";
import { pests } from "../../reference/protection/pests";
import { pestLimits } from "./pest-limits";

/** Growth in percent a day, or a pest whose doubling time is published. */
export type PestGrowth = { readonly pctPerDay: number } | { readonly pest: PestKey };

interface Growth {
  /** Times as many from one day to the next. */
  readonly dailyFactor: number;
  readonly pctPerDay: number;
  /** null: numbers stand still. */
  readonly doublingDays: number | null;
  readonly published?: GrowthRow;
}

export interface PestActionInput {
  readonly injuryLevel: number;
  readonly growth: PestGrowth;
  readonly daysToSpray: number;
}

export interface PestActionLevel extends Growth {
  readonly actionLevel: number;
  readonly injuryLevel: number;
}

/**
 * Number of pests at which to act, so that the injury level is not passed before the sprayer comes.
 *
 *   injury level / (1 + growth) ^ days      the same as injury level × 2 ^ (-days / doubling time)
 *
 * @source pedigo-injury-level
 */
export function pestActionLevel({ injuryLevel, growth, daysToSpray }: PestActionInput): PestActionLevel {
  within("injuryLevel", injuryLevel, pestLimits.injuryLevel);
  within("daysToSpray", daysToSpray, pestLimits.days);

  const known = growthOf(growth);
  return { ...known, injuryLevel, actionLevel: injuryLevel / known.dailyFactor ** daysToSpray };
}

export interface PestDaysInput {
  readonly count: number;
  readonly injuryLevel: number;
  readonly growth: PestGrowth;
}

export interface PestDays extends Growth {
  /** 0 when the level is reached already. */
  readonly days: number;
  readonly isReached: boolean;
}

/**
 * Days until a growing population reaches the injury level.
 *
 *   doubling time × log2(injury level / count)
 *
 * @source pedigo-injury-level
 */
export function pestDays({ count, injuryLevel, growth }: PestDaysInput): PestDays {
  within("count", count, pestLimits.count);
  within("injuryLevel", injuryLevel, pestLimits.injuryLevel);
  const known = growthOf(growth);
  if (count >= injuryLevel) return { ...known, days: 0, isReached: true };
  if (count === 0 || known.doublingDays === null) {
    refuse({ kind: "noSolution", because: "Without pests, or without growth, the injury level is never reached." });
  }
  return { ...known, days: known.doublingDays * Math.log2(injuryLevel / count), isReached: false };
}

function growthOf(growth: PestGrowth): Growth {
  if ("pctPerDay" in growth) {
    within("dailyGrowth", growth.pctPerDay, pestLimits.growth);
    const dailyFactor = 1 + pctToFraction(growth.pctPerDay);
    const doublingDays = dailyFactor > 1 ? 1 / Math.log2(dailyFactor) : null;
    return { dailyFactor, pctPerDay: growth.pctPerDay, doublingDays };
  }
  const published = pestGrowth.rows.find(({ pest }) => pest === growth.pest);
  if (!published) {
    refuse({
      kind: "notPublished",
      what: `doubling time of ${pests[growth.pest].label}`,
      where: `"${pestGrowth.title}"`,
      instead: "Type the growth in percent a day.",
    });
  }
  const dailyFactor = 2 ** (1 / published.doublingDays);
  return { dailyFactor, pctPerDay: (dailyFactor - 1) * 100, doublingDays: published.doublingDays, published };
}
