import { words } from "../../words";
import { always, type Action } from "../action";
import { memoryOf } from "../memory";
import { firstForm } from "../start/form";

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
      forgotten: true,
    }));
    memoryOf(desk.environment).forget();
    memoryOf(desk.environment, "recent").forget();
  },
};

export const aboutActions: readonly Action[] = [forget];
