import type { LayoutStrip, TrialDesign } from "../../../core/trials/trial-layout";
import type { Said } from "../parts/outcome";

export type Entry = "yields" | "weights";

/** The form as typed. */
export interface TrialForm {
  readonly name: string;
  /** One a line, the check first. */
  readonly treatments: string;
  readonly design: TrialDesign;
  readonly blocks: string;
  readonly width: string;
  readonly length: string;
  readonly seed: string;
  readonly gainToSee: string;
  readonly stripSd: string;
  readonly power: string;
  readonly entry: Entry;
  readonly crop: string;
  readonly confidence: string;
  readonly price: string;
}

/** A layout as it was drawn; the form may have moved on. */
export interface Layout {
  readonly treatments: readonly string[];
  readonly design: TrialDesign;
  readonly seed: number;
  readonly strips: readonly LayoutStrip[];
}

/** What was written down of a strip, as typed. */
export interface StripText {
  readonly yield: string;
  readonly weight: string;
  readonly moisture: string;
}

/** What the pane remembers of the trial. */
export interface KeptTrial {
  readonly form: TrialForm;
  readonly layout?: Layout | undefined;
  /** One a strip of the layout. */
  readonly strips: readonly StripText[];
  /** Costs as typed, by treatment of the layout. */
  readonly costs: readonly string[];
}

export interface TrialState {
  readonly kept: KeptTrial;
  readonly pasted: string;
  /** Ids of fields that refused the last layout, with what they said. */
  readonly refusals: Readonly<Record<string, string>>;
  readonly asking?: "replace" | "insert" | "empty" | undefined;
  /** Where the insert would go. */
  readonly target?: string | undefined;
  readonly said?: (Said & { readonly at: "paste" | "insert" }) | undefined;
}

export const noStrip: StripText = { yield: "", weight: "", moisture: "" };

export function firstKept(): KeptTrial {
  return {
    form: {
      name: "",
      treatments: "check\n",
      design: "blocks",
      blocks: "4",
      width: "",
      length: "",
      seed: "",
      gainToSee: "",
      stripSd: "",
      power: "80",
      entry: "yields",
      crop: "",
      confidence: "90",
      price: "",
    },
    strips: [],
    costs: [],
  };
}

export function firstTrial(): TrialState {
  return { kept: firstKept(), pasted: "", refusals: {} };
}
