import { checkBulletin, type Cited } from "../reference/table";
import { line, type WorkingLine } from "./frame";

/** Notes of the rows behind a result, and the reminder that goes with numbers from memory. */
export function checkLines(cited: readonly Cited[]): WorkingLine[] {
  const notes = cited.flatMap(({ note }) => (note ? [line("Note", note)] : []));
  return cited.some(({ mark }) => mark === "M") ? [...notes, line("Check", checkBulletin)] : notes;
}
