import { words } from "../../words";
import type { Action, Desk } from "../action";
import { changePart } from "../change-part";
import { firstCheck } from "../check/state";
import type { KeptWorkbooks } from "../environment";
import { isIdle } from "../idle";
import { firstPictures } from "../pictures/state";
import type { PaneState } from "../state";
import { unlessRefused } from "../unless-refused";

const say = words.strip;

const changeStrip = changePart("strip");

/** Hands the workbook over as a file. */
export const saveFile: Action = {
  name: "strip.save",
  label: say.save,
  allowed: isIdle,
  async perform(desk) {
    const save = desk.environment.saveFile;
    if (save) await whileBusy(desk, say.saving, async () => say.saved(await save()));
  },
};

/** Opens the list of kept workbooks, or closes it. */
export const toggleShelf: Action = {
  name: "strip.shelf",
  label: say.shelf,
  allowed: isIdle,
  async perform(desk) {
    if (desk.state().strip.shelf) return closeShelf.perform(desk, "");
    await withShelf(desk, undefined, async () => undefined, "shelf-heading");
  },
};

export const closeShelf: Action = {
  name: "strip.close",
  label: say.shelfClose,
  allowed: isIdle,
  perform: (desk) => changeStrip(desk, { shelf: undefined, removing: undefined }, "strip-shelf"),
};

/** Opens another workbook; the present one is kept. */
export const openKept: Action = {
  name: "strip.open",
  label: say.open,
  allowed: isIdle,
  perform: (desk, id) =>
    withShelf(desk, say.opening, async (kept) => {
      await kept.open(id);
      forgetWorkbook(desk);
      return say.opened(titleOf(desk.state(), id));
    }),
};

/** Opens an empty workbook; the present one is kept. */
export const addWorkbook: Action = {
  name: "strip.add",
  label: say.add,
  allowed: isIdle,
  perform: (desk) =>
    withShelf(desk, say.adding, async (kept) => {
      await kept.add();
      forgetWorkbook(desk);
      return say.added;
    }),
};

/** Opens a file chosen from this machine; the present workbook is kept. */
export const openFile: Action = {
  name: "strip.file",
  label: say.openFile,
  allowed: isIdle,
  async perform(desk, _value, file) {
    if (!file) return;
    await withShelf(desk, say.openingFile, async (kept) => {
      const { title, leftOut } = await kept.openFile(file);
      forgetWorkbook(desk);
      return say.fileOpened(title, leftOut);
    });
  },
};

export const typeTitle: Action = {
  name: "strip.title",
  perform: (desk, title) => changeStrip(desk, { title }),
};

export const renameOpen: Action = {
  name: "strip.rename",
  label: say.renameButton,
  allowed: isIdle,
  async perform(desk) {
    const title = desk.state().strip.title.trim();
    if (title === "") return changeStrip(desk, { says: say.nameNeeded }, "shelf-title");
    await withShelf(desk, undefined, async (kept) => {
      await kept.rename(title);
      changeStrip(desk, { title: "" });
      return say.renamed(title);
    });
  },
};

/** Asks before a workbook is removed. */
export const askRemove: Action = {
  name: "strip.askRemove",
  label: say.remove,
  allowed: isIdle,
  perform: (desk, removing) => changeStrip(desk, { removing, says: undefined }, "shelf-question"),
};

export const keepKept: Action = {
  name: "strip.keep",
  label: say.keep,
  allowed: isIdle,
  perform: (desk) => changeStrip(desk, { removing: undefined }, "shelf-heading"),
};

export const removeKept: Action = {
  name: "strip.remove",
  label: say.removeYes,
  allowed: (state) => isIdle(state) && state.strip.removing !== undefined,
  async perform(desk) {
    const id = desk.state().strip.removing ?? "";
    const title = titleOf(desk.state(), id);
    await withShelf(
      desk,
      undefined,
      async (kept) => {
        await kept.remove(id);
        changeStrip(desk, { removing: undefined });
        return say.removed(title);
      },
      "shelf-heading",
    );
  },
};

/** Does something with the kept workbooks, then shows the list as it stands. */
async function withShelf(
  desk: Desk,
  says: string | undefined,
  work: (kept: KeptWorkbooks) => Promise<string | undefined>,
  focus?: string,
): Promise<void> {
  const kept = desk.environment.workbooks;
  if (!kept) return;
  await whileBusy(desk, says, async () => {
    const done = await work(kept);
    changeStrip(desk, { shelf: await kept.list() });
    return done;
  });
  if (focus !== undefined) changeStrip(desk, {}, focus);
}

/** What was added, found and written belongs to a workbook that is not open any more: no way back leads there. */
export function forgetWorkbook(desk: Desk): void {
  desk.change((state) => ({
    ...state,
    start: { ...state.start, receipts: [], done: undefined, asking: false },
    clients: { ...state.clients, receipts: [], outcome: undefined, asking: false },
    pictures: firstPictures,
    whatIf: { ...state.whatIf, workbook: undefined, former: undefined, asking: false },
    // A look that is still under way is at the other workbook.
    check: { ...firstCheck, look: state.check.look + 1 },
  }));
}

function titleOf({ strip }: PaneState, id: string): string {
  return strip.shelf?.find((entry) => entry.id === id)?.title ?? "";
}

async function whileBusy(desk: Desk, says: string | undefined, work: () => Promise<string | undefined>): Promise<void> {
  changeStrip(desk, { busy: true, says });
  let outcome: string | undefined;
  try {
    outcome = await unlessRefused(work, (refused) => refused);
  } finally {
    changeStrip(desk, { busy: false, says: outcome });
  }
}

export const stripActions: readonly Action[] = [
  saveFile,
  toggleShelf,
  closeShelf,
  openKept,
  addWorkbook,
  openFile,
  typeTitle,
  renameOpen,
  askRemove,
  keepKept,
  removeKept,
];
