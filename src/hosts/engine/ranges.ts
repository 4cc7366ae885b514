import type { IRange } from "@univerjs/core";
import type { Area } from "../../workbook/plan";

/** An area as the engine writes ranges. */
export function rangeOf({ top, left, bottom, right }: Area) {
  return { startRow: top, startColumn: left, endRow: bottom, endColumn: right };
}

export function areaOf({ startRow, startColumn, endRow, endColumn }: IRange): Area {
  return { top: startRow, left: startColumn, bottom: endRow, right: endColumn };
}
