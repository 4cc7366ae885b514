import type { IResources } from "@univerjs/core";
import type { NotePlan, SheetPlan } from "../../../workbook/plan";
import { sheetResource } from "../../engine/sheet-resource";

export const notePlugin = "SHEET_NOTE_PLUGIN";

/** Notes on cells, as the grid stores them in a workbook. */
export function notesResource(sheets: readonly SheetPlan[], sheetIds: readonly string[]): IResources[number] {
  return sheetResource(notePlugin, sheets, sheetIds, ({ notes }, id) =>
    notes.length === 0 ? undefined : notesByCell(notes, id),
  );
}

function notesByCell(notes: readonly NotePlan[], sheetId: string): object {
  const rows: Record<number, Record<number, object>> = {};
  for (const { row, column, text } of notes) {
    const lines = Math.ceil(text.length / 32) + text.split("\n").length;
    const size = { width: 240, height: Math.min(240, 24 + lines * 18) };
    (rows[row] ??= {})[column] = {
      id: `${sheetId}-note-${row}-${column}`,
      row,
      col: column,
      note: text,
      show: false,
      ...size,
    };
  }
  return rows;
}
