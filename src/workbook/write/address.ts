import type { Area } from "../plan";

/** "A" for 0, "AB" for 27. */
export function columnLetters(column: number): string {
  const rest = column % 26;
  const letter = String.fromCharCode(65 + rest);
  return column < 26 ? letter : columnLetters(Math.floor(column / 26) - 1) + letter;
}

/** "$B$7" or "$B$7:$C$9", both ways fixed. */
export function fixedAddress({ top, left, bottom, right }: Area): string {
  const first = `$${columnLetters(left)}$${top + 1}`;
  return top === bottom && left === right ? first : `${first}:$${columnLetters(right)}$${bottom + 1}`;
}

/** "'Soil tests'!" or "Fields!". */
export function sheetPrefix(sheet: string): string {
  const plain = /^[A-Za-z_][A-Za-z0-9_]*$/.test(sheet) && !/^[A-Za-z]{1,3}\d+$/.test(sheet);
  return plain ? `${sheet}!` : `'${sheet.replace(/'/g, "''")}'!`;
}
