import { serialOf } from "../../../core/units/sheet-date";

/** The spreadsheet date of "2027-01-15"; null for blank, undefined for anything else. */
export function dateOf(text: string): number | null | undefined {
  if (text.trim() === "") return null;
  const [, year, month, day] = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text.trim()) ?? [];
  return year === undefined ? undefined : serialOf(Number(year), Number(month), Number(day));
}
