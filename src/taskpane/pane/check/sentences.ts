import type { CellPlace, ErrorCells, Finding, WorkbookReading } from "../../../workbook/findings";
import { words } from "../../words";
import { reportSelection } from "../working/report";
import { Snapshot } from "./snapshot";

/** More cells than these nobody reads through; the rest stay with the code they show. */
const mostWorkedOut = 200;

/**
 * Cells without an answer, each with its sentence. Where the host keeps the sentences to itself they are worked out
 * again from what was read. Cells that only carry on what another one shows are left out: that one is listed.
 */
export async function withSentences(
  findings: readonly Finding[],
  reading: WorkbookReading,
): Promise<readonly Finding[]> {
  const errors = findings.filter((finding) => finding.kind === "errorCells");
  const others = findings.filter((finding) => finding.kind !== "errorCells");
  const told = await bySentence(errors, reading);
  const roots = told.filter(({ message }) => message === undefined || !isCarriedOn(message));
  const shown = roots.length + others.length > 0 ? roots : told;
  const at = findings.findIndex((finding) => finding.kind === "errorCells");
  return at < 0 ? findings : [...others.slice(0, at), ...shown, ...others.slice(at)];
}

async function bySentence(errors: readonly ErrorCells[], reading: WorkbookReading): Promise<ErrorCells[]> {
  const snapshot = new Snapshot(reading);
  const groups = new Map<string, ErrorCells>();
  let workedOut = 0;
  for (const error of errors) {
    for (const cell of error.cells) {
      const known = error.message;
      const message = known ?? (workedOut++ < mostWorkedOut ? await sentenceOf(cell, snapshot) : undefined);
      const key = [cell.sheet, cell.column, error.code, message ?? ""].join("|");
      const before = groups.get(key);
      const cells = [...(before?.cells ?? []), cell];
      groups.set(key, { ...error, at: cells[0] ?? cell, message, cells });
    }
  }
  return [...groups.values()];
}

/** Why the first call in a cell gives no answer. */
async function sentenceOf(cell: CellPlace, snapshot: Snapshot): Promise<string | undefined> {
  const { calls } = await reportSelection(snapshot.select(cell));
  for (const { outcome } of calls) if ("because" in outcome) return outcome.because;
  return undefined;
}

function isCarriedOn(message: string): boolean {
  const [, code] = /(#[A-Z/0]+[!?]?)/.exec(message) ?? [];
  return code !== undefined && message === words.working.arrived(code);
}
