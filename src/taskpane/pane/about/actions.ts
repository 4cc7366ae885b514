import { words } from "../../words";
import { always, type Action } from "../action";
import { memoryOf, remembered } from "../memory";
import { firstForm } from "../start/form";
import { firstTrial } from "../trial/state";
import { nothingKept } from "../what-if/state";

/** Empties the form and whatever the pane keeps between visits. */
export const forget: Action = {
  name: "about.forget",
  label: words.about.forget,
  allowed: always,
  perform(desk) {
    const empty = { form: firstForm(), refusals: [], summary: false };
    desk.change((state) => ({
      ...state,
      start: { ...state.start, ...empty },
      find: { ...state.find, recent: [] },
      whatIf: { ...state.whatIf, kept: nothingKept },
      trial: firstTrial(),
      forgotten: true,
    }));
    for (const part of remembered) memoryOf(desk.environment, part).forget();
  },
};

export const aboutActions: readonly Action[] = [forget];
