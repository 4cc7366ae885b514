import { allFunctions } from "../../../../functions";
import type { WorksheetFunction } from "../../../../functions/frame/declaration";
import type { HostRange } from "../../../../hosts/port";
import { words } from "../../../words";
import type { Action, Desk } from "../../action";
import { parted } from "../../parts/parted";
import { sentence } from "../../parts/text";
import { cellsOf } from "../../formula/references";
import { unlessRefused } from "../../unless-refused";
import { callOf, sizeOfAnswer, type Call } from "./call";
import { changeEntries, changeEntry, changeFind, entriesOf } from "../change-find";
import type { Entries, Entry, Picked } from "./entry";
import { argumentOf, fieldId, pickId } from "./field-id";
import { textFor } from "./listed";
import { whyNoRoom } from "./room";

const say = words.find;

/** Takes over what is typed or chosen: "yieldGoal:180". */
export const typeArgument: Action = {
  name: "find.type",
  perform(desk, value) {
    const [argument, text] = parted(value);
    changeEntry(desk, argument, { text, refused: undefined });
  },
};

/** On leaving a box: from then on what does not fit in it is said beside it. */
export const leaveArgument: Action = {
  name: "find.leave",
  perform(desk, field) {
    const argument = argumentOf(field);
    const entry = argument === undefined ? undefined : entriesOf(desk.state().find)[argument];
    if (argument === undefined || !entry || entry.visited) return;
    const { find } = desk.state();
    changeFind(desk, {
      forms: { ...find.forms, [find.shown ?? ""]: { ...entriesOf(find), [argument]: { ...entry, visited: true } } },
    });
  },
};

/** Takes the address of what is selected in the sheet, and reads it. */
export const pickArgument: Action = {
  name: "find.pick",
  label: say.pick,
  async perform(desk, argument) {
    const shown = desk.state().find.shown;
    const part = await selectedCells(desk);
    if (desk.state().find.shown !== shown) return;
    const hadFocus = document.activeElement?.id === pickId(argument);
    changeEntry(desk, argument, { ...part, visited: true }, hadFocus ? pickId(argument) : undefined);
    await readPicksAgain(desk, argument);
  },
};

function selectedCells(desk: Desk): Promise<Partial<Entry>> {
  return unlessRefused(
    async () => ({ picked: pickedFrom(await desk.host.readSelection()), refused: undefined }),
    (refused) => ({ refused }),
  );
}

function pickedFrom(range: HostRange): Picked {
  return { reference: range.address, values: cellsOf(range) };
}

/** Cells picked earlier may have changed since. */
async function readPicksAgain(desk: Desk, except: string): Promise<void> {
  const shown = desk.state().find.shown;
  const earlier = Object.entries(entriesOf(desk.state().find)).filter(
    ([name, { picked }]) => name !== except && picked,
  );
  const fresh = await Promise.all(
    earlier.map(async ([name, { picked }]) => [name, await again(desk, picked)] as const),
  );
  if (fresh.length === 0 || desk.state().find.shown !== shown) return;
  changeEntries(desk, (entries) => withPicks(entries, fresh));
}

/** A cell that can no longer be read keeps what it showed. */
async function again(desk: Desk, picked: Picked | undefined): Promise<Picked | undefined> {
  if (!picked) return undefined;
  return unlessRefused(
    async () => pickedFrom(await desk.host.read(picked.reference)),
    () => picked,
  );
}

function withPicks(entries: Entries, fresh: readonly (readonly [string, Picked | undefined])[]): Entries {
  const renewed = fresh.flatMap(([name, picked]): [string, Entry][] => {
    const entry = entries[name];
    return entry?.picked && picked ? [[name, { ...entry, picked }]] : [];
  });
  return { ...entries, ...Object.fromEntries(renewed) };
}

