import type { FillProgress, FillReceipt } from "../../../hosts/port";
import { firstForm, type StartForm } from "./form";

/** A field whose content does not fit, with the sentence that says so. */
export interface Refusal {
  /** Id of the field. */
  readonly field: string;
  readonly says: string;
}

/** What came of a fill or a removal. */
export interface Done {
  readonly says: string;
  readonly sheets: readonly string[];
  /** What the host could not do, a sentence each. */
  readonly leftOut: readonly string[];
}

export interface StartState {
  readonly form: StartForm;
  readonly refusals: readonly Refusal[];
  /** The list of what does not fit, shown above the form after an attempt to fill. */
  readonly summary: boolean;
  readonly filling?: FillProgress | undefined;
  /** What fills have added while the pane was open, oldest first. */
  readonly receipts: readonly FillReceipt[];
  /** What the last fill or removal did. */
  readonly done?: Done | undefined;
  /** Asking whether the last fill is to be taken away again. */
  readonly asking: boolean;
  /** What the host said when it could not do it. */
  readonly refused?: string | undefined;
}

export function firstStart(): StartState {
  return { form: firstForm(), refusals: [], summary: false, receipts: [], asking: false };
}

/** What is wrong with a field, as far as it has been said. */
export function refusalOf({ refusals }: StartState, field: string): string | undefined {
  return refusals.find((refusal) => refusal.field === field)?.says;
}
