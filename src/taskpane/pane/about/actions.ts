import { words } from "../../words";
import type { Action, Desk } from "../action";
import { changePart } from "../change-part";
import { memoryOf, remembered } from "../memory";
import { firstForm } from "../start/form";
import { firstTrial } from "../trial/state";
import { nothingKept } from "../what-if/state";
import { unlessRefused } from "../unless-refused";
import { checkOurselves } from "./self-check";
import type { AboutState } from "./state";

/** Empties the form and whatever the pane keeps between visits. */
export const forget: Action = {
  name: "about.forget",
  label: words.about.forget,
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

const changeAbout = changePart("about");

/** Tells what the spreadsheet is and whether Loamsheet works in it. */
export const checkSelf: Action = {
  name: "about.check",
  label: words.about.check,
  perform: (desk) => telling(desk, async () => ({ selfCheck: await checkOurselves(desk.host) })),
};

/** Asks the workbook whether Loamsheet loads with it. */
export const readLoading: Action = {
  name: "about.readLoading",
  async perform(desk) {
    const { startup } = desk.environment;
    if (startup) await telling(desk, async () => ({ loads: await startup.isOn() }));
  },
};

/** Turns loading with the workbook on or off, and shows what the spreadsheet then says. */
export const setLoading: Action = {
  name: "about.setLoading",
  async perform(desk, value) {
    const { startup } = desk.environment;
    if (!startup) return;
    changeAbout(desk, { loads: value === "yes" });
    await telling(desk, () => startup.set(value === "yes"));
    await telling(desk, async () => ({ loads: await startup.isOn() }), desk.state().about.refused);
  },
};

function telling(desk: Desk, work: () => Promise<Partial<AboutState> | void>, earlier?: string): Promise<void> {
  return unlessRefused(
    async () => changeAbout(desk, { refused: earlier, ...(await work()) }),
    (refused) => changeAbout(desk, { refused }),
  );
}

export const aboutActions: readonly Action[] = [forget, checkSelf, readLoading, setLoading];
