import { valueAt } from "./sheet-cells";
import type { CellPlace } from "../../area";
import type { ShownValue, WorkbookReading } from "./workbook-reading";

/** Where a name leads. A number behind the name counts as the same name: a second starter in one workbook has it. */
export function namedPlace({ names }: WorkbookReading, name: string): CellPlace | undefined {
  const known = names.find((one) => one.name.toLowerCase().replace(/_\d+$/, "") === name);
  return known && { sheet: known.sheet, row: known.area.top, column: known.area.left };
}

/** What a named cell shows. */
export function namedCell(reading: WorkbookReading, name: string): ShownValue {
  const place = namedPlace(reading, name);
  const sheet = reading.sheets.find((one) => one.name === place?.sheet);
  return place && sheet ? valueAt(sheet, place.row, place.column) : null;
}

export function namedNumber(reading: WorkbookReading, name: string): number | undefined {
  const value = namedCell(reading, name);
  return typeof value === "number" ? value : undefined;
}
