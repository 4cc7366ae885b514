import { dateText, serialOf, sheetDateLimit } from "../../core/units/sheet-date";
import type { ShownValue } from "./reading/workbook-reading";

/** When a soil sample was taken: the day, or only the year. */
export type When = { readonly year: number } | { readonly serial: number };

const firstYear = 1950;
const lastYear = 2199;

/** A year, a day of the sheet, a day written out (month first where it begins with one), or words with a year in them. */
export function sampledIn(value: ShownValue): When | undefined {
  if (typeof value === "string") return fromText(value);
  if (typeof value !== "number") return undefined;
  if (Number.isInteger(value) && value >= firstYear && value <= lastYear) return { year: value };
  return value >= sheetDateLimit.min && value <= sheetDateLimit.max ? { serial: value } : undefined;
}

export function yearOf(when: When): number {
  return "year" in when ? when.year : Number(dateText(when.serial).slice(0, 4));
}

function fromText(text: string): When | undefined {
  const [, isoYear, isoMonth, isoDay] = /^\s*(\d{4})-(\d{1,2})-(\d{1,2})\s*$/.exec(text) ?? [];
  const [, month = isoMonth, day = isoDay, year = isoYear] = /^\s*(\d{1,2})\/(\d{1,2})\/(\d{4})\s*$/.exec(text) ?? [];
  const serial = year === undefined ? undefined : serialOf(Number(year), Number(month), Number(day));
  if (serial !== undefined) return { serial };
  const [inWords] = /\b(?:19|20)\d\d\b/.exec(text) ?? [];
  return inWords === undefined ? undefined : { year: Number(inWords) };
}
