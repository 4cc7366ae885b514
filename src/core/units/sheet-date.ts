/** Days from a spreadsheet's day 0 to 1 January 1970. */
const daysTo1970 = 25_569;
const millisecondsPerDay = 86_400_000;

/** Spreadsheet dates that are taken: 1950 to 2199. Earlier and later ones are slips. */
export const sheetDateLimit = { min: 18_264, max: 109_574, unit: "date" } as const;

/** Year, month from 1 and day of a date, its time of day left out. */
export function calendarOf(serial: number): { readonly year: number; readonly month: number; readonly day: number } {
  const at = new Date((serial - daysTo1970) * millisecondsPerDay);
  return { year: at.getUTCFullYear(), month: at.getUTCMonth() + 1, day: at.getUTCDate() };
}

/** The date some calendar months later; the last day of a shorter month where the day is not in it. */
export function addMonths(serial: number, months: number): number {
  const { year, month, day } = calendarOf(serial);
  const lastDay = new Date(Date.UTC(year, month + months, 0)).getUTCDate();
  return Date.UTC(year, month - 1 + months, Math.min(day, lastDay)) / millisecondsPerDay + daysTo1970;
}

/** The serial of a calendar date; nothing when there is no such day. */
export function serialOf(year: number, month: number, day: number): number | undefined {
  const at = new Date(Date.UTC(year, month - 1, day));
  const isReal = at.getUTCFullYear() === year && at.getUTCMonth() === month - 1 && at.getUTCDate() === day;
  return isReal ? at.getTime() / millisecondsPerDay + daysTo1970 : undefined;
}

/** "2027-05-01", for text beside a date. */
export function dateText(serial: number): string {
  return new Date((serial - daysTo1970) * millisecondsPerDay).toISOString().slice(0, 10);
}
