import type { Finding, FindingKind } from "../../../workbook/findings";
import { words } from "../../words";
import type { Action, Desk } from "../action";
import { changePart } from "../change-part";
import { unlessRefused } from "../unless-refused";
import { lookOver, todayOf } from "./look-over";
import { cellsBefore, cellsToMend, isAmong, mendCells, outcomeOf, writeCells } from "./mending";
import { addressOf, placeInWords } from "./snapshot";
import type { CheckState } from "./state";

const say = words.check;

export const checkIds = {
  question: "check-question",
  said: "check-said",
  mend: (index: number) => `check-mend-${index}`,
};

const changeCheck = changePart("check");

/** Reads the workbook and lists what is missing or doubtful. */
export const lookItOver: Action = {
  name: "check.look",
  label: say.look,
  allowed: ({ check }) => !check.isLooking,
  perform: (desk) => look(desk, { said: undefined, before: undefined }),
};

async function look(desk: Desk, part: Partial<CheckState>): Promise<void> {
  const number = desk.state().check.look + 1;
  changeCheck(desk, { look: number, isLooking: true, asking: undefined, refused: undefined, ...part });
  // The page says what is going on before a large workbook keeps it busy.
  await new Promise((painted) => setTimeout(painted));
  const done = await trying(async () => ({ result: await lookOver(desk.host, todayOf(new Date())) }));
  if (desk.state().check.look === number) changeCheck(desk, { isLooking: false, ...done });
}

/** Selects the cell of a finding. */
export const goToFinding: Action = {
  name: "check.go",
  async perform(desk, value) {
    const finding = findingAt(desk, value);
    if (!finding) return;
    const done = await trying(async () => {
      await desk.host.show(addressOf(finding.at));
      desk.environment.gridWanted?.();
      return { said: say.wentTo(placeInWords(finding.at)) };
    });
    changeCheck(desk, done);
  },
};

/** Shows all findings of a kind. */
export const showMore: Action = {
  name: "check.more",
  perform: (desk, value) => changeCheck(desk, { open: [...desk.state().check.open, value as FindingKind] }), // from our own markup
};

/** Asks before anything is written. */
export const askToMend: Action = {
  name: "check.ask",
  allowed: ({ check }) => !check.isLooking,
  perform: (desk, value) => changeCheck(desk, { asking: Number(value), said: undefined }, checkIds.question),
};

export const leaveIt: Action = {
  name: "check.leave",
  label: say.keep,
  perform(desk) {
    const { asking } = desk.state().check;
    changeCheck(desk, { asking: undefined }, asking === undefined ? undefined : checkIds.mend(asking));
  },
};

/** Writes what was asked about, says what came of it and looks again. */
export const mend: Action = {
  name: "check.mend",
  allowed: ({ check }) => !check.isLooking,
  async perform(desk, value) {
    const finding = findingAt(desk, value);
    if (!finding) return;
    const done = await trying(async () => {
      const refused = await mendCells(desk.host, cellsToMend(finding));
      const before = cellsBefore(finding).filter(({ place }) => !isAmong(refused, place));
      const said = await outcomeOf(finding, desk.host, refused);
      return { said, before: before.length > 0 ? before : undefined };
    });
    await afterWriting(desk, done);
  },
};

/** Puts back what stood in the mended cells. */
export const undoMending: Action = {
  name: "check.undo",
  label: say.undo,
  allowed: ({ check }) => !check.isLooking,
  async perform(desk) {
    const { before = [] } = desk.state().check;
    const done = await trying(async () => {
      await writeCells(desk.host, before);
      return { said: say.undone, before: undefined };
    });
    await afterWriting(desk, done);
  },
};

async function afterWriting(desk: Desk, done: Partial<CheckState>): Promise<void> {
  if (done.refused !== undefined) return changeCheck(desk, { ...done, asking: undefined });
  await look(desk, done);
  document.getElementById(checkIds.said)?.focus();
}

function findingAt(desk: Desk, value: string): Finding | undefined {
  return desk.state().check.result?.findings[Number(value)];
}

/** What was done, or what the host says against it. */
function trying(work: () => Promise<Partial<CheckState>>): Promise<Partial<CheckState>> {
  return unlessRefused(
    async () => ({ refused: undefined, ...(await work()) }),
    (refused) => ({ refused }),
  );
}

export const checkActions: readonly Action[] = [
  lookItOver,
  goToFinding,
  showMore,
  askToMend,
  leaveIt,
  mend,
  undoMending,
];
