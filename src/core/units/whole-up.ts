/**
 * The next whole number, as a spreadsheet's ROUNDUP sees it: 2.0000000000000004, the dust of a division, is 2.
 * Spreadsheets carry 15 significant digits into rounding.
 */
export function wholeUp(value: number): number {
  return Math.ceil(Number(value.toPrecision(15)));
}
