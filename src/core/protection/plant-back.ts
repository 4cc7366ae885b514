import { within } from "../limit";
import { addMonths, sheetDateLimit } from "../units/sheet-date";

/** An interval as a label states it. */
export type LabelInterval = { readonly days: number } | { readonly months: number };

export const plantBackLimits = {
  date: sheetDateLimit,
  days: { min: 0, max: 3660, unit: "days" },
  months: { min: 0, max: 120, unit: "months" },
} as const;

export interface PlantBackInput {
  readonly appliedDate: number;
  readonly interval: LabelInterval;
  readonly plantDate: number;
}

export interface PlantBack {
  /** Above 0: days too early. 0 or below: the interval is met, with so many days to spare. */
  readonly daysShort: number;
  readonly firstDate: number;
  readonly daysSince: number;
}

/**
 * Days by which a planting date falls short of a label's rotation interval.
 *
 * @source label-law
 */
export function plantBack({ appliedDate, interval, plantDate }: PlantBackInput): PlantBack {
  within("applied", appliedDate, plantBackLimits.date);
  within("plant", plantDate, plantBackLimits.date);
  if ("days" in interval) within("intervalDays", interval.days, plantBackLimits.days);
  else within("intervalDays", interval.months, plantBackLimits.months);

  const applied = Math.floor(appliedDate);
  const plant = Math.floor(plantDate);
  const firstDate = "days" in interval ? applied + Math.ceil(interval.days) : addMonths(applied, interval.months);
  return { daysShort: firstDate - plant, firstDate, daysSince: plant - applied };
}
