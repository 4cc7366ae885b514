import type { WorkbookHost } from "../../../hosts/port";
import { findingsIn, type Finding, type Today } from "../../../workbook/findings";
import { callsIn } from "./calls-in";
import { withSentences } from "./sentences";

export interface LookedOver {
  readonly findings: readonly Finding[];
  /** Sheets that were too large to be read to their end. */
  readonly cutShort: readonly string[];
}

/** Reads the workbook once and finds what is missing or doubtful in it. Fails only with what the host says. */
export async function lookOver(host: WorkbookHost, today: Today): Promise<LookedOver> {
  const reading = await host.readSheets();
  const findings = findingsIn(reading, await callsIn(reading), today);
  return { findings: await withSentences(findings, reading), cutShort: reading.cutShort };
}

/** A day as spreadsheets count it. */
export function todayOf(day: Date): Today {
  const [year, month, date] = [day.getFullYear(), day.getMonth(), day.getDate()];
  return { year, serial: (Date.UTC(year, month, date) - Date.UTC(1899, 11, 30)) / 86_400_000 };
}
