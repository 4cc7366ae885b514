import type { PaneState } from "./state";

/** Whether nothing is on its way into the workbook or out of it, so that another may be opened or something added. */
export function isIdle({ strip, start, overview, pictures, clients }: PaneState): boolean {
  const isFilling = start.filling !== undefined || overview.filling || clients.run !== undefined;
  return !strip.busy && !isFilling && pictures.busy === undefined;
}
