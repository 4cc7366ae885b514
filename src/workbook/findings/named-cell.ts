import { valueAt } from "./sheet-cells";
import type { ShownValue, WorkbookReading } from "./workbook-reading";

/** What a named cell shows. A number behind the name counts as the same name: a second starter in one workbook has it. */
export function namedCell({ names, sheets }: WorkbookReading, name: string): ShownValue {
  const known = names.find((one) => one.name.toLowerCase().replace(/_\d+$/, "") === name);
  const sheet = sheets.find((one) => one.name === known?.sheet);
  return known && sheet ? valueAt(sheet, known.area.top, known.area.left) : null;
}

export function namedNumber(reading: WorkbookReading, name: string): number | undefined {
  const value = namedCell(reading, name);
  return typeof value === "number" ? value : undefined;
}
