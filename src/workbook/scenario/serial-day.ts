/** Day of a spreadsheet, counted from the end of 1899. */
export function serialDay(year: number, month: number, day: number): number {
  return Math.round((Date.UTC(year, month - 1, day) - Date.UTC(1899, 11, 30)) / 86_400_000);
}
