import { words } from "../../words";
import { always, type Action } from "../action";
import { memoryOf } from "../memory";
import { firstForm } from "../start/form";

/** Empties the form and what the pane keeps of it between visits. */
export const forget: Action = {
  name: "about.forget",
  label: words.about.forget,
  allowed: always,
  perform(desk) {
    const empty = { form: firstForm(), refusals: [], summary: false };
    desk.change((state) => ({ ...state, start: { ...state.start, ...empty }, forgotten: true }));
    memoryOf(desk.environment).forget();
  },
};

export const aboutActions: readonly Action[] = [forget];