/** Back from picked cells to a box for typing. */
export const typeInstead: Action = {
  name: "find.unpick",
  label: say.typeInstead,
  perform: (desk, argument) =>
    changeEntry(desk, argument, { picked: undefined, refused: undefined }, fieldId(argument)),
};

/** Puts the example into the boxes. */
export const fillExample: Action = {
  name: "find.example",
  label: say.fillExample,
  perform(desk) {
    const fn = shownFunction(desk);
    if (!fn) return;
    const names = Object.keys(fn.args);
    const entries = fn.example.call.map((value, index) => [names[index] ?? "", { text: textFor(value) }] as const);
    changeEntries(desk, () => Object.fromEntries(entries));
  },
};

export const emptyForm: Action = {
  name: "find.empty",
  label: say.emptyForm,
  allowed: ({ find }) => Object.values(entriesOf(find)).some(({ text, picked }) => text !== "" || picked),
  perform: (desk) => changeEntries(desk, () => ({})),
};

/** Shows or hides the arguments that may be left out. */
export const toggleMore: Action = {
  name: "find.more",
  perform(desk, name) {
    const { moreOpen } = desk.state().find;
    const others = moreOpen.filter((open) => open !== name);
    changeFind(desk, { moreOpen: others.length === moreOpen.length ? [...others, name] : others });
  },
};

/** Writes the call into the selected cell, where everything needed is there and the cells it fills are empty. */
export const insertCall: Action = {
  name: "find.insert",
  label: say.insert,
  async perform(desk) {
    const fn = shownFunction(desk);
    if (!fn) return;
    const entries = entriesOf(desk.state().find);
    const call = callOf(fn, entries);
    const stuck = firstStuck(call, entries);
    if (stuck) return changeEntry(desk, stuck.name, { visited: true, refused: stuck.says }, fieldId(stuck.name));
    const why = whyNoAnswer(call, entries);
    if (why !== undefined) return refuse(desk, why);
    await insert(desk, call, entries);
  },
};

/** The first box that holds nothing where something is needed, or what does not fit. */
function firstStuck({ missing, given }: Call, entries: Entries): { name: string; says: string } | undefined {
  const [name] = missing;
  if (name !== undefined) return { name, says: say.giveFirst };
  const unfit = [...given].find(([one, { refusal }]) => refusal !== undefined && !entries[one]?.picked);
  return unfit && { name: unfit[0], says: unfit[1].refusal ?? "" };
}

/**
 * Values that have no answer would only put the same sentence into the sheet. Picked cells that are still blank may
 * be filled later; those that do not fit are told of first.
 */
function whyNoAnswer({ answer }: Call, entries: Entries): string | undefined {
  const first = answer?.[0]?.[0];
  if (typeof first !== "object") return undefined;
  const mayCome = first.code === "#N/A" && Object.values(entries).some(({ picked }) => picked);
  return mayCome ? undefined : sentence(first.message ?? first.code);
}

function insert(desk: Desk, call: Call, entries: Entries): Promise<void> {
  const size = sizeOfAnswer(call.answer ?? []);
  return unlessRefused(
    async () => {
      const { address } = await desk.host.readSelection();
      const why = await whyNoRoom(desk.host, address, size, entries);
      if (why !== undefined) return refuse(desk, why);
      await desk.host.insertFormula(call.formula);
      changeFind(desk, { outcome: { done: true, says: say.inserted(size.rows, size.columns) } });
    },
    (says) => refuse(desk, says),
  );
}

function refuse(desk: Desk, says: string): void {
  changeFind(desk, { outcome: { done: false, says } });
}

function shownFunction(desk: Desk): WorksheetFunction | undefined {
  const { shown } = desk.state().find;
  return allFunctions.find(({ name }) => name === shown);
}

export const formActions: readonly Action[] = [
  typeArgument,
  leaveArgument,
  pickArgument,
  typeInstead,
  fillExample,
  emptyForm,
  toggleMore,
  insertCall,
];
