import type { CellReport } from "./report";

export interface WorkingState {
  /** Counts the readings, so that a slow one does not replace a newer one. */
  readonly reading: number;
  readonly report?: CellReport | undefined;
  /** What the host said when the cell could not be read. */
  readonly refused?: string | undefined;
  /** The working as text, once it was asked for; byHand where the clipboard took nothing. */
  readonly copied?: { readonly text: string; readonly byHand: boolean } | undefined;
}

export const firstWorking: WorkingState = { reading: 0 };
