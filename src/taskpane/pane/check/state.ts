import type { FindingKind } from "../../../workbook/findings";
import type { CellToWrite } from "./cells-to-write";
import type { LookedOver } from "./look-over";

export interface CheckState {
  /** Counts the looks, so that a slow one does not replace a newer one. */
  readonly look: number;
  readonly isLooking: boolean;
  readonly result?: LookedOver | undefined;
  /** What the host said when the workbook could not be read or written. */
  readonly refused?: string | undefined;
  /** Kinds of which all findings are shown. */
  readonly open: readonly FindingKind[];
  /** The finding, by its place in the list, whose mending is asked about. */
  readonly asking?: number | undefined;
  /** Said after something was done. */
  readonly said?: string | undefined;
  /** What stood in the mended cells before. */
  readonly before?: readonly CellToWrite[] | undefined;
}

export const firstCheck: CheckState = { look: 0, isLooking: false, open: [] };
