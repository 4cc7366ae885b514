import { refuse } from "../fault";
import { within } from "../limit";
import type { Cited } from "../../reference/table";
import { sameLength } from "../same-length";
import { sum } from "../statistics/sums";
import { harvestLimits } from "./harvest-limits";
import { storageDays } from "./storage-days";

/** Two years of days would fit. */
const mostPeriods = 1000;

export interface StoragePeriods {
  readonly days: readonly number[];
  readonly moisturesPct: readonly number[];
  readonly temperaturesF: readonly number[];
}

export interface StorageUsed {
  /** Of the time to half a percent of dry matter lost. */
  readonly usedPct: number;
  readonly periods: readonly { readonly days: number; readonly allowedDays: number }[];
  readonly isOver: boolean;
  readonly cited: readonly Cited[];
}

/**
 * Share of its storage life that corn has used, period by period.
 *
 *   sum of days / days allowed at that period's moisture and temperature
 *
 * @source ndsu-storage-2010
 */
export function storageUsed({ days, moisturesPct, temperaturesF }: StoragePeriods): StorageUsed {
  if (days.length > mostPeriods) {
    refuse({ kind: "tooLarge", argument: "days", received: days.length, max: mostPeriods });
  }
  if (moisturesPct.length !== 1) sameLength("days", days, "moistures", moisturesPct);
  if (temperaturesF.length !== 1) sameLength("days", days, "temperatures", temperaturesF);
  const cited = new Set<Cited>();
  const periods = days.map((held, index) => {
    within("days", held, harvestLimits.daysStored);
    const allowed = storageDays(
      { moisturePct: pick(moisturesPct, index), temperatureF: pick(temperaturesF, index) },
      null,
    );
    for (const row of allowed.cited) cited.add(row);
    return { days: held, allowedDays: allowed.days };
  });
  const used = sum(periods.map((period) => period.days / period.allowedDays));
  return { usedPct: 100 * used, periods, isOver: used >= 1, cited: [...cited] };
}

/** One value stands for every period. */
function pick(values: readonly number[], index: number): number {
  return values[values.length === 1 ? 0 : index] ?? Number.NaN;
}
