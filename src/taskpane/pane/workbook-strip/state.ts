import type { KeptWorkbook } from "../environment";

/** What the page around the pane offers for the whole workbook, and how far it is. */
export interface StripState {
  readonly busy: boolean;
  readonly says?: string | undefined;
  /** The list of kept workbooks, while it is open. */
  readonly shelf?: readonly KeptWorkbook[] | undefined;
  /** A name typed for the open workbook and not given yet. */
  readonly title: string;
  /** The workbook that is asked about before it is removed. */
  readonly removing?: string | undefined;
}

export const firstStrip: StripState = { busy: false, title: "" };
