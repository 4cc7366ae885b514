import type { TrialExample } from "../../../scenario/trial-examples";
import { drawnTables, stripTables, type DrawnTable, type StripTable } from "../practices/practice-headers";
import type { PracticeContext } from "../practices/practice-context";

/** A strip trial on a sheet of its own. */
export interface Trial {
  /** Counted from 0. */
  readonly index: number;
  readonly key: (typeof trialSheetKeys)[number];
  readonly strips: StripTable;
  readonly drawn: DrawnTable;
  /** The invented trial; undefined for one still to be laid. */
  readonly example: TrialExample | undefined;
}

/** Keys of the trial sheets, in order. */
const trialSheetKeys = ["trial-1", "trial-2"] as const;

export function trialsOf({ trials }: PracticeContext): Trial[] {
  return trialSheetKeys.map((key, index) => ({
    index,
    key,
    strips: stripTables[index] ?? stripTables[0],
    drawn: drawnTables[index] ?? drawnTables[0],
    example: trials[index],
  }));
}
