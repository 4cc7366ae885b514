import type { Area, ChartRange } from "../../workbook/plan";

/** "A" for 0, "AA" for 26. */
export function columnLetters(column: number): string {
  const before = Math.floor(column / 26) - 1;
  return (before >= 0 ? columnLetters(before) : "") + String.fromCharCode(65 + (column % 26));
}

/** "B7", rows and columns counted from 0. */
export function cellReference(row: number, column: number): string {
  return `${columnLetters(column)}${row + 1}`;
}

/** "B7:D9", or "B7" for one cell. */
export function areaReference({ top, left, bottom, right }: Area): string {
  const first = cellReference(top, left);
  const last = cellReference(bottom, right);
  return first === last ? first : `${first}:${last}`;
}

/** "'Potash plan'!$B$7:$D$9": a reference that means the same cells wherever it stands. */
export function absoluteReference({ sheet, area }: ChartRange): string {
  const fixed = areaReference(area).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
  return `${quotedSheet(sheet)}!${fixed}`;
}

/** A sheet name as it stands in a formula. Quotes are never wrong, so they are always there. */
export function quotedSheet(name: string): string {
  return `'${name.replace(/'/g, "''")}'`;
}
