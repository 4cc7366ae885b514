import { formats } from "../model/cell";
import { typedNumber } from "../model/columns";
import type { InputColumn } from "../model/table";

/** When the soil of a field was sampled: "Check this workbook" asks about tests that have grown old. */
export function sampledColumn(days: readonly (number | null)[]): InputColumn {
  return typedNumber(days, {
    width: 12,
    format: formats.dateOrYear,
    note: "The day the sample was taken, or the year alone.",
  });
}
