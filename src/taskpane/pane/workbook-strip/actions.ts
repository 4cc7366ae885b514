import { HostError } from "../../../hosts/port";
import { words } from "../../words";
import type { Action, Desk } from "../action";
import type { PaneState } from "../state";
import type { StripState } from "./state";

const say = words.strip;
const idle = (state: PaneState): boolean => !state.strip.busy && state.start.filling === undefined;

function changeStrip(desk: Desk, part: Partial<StripState>, focus?: string): void {
  desk.change((state) => ({ ...state, strip: { ...state.strip, ...part } }), focus);
}

/** Hands the workbook over as a file. */
export const saveFile: Action = {
  name: "strip.save",
  label: say.save,
  allowed: idle,
  async perform(desk) {
    const save = desk.environment.saveFile;
    if (save) await whileBusy(desk, say.saving, async () => say.saved(await save()));
  },
};

/** Asks before anything is replaced. */
export const askStartAnew: Action = {
  name: "strip.ask",
  label: say.startAnew,
  allowed: idle,
  perform: (desk) => changeStrip(desk, { asking: true, says: undefined }, "strip-question"),
};

export const keepWorkbook: Action = {
  name: "strip.keep",
  label: say.keep,
  allowed: idle,
  perform: (desk) => changeStrip(desk, { asking: false }, "strip-ask"),
};

/** Replaces the workbook by an empty one, after the question. What earlier fills added is gone with it. */
export const startAnew: Action = {
  name: "strip.anew",
  label: say.replace,
  allowed: (state) => idle(state) && state.strip.asking,
  async perform(desk) {
    const anew = desk.environment.startAnew;
    if (!anew) return;
    changeStrip(desk, { asking: false }, "strip-ask");
    await whileBusy(desk, say.replacing, async () => {
      await anew();
      desk.change((state) => ({ ...state, start: { ...state.start, receipts: [], done: undefined, asking: false } }));
      return say.replaced;
    });
  },
};

async function whileBusy(desk: Desk, says: string, work: () => Promise<string>): Promise<void> {
  changeStrip(desk, { busy: true, says });
  try {
    changeStrip(desk, { busy: false, says: await work() });
  } catch (thrown) {
    changeStrip(desk, { busy: false, says: thrown instanceof HostError ? thrown.message : undefined });
    if (!(thrown instanceof HostError)) throw thrown;
  }
}

export const stripActions: readonly Action[] = [saveFile, askStartAnew, keepWorkbook, startAnew];
