import type { FarmFigures } from "./farm-figures";

export interface OverviewState {
  /** Counts up with every reading, so that an older one does not come after a newer. */
  readonly reading: number;
  /** The plan in the workbook; null where there is none, missing until it is read. */
  readonly figures?: FarmFigures | null | undefined;
  /** The example is on its way into the workbook. */
  readonly filling: boolean;
  readonly says?: string | undefined;
}

export const firstOverview: OverviewState = { reading: 0, filling: false };
