import type { Action } from "../action";
import { element } from "../element";
import { button } from "../parts/button";
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

/** Something asked before it is done. */
export function question({ asks, yes, no, back }: Question, state: PaneState): HTMLElement {
  return element(
    "div",
    { class: "question", "data-escape": leaveAsIs.name, "data-value": back },
    element("p", { id: "trial-question", tabindex: -1 }, asks),
    element("div", { class: "side-by-side" }, button(yes, state), button(leaveAsIs, state, { says: no, value: back })),
  );
}

/** What came of the last order, where it was given. */
export function said(at: NonNullable<TrialState["said"]>["at"], { trial }: PaneState): HTMLElement {
  const mine = trial.said?.at === at ? trial.said : undefined;
  return element("p", { role: "status", class: mine && !mine.done ? "outcome refusal" : "outcome" }, mine?.says ?? "");
}
