import { calendarOf } from "../units/sheet-date";

/** A day of the season: its place in a year without February 29, from 1. */
const firstDayOf: readonly number[] = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

/** The day of a month, such as 4, 28 for April 28. February 29 is March 1. */
export function seasonDay(month: number, day: number): number {
  return (firstDayOf[month - 1] ?? Number.NaN) + day;
}

/** The season day of a spreadsheet date, its time of day left out. */
export function seasonDayOf(serial: number): number {
  const { month, day } = calendarOf(serial);
  return seasonDay(month, day);
}

const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

/** "Apr 28", for messages and working. */
export function dayInWords(day: number): string {
  const month = firstDayOf.filter((first) => day > first).length - 1;
  return `${months[month] ?? ""} ${Math.round(day - (firstDayOf[month] ?? 0))}`;
}
