import type { Action } from "../action";
import { button } from "../parts/button";
import { outcomeLine } from "../parts/outcome";
import { question } from "../parts/question";
import type { PaneState } from "../state";
import { leaveAsIs } from "./actions";
import type { TrialState } from "./state";

interface Question {
  readonly asks: string;
  readonly yes: Action;
  readonly no: string;
  /** Where the focus goes when nothing is to be done. */
  readonly back: string;
}

/** Something asked before it is done; one question is open at a time. */
export function trialQuestion({ asks, yes, no, back }: Question, state: PaneState): HTMLElement {
  return question({
    id: "trial-question",
    asks,
    yes: button(yes, state),
    no: button(leaveAsIs, state, { says: no, value: back }),
  });
}

/** What came of the last order, where it was given. */
export function saidAt(at: NonNullable<TrialState["said"]>["at"], { trial }: PaneState): HTMLElement {
  return outcomeLine(trial.said?.at === at ? trial.said : undefined);
}
