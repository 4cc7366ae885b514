import { words } from "../../words";
import type { Action, Desk } from "../action";
import { changePart } from "../change-part";
import { unlessRefused } from "../unless-refused";
import { reportSelection } from "./report";
import { reportText } from "./report-text";
import type { WorkingState } from "./state";

const changeWorking = changePart("working");

/** Reads the selected cell and shows how its answer came about. */
export const showWorking: Action = {
  name: "working.read",
  label: words.working.readAgain,
  async perform(desk) {
    const reading = desk.state().working.reading + 1;
    changeWorking(desk, { reading });
    const part = await readSelected(desk);
    if (desk.state().working.reading === reading) changeWorking(desk, { ...part, copied: undefined });
  },
};

function readSelected(desk: Desk): Promise<Partial<WorkingState>> {
  return unlessRefused(
    async () => ({ report: await reportSelection(desk.host), refused: undefined }),
    (refused) => ({ report: undefined, refused }),
  );
}

/** Id of the box that holds the text where the clipboard is closed. */
export const copyId = "working-text";

/** Puts the working on the clipboard as plain text; where that is closed, into a box to copy from. */
export const copyWorking: Action = {
  name: "working.copy",
  label: words.working.copy,
  allowed: ({ working }) => (working.report?.calls.length ?? 0) > 0,
  async perform(desk) {
    const { report } = desk.state().working;
    if (!report) return;
    const text = reportText(report);
    const byHand = !(await toClipboard(text));
    if (desk.state().working.report !== report) return;
    changeWorking(desk, { copied: { text, byHand } });
    const box = document.getElementById(copyId);
    if (box instanceof HTMLTextAreaElement) {
      box.focus();
      box.select();
    }
  },
};

/** Panes stand in frames that may not reach the clipboard. */
async function toClipboard(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

export const workingActions: readonly Action[] = [showWorking, copyWorking];
