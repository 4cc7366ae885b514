import type { Worksheet } from "@univerjs/core";
import type { AreaSize } from "../../../workbook/area";
import type { CellReader } from "../../engine/read-cells";

/** Rows and columns up to the last cell that shows something. */
export function filledSize(sheet: Worksheet, reader: CellReader): AreaSize {
  let [rows, columns] = [0, 0];
  for (let row = 0; row < sheet.getRowCount(); row++) {
    for (let column = 0; column < sheet.getColumnCount(); column++) {
      const value = reader.valueAt(sheet, row, column);
      if (value === undefined || value === "") continue;
      rows = row + 1;
      columns = Math.max(columns, column + 1);
    }
  }
  return { rows, columns };
}
