import { checkBulletin, type Cited } from "../reference/table";
import { line, type WorkingLine } from "./frame";

/** Notes of the rows behind a result, and the reminder that goes with numbers from memory. */
export function checkLines(cited: readonly Cited[]): WorkingLine[] {
  return [...cited.flatMap(({ note }) => (note ? [line("Note", note)] : [])), ...checkLine(cited)];
}

/** The reminder alone, where notes stand in the answer itself. */
export function checkLine(cited: readonly Cited[]): WorkingLine[] {
  return cited.some(({ mark }) => mark === "M") ? [line("Check", checkBulletin)] : [];
}

/** Note and reminder of one row, for a column of its own. */
export function noteInWords({ note, mark }: Cited): string {
  return [...(note ? [note] : []), ...(mark === "M" ? [checkBulletin] : [])].join(" ");
}
