import type { SheetPlan } from "../../../workbook/plan";
import { cellAddress } from "../../address";
import type { Requests } from "./requests";
import type { Supports } from "../supports";

/** Notes on cells; as comments where Excel has no notes yet, and left out where it has neither. */
export async function writeNotes(plan: SheetPlan, requests: Requests, supports: Supports): Promise<void> {
  if (!canAttachNotes(supports)) return;
  for (const note of plan.notes) {
    await requests.makeRoom({ steps: 2 });
    const sheet = requests.sheet(plan.name);
    const cell = cellAddress(note);
    // A copy of the library may be older than the Excel it speaks to.
    if (supports("1.18") && "notes" in sheet) sheet.notes.add(cell, note.text);
    else sheet.comments.add(sheet.getRange(cell), note.text);
  }
}

export function canAttachNotes(supports: Supports): boolean {
  return supports("1.10");
}
