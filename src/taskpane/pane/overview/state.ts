import type { FarmFigures } from "./farm-figures";

export interface OverviewState {
  /** Counts up with every reading, so that an older one does not come after a newer. */
  readonly reading: number;
  /** The plan in the workbook; null where there is none, missing until it is read. */
  readonly figures?: FarmFigures | null | undefined;
  /** The example is on its way into the workbook. */
  readonly filling: boolean;
  readonly says?: string | undefined;
  /** What stands at the head of the printed summary, as it is typed. */
  readonly print: PrintForm;
}

export interface PrintForm {
  readonly preparedBy: string;
  /** "2027-01-15"; blank for today. */
  readonly date: string;
  readonly note: string;
  /** The sentence about a date that cannot be read. */
  readonly refusal?: string | undefined;
}

export const firstOverview: OverviewState = {
  reading: 0,
  filling: false,
  print: { preparedBy: "", date: "", note: "" },
};
