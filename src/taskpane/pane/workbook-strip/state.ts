/** What the page around the pane offers for the whole workbook, and how far it is. */
export interface StripState {
  readonly asking: boolean;
  readonly busy: boolean;
  readonly says?: string | undefined;
}

export const firstStrip: StripState = { asking: false, busy: false };
